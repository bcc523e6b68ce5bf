using System.Collections.Immutable;
using System.Numerics;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>Everything that a jurisdiction says of its measures on a day, line by line.</summary>
internal static class LimitStatements
{
    /// <summary>Stands where a measure's name would: what holds when no tier does.</summary>
    public const string Beyond = "beyond";

    public static ImmutableArray<LimitStatement> Of(Book book, VehicleKinds kinds, Jurisdiction place, DateOnly day) =>
        [.. place.Rules.SelectMany(rule => Of(book, kinds, place, rule, day)).Where(line => !line.Kinds.IsZero)];

    private static IEnumerable<LimitStatement> Of(Book book, VehicleKinds kinds, Jurisdiction place, Rule rule, DateOnly day)
    {
        var versions = Resolver.Resolve(book, rule, day);
        foreach (var version in versions)
        {
            var bound = kinds.Of(rule.For, Predicate.Always);
            LimitStatement Line(string measure, Tier? tier, Limit? limit, BigInteger set) =>
                new(place, version, versions.Length == 1, measure, tier, limit, set);

            if (version.Content is not Stated stated)
            {
                yield return Line("", null, null, bound);
                continue;
            }

            foreach (var tier in stated.Tiers)
            foreach (var limit in tier.Limits)
                yield return Line(limit.Measure, tier, limit, kinds.Of(rule.For, tier.When));
            yield return Line(Beyond, null, null, bound);
        }
    }
}
