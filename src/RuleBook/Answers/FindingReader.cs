using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Tells what a version gives, by which tier and limits.</summary>
internal static class FindingReader
{
    public static Finding Read(Book book, VersionOnRow judged, ResolvedVersion version, FactSet facts, DateOnly on)
    {
        var outcome = judged.Outcome;
        var tiers = version.Content is Stated stated ? stated.Tiers : [];
        var deciding = tiers.FirstOrDefault(tier => judged.Holds(tier) != Truth.No && (!outcome.Decided || tier.Pathway == outcome.Best));
        var easier = deciding is null ? tiers : tiers.RemoveAll(tier => tier.Pathway >= deciding.Pathway);
        return new Finding(
            version,
            judged.Certain,
            outcome,
            deciding,
            deciding is null ? [] : [.. Check(book, judged, deciding, facts)],
            [
                .. easier
                    .Where(tier => judged.When(tier) == Truth.Yes)
                    .SelectMany(tier => Check(book, judged, tier, facts))
                    .Where(check => check.Holds == Truth.No),
            ],
            deciding is null
                ? []
                : [.. deciding.Provided.Select(name => new ConditionState(book.Vocabulary.Conditions[name], State(name, facts)))],
            deciding is null ? [] : Resolver.Cited(book, version.Rule, deciding.Sources),
            version.Content is NotEstablished { Indication: { } indication } ? Indicate(book, indication, facts, on) : null
        )
        {
            Judged = judged,
            Closed = [.. ClosedTiers.Of(book, judged, easier, facts, tier => Check(book, judged, tier, facts))],
        };
    }

    private static IEnumerable<LimitCheck> Check(Book book, VersionOnRow judged, Tier tier, FactSet facts)
    {
        foreach (var limit in tier.Limits)
        {
            var value = facts.Measure(limit.Measure, judged.Version.Parts);
            var check = new LimitCheck(tier, book.Vocabulary.Measures[limit.Measure], limit, value, judged.Holds(limit));
            var uncertainty = facts.Uncertainty(limit.Measure, judged.Version.Parts);
            yield return uncertainty.IsPositive && value.Exact is { } measured && check.Bound is { } bound
                ? check with
                {
                    Guarded = GuardedResult.Of(
                        measured,
                        uncertainty,
                        bound.Value,
                        check.IsUpper ? LimitSense.AtMost : LimitSense.AtLeast,
                        facts.GuardFactor
                    ),
                }
                : check;
        }
    }

    private static Truth State(string condition, FactSet facts) =>
        facts.Shown.TryGetValue(condition, out var met)
            ? met
                ? Truth.Yes
                : Truth.No
            : Truth.Unknown;

    private static Indication? Indicate(Book book, string rule, FactSet facts, DateOnly on)
    {
        if (book.Rule(rule) is not { } guideline)
            return null;
        var table = TableBook.Of(book).Table(guideline, on);
        var row = table.NewRow();
        row.Set(facts);
        return new Indication(
            guideline.Id,
            Enumerable
                .Range(0, table.Versions.Length)
                .Select(version => new VersionOnRow(table, row, 0, version).Outcome)
                .Aggregate((left, right) => left.Or(right))
        );
    }
}
