using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>What the measures of a vocabulary are where a job states nothing of them; made once of each vocabulary.</summary>
internal sealed class Unstated
{
    private static readonly ConditionalWeakTable<Vocabulary, Unstated> Known = [];

    private Unstated(Vocabulary vocabulary)
    {
        All =
        [
            .. vocabulary
                .Measures.Values.Where(measure => measure.IfAbsent is not null)
                .Select(measure => (measure.Name, new Derived(Interval.Of(measure.IfAbsent!.Value), Derivations.NothingStated))),
        ];
        OfTyres = All.Select(each => each.Measure).Where(name => name.StartsWith("tyre-", StringComparison.Ordinal)).ToFrozenSet();
    }

    public ImmutableArray<(string Measure, Derived Known)> All { get; }

    /// <summary>Those of tyres.</summary>
    public FrozenSet<string> OfTyres { get; }

    public static Unstated Of(Vocabulary vocabulary) => Known.GetValue(vocabulary, static each => new Unstated(each));
}
