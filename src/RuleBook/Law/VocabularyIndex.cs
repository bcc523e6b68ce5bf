using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace RuleBook.Law;

/// <summary>The words of a vocabulary in the order in which every job asks for them; made once of each vocabulary.</summary>
internal sealed class VocabularyIndex
{
    private static readonly ConditionalWeakTable<Vocabulary, VocabularyIndex> Known = [];

    private VocabularyIndex(Vocabulary vocabulary)
    {
        var measures = vocabulary.Measures.Values.OrderBy(measure => measure.Name, StringComparer.Ordinal).ToArray();
        ByJob = measures.ToLookup(measure => measure.Job, StringComparer.Ordinal);
        Stated = measures
            .Where(measure => !measure.IsDate && !measure.IsDerived && measure.Job.Contains('.', StringComparison.Ordinal))
            .ToLookup(
                measure => measure.Job[..measure.Job.LastIndexOf('.')],
                measure => (measure.Job[(measure.Job.LastIndexOf('.') + 1)..], measure),
                StringComparer.Ordinal
            );
        Shares = [.. measures.Select(measure => measure.Share).OfType<MeasureShare>()];
        AnyOf = [.. vocabulary.Conditions.Values.Where(condition => !condition.AnyOf.IsEmpty)];
        Decided =
        [
            .. vocabulary
                .Conditions.Values.Where(condition => condition.DecidedBy is not null || condition.FailsOver is not null)
                .OrderBy(condition => condition.Name, StringComparer.Ordinal),
        ];
    }

    /// <summary>Measures by the job's path where they are stated.</summary>
    public ILookup<string, Measure> ByJob { get; }

    /// <summary>The measures that a job can state, with their key, by the path under which it stands.</summary>
    public ILookup<string, (string Key, Measure Measure)> Stated { get; }

    /// <summary>The shares that rules bound.</summary>
    public ImmutableArray<MeasureShare> Shares { get; }

    /// <summary>The conditions that figures may decide.</summary>
    public ImmutableArray<Term> Decided { get; }

    /// <summary>The conditions of which each is several others, of which one has to be shown.</summary>
    public ImmutableArray<Term> AnyOf { get; }

    public static VocabularyIndex Of(Vocabulary vocabulary) => Known.GetValue(vocabulary, static each => new VocabularyIndex(each));
}
