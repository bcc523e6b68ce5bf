using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Site.Charts;

/// <summary>What a jurisdiction lets a kind of vehicle be raised by on one pathway: each part, and the total.</summary>
/// <param name="Place">The jurisdiction.</param>
/// <param name="Pathway">The pathway.</param>
/// <param name="State">
/// stated, not-established, not-regulated, none-such (no tier of this pathway) or no-rule (none for this vehicle).
/// </param>
/// <param name="Suspension">In mm; null where the tier does not limit it apart.</param>
/// <param name="Body">As <paramref name="Suspension"/>.</param>
/// <param name="Tyre">As <paramref name="Suspension"/>; half of the growth in diameter.</param>
/// <param name="Total">As <paramref name="Suspension"/>.</param>
internal sealed record LiftParts(
    Jurisdiction Place,
    Pathway Pathway,
    string State,
    Fraction? Suspension,
    Fraction? Body,
    Fraction? Tyre,
    Fraction? Total
)
{
    /// <summary>The highest that the tier allows: its total, or the sum of its parts; null when neither is known.</summary>
    public Fraction? Highest =>
        (Total, Suspension + Body + Tyre) switch
        {
            ({ } total, { } sum) => total < sum ? total : sum,
            ({ } total, null) => total,
            var (_, sum) => sum,
        };

    public static IEnumerable<LiftParts> Of(Book book, Jurisdiction place, FactSet vehicle, DateOnly day)
    {
        var versions = place
            .Rules.Where(rule => rule.Topic == KnownWords.RideHeight && !rule.GovernedByTravel)
            .SelectMany(rule => Resolver.Resolve(book, rule, day))
            .ToLookup(version => TableBook.Of(book).Binds(version, vehicle));
        foreach (var pathway in (Pathway[])[Pathway.NoCertificate, Pathway.Certificate, Pathway.Approval])
        {
            var parts = Of(place, vehicle, pathway, [.. versions[Truth.Yes]]);
            var open = Of(place, vehicle, pathway, [.. versions[Truth.Unknown]]);
            yield return open.Highest < parts.Highest ? new LiftParts(place, pathway, "not-established", null, null, null, null) : parts;
        }
    }

    private static LiftParts Of(Jurisdiction place, FactSet vehicle, Pathway pathway, ImmutableArray<ResolvedVersion> versions)
    {
        var nothing = new LiftParts(place, pathway, "none-such", null, null, null, null);
        if (versions.IsEmpty)
            return nothing with { State = "no-rule" };
        if (versions.Any(version => version.Content is NotEstablished) || MayDiffer(place, vehicle, pathway, versions))
            return nothing with { State = "not-established" };
        if (versions.All(version => version.Content is NotRegulated))
            return nothing with { State = "not-regulated" };
        return versions
                .Select(version => version.Content is Stated stated ? stated.Tiers : [])
                .Select(tiers =>
                    tiers
                        .Where(tier => tier.Pathway == pathway && Applies(tier.When, vehicle))
                        .Select(tier => Of(place, tier))
                        .MaxBy(parts => parts.Highest ?? -1)
                )
                .OfType<LiftParts>()
                .OrderBy(parts => parts.Highest is null)
                .ThenBy(parts => parts.Highest)
                .FirstOrDefault()
            ?? nothing;
    }

    /// <summary>Whether it is not known which of several versions of a rule is in force, and they give different heights.</summary>
    private static bool MayDiffer(Jurisdiction place, FactSet vehicle, Pathway pathway, ImmutableArray<ResolvedVersion> versions) =>
        versions.DistinctBy(version => version.Rule).Count() < versions.Length
        && versions.Select(version => Of(place, vehicle, pathway, [version])).DistinctBy(parts => (parts.State, parts.Highest)).Count() > 1;

    internal static bool Applies(Predicate when, FactSet vehicle) =>
        when.Tests.All(test => test.OneOf.IsEmpty || !vehicle.Words.TryGetValue(test.Fact, out var word) || test.OneOf.Contains(word));

    private static LiftParts Of(Jurisdiction place, Tier tier)
    {
        var parts = new LiftParts(
            place,
            tier.Pathway,
            "stated",
            Upper(tier, KnownWords.SuspensionLift),
            Upper(tier, KnownWords.BodyLift),
            Upper(tier, FactSet.TyreLift) ?? Upper(tier, FactSet.TyreGrowth) / 2,
            Upper(tier, FactSet.TotalLift)
        );
        return parts.Highest is null && tier.Limits.Any(limit => limit.Kind == LimitKind.NotEstablished)
            ? parts with
            {
                State = "not-established",
            }
            : parts;
    }

    internal static Fraction? Upper(Tier tier, string measure) =>
        tier.Limits.FirstOrDefault(limit => limit.Measure == measure)?.Bounds?.Upper?.Value;
}
