using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>Everything that a jurisdiction says of its measures on a day, line by line.</summary>
internal static class LimitStatements
{
    /// <summary>Stands where a measure's name would: what holds when no tier does.</summary>
    public const string Beyond = "beyond";

    public static ImmutableArray<LimitStatement> Of(Book book, Jurisdiction place, DateOnly day) =>
        [.. place.Rules.SelectMany(rule => Of(book, place, rule, day))];

    private static IEnumerable<LimitStatement> Of(Book book, Jurisdiction place, Rule rule, DateOnly day)
    {
        var versions = Resolver.Resolve(book, rule, day);
        foreach (var version in versions)
        {
            LimitStatement Line(string measure, Tier? tier, Limit? limit) =>
                new(place, version, versions.Length == 1, measure, tier, limit);

            if (version.Content is not Stated stated)
            {
                yield return Line("", null, null);
                continue;
            }

            foreach (var tier in stated.Tiers.Where(tier => rule.For.AnyOf.Any(vehicles => CanOpen(tier, vehicles, book.Vocabulary))))
            foreach (var limit in tier.Limits)
                yield return Line(limit.Measure, tier, limit);
            yield return Line(Beyond, null, null);
        }
    }

    /// <summary>Whether some vehicle of a description can open the tier, as far as words tell.</summary>
    private static bool CanOpen(Tier tier, Predicate vehicles, Vocabulary vocabulary) =>
        vehicles
            .Tests.Concat(tier.When.Tests)
            .Where(test => test.Bounds is null)
            .GroupBy(test => test.Fact)
            .All(same =>
                same.Select(test => test.OneOf.AsEnumerable())
                    .Aggregate((one, other) => one.Intersect(other))
                    .Except(vehicles.Tests.Any(test => test.Fact == same.Key) ? [] : vocabulary.Facts[same.Key].WhereNamed)
                    .Any()
            );
}
