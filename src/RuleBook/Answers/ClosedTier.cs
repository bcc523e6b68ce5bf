using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>A tier that is closed to the job, and what closed it.</summary>
/// <param name="Tier">The tier.</param>
/// <param name="Limits">Its limits that the job does not keep.</param>
/// <param name="Conditions">Its conditions that are known not to be met.</param>
/// <param name="Facts">Why it is meant for other vehicles: the tests that fail.</param>
public sealed record ClosedTier(
    Tier Tier,
    ImmutableArray<LimitCheck> Limits,
    ImmutableArray<Term> Conditions,
    ImmutableArray<FailedFact> Facts
);

/// <summary>A test that the vehicle does not pass.</summary>
/// <param name="Title">The fact or measure, for a reader.</param>
/// <param name="Is">What it is.</param>
/// <param name="Asked">The words that would pass; empty for a range.</param>
public sealed record FailedFact(string Title, string Is, ImmutableArray<string> Asked);

/// <summary>Finds the closed tiers of a version.</summary>
internal static class ClosedTiers
{
    public static IEnumerable<ClosedTier> Of(
        Book book,
        VersionOnRow judged,
        IEnumerable<Tier> tiers,
        FactSet facts,
        Func<Tier, IEnumerable<LimitCheck>> check
    ) =>
        from tier in tiers
        where judged.Holds(tier) == Truth.No
        select new ClosedTier(
            tier,
            [.. check(tier).Where(limit => limit.Holds == Truth.No)],
            [
                .. tier
                    .Provided.Where(name => facts.Shown.TryGetValue(name, out var met) && !met)
                    .Select(name => book.Vocabulary.Conditions[name]),
            ],
            [.. tier.When.Tests.Where(test => Fails(test, judged, facts)).Select(test => Failed(book.Vocabulary, test, facts))]
        );

    private static bool Fails(FactTest test, VersionOnRow judged, FactSet facts) =>
        test.Bounds is { } bounds
            ? facts.Measure(test.Fact, judged.Version.Parts).Within(bounds) == Truth.No
            : facts.Words.TryGetValue(test.Fact, out var word) && !test.OneOf.Contains(word);

    private static FailedFact Failed(Vocabulary vocabulary, FactTest test, FactSet facts) =>
        test.Bounds is null
            ? new FailedFact(vocabulary.Facts[test.Fact].Title, facts.Words.GetValueOrDefault(test.Fact, "not known"), test.OneOf)
            : new FailedFact(vocabulary.Measures[test.Fact].Title, Known(vocabulary.Measures[test.Fact], facts), []);

    private static string Known(Measure measure, FactSet facts) =>
        facts.Measure(measure.Name, FactSet.PartsOf(null)).Exact is { } value && !measure.IsDate
            ? new Quantity(value / measure.Unit.ToBase, measure.Unit).ToString()
            : "outside the range";
}
