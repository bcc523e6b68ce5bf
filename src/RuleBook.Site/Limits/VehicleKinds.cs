using System.Collections.Immutable;
using System.Numerics;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>
/// Every kind of vehicle that some rules tell apart: each category with and without four-wheel drive and stability control, and so on.
/// A set of kinds is a number with one bit a kind.
/// </summary>
internal sealed class VehicleKinds
{
    private readonly ImmutableArray<(string Fact, string Word)[]> kinds;

    public VehicleKinds(Vocabulary vocabulary, IEnumerable<Rule> rules)
    {
        var tested = rules.SelectMany(Tests).Select(test => test.Fact).ToHashSet(StringComparer.Ordinal);
        Facts =
        [
            .. KnownWords
                .VehicleKinds.Where(name => tested.Contains(name) && vocabulary.Facts.ContainsKey(name))
                .Select(name => vocabulary.Facts[name]),
        ];
        kinds =
        [
            .. Facts.Aggregate(
                (IEnumerable<(string, string)[]>)
                    [
                        [],
                    ],
                (known, fact) => known.SelectMany(kind => fact.Values.Select(word => ((string, string)[])[.. kind, (fact.Name, word)]))
            ),
        ];
    }

    /// <summary>The facts that tell kinds apart, in the order in which they count: the last one changes fastest.</summary>
    public ImmutableArray<FactWord> Facts { get; }

    public BigInteger Every => (BigInteger.One << kinds.Length) - 1;

    /// <summary>Those that meet one of the descriptions, and what opens a tier.</summary>
    public BigInteger Of(Descriptions vehicles, Predicate opening) =>
        vehicles.AnyOf.Aggregate(BigInteger.Zero, (all, each) => all | Of(each, opening));

    public BigInteger Of(params ReadOnlySpan<Predicate> predicates)
    {
        var set = BigInteger.Zero;
        for (var i = 0; i < kinds.Length; i++)
            if (Passes(kinds[i], predicates))
                set |= BigInteger.One << i;
        return set;
    }

    private static IEnumerable<FactTest> Tests(Rule rule) =>
        rule.For.Tests.Concat(
            rule.Versions.SelectMany(version =>
                version.Content switch
                {
                    Stated stated => stated.Tiers.SelectMany(tier => tier.When.Tests),
                    Adoption adoption => adoption.Exceptions.SelectMany(change => change.Added?.When.Tests ?? []),
                    _ => [],
                }
            )
        );

    private static bool Passes((string Fact, string Word)[] kind, ReadOnlySpan<Predicate> predicates)
    {
        foreach (var predicate in predicates)
        foreach (var test in predicate.Tests)
        foreach (var (fact, word) in kind)
            if (test.Fact == fact && !test.OneOf.Contains(word))
                return false;
        return true;
    }
}
