using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Site.Comparison;

/// <summary>The limits of a tier in a line: <c>75 mm in all: suspension 50 mm, tyres 25 mm, no body lift</c>.</summary>
internal static class TierWords
{
    /// <param name="site">Has the measures.</param>
    /// <param name="tier">The tier.</param>
    /// <param name="named">Whether the alternative's name says already which parts it leaves out.</param>
    public static string Of(SiteBook site, Tier tier, bool named)
    {
        if (IsOpen(tier))
            return "how far is not established";
        var total = tier.Limits.FirstOrDefault(limit => limit.Measure == KnownWords.TotalLift);
        var parts = string.Join(
            ", ",
            tier.Limits.Where(limit => limit != total && !(named && IsNone(limit))).Select(limit => Limit(site, limit))
        );
        return (total, parts) switch
        {
            (null, "") => "no limit stated",
            (null, _) => parts,
            (_, "") => InAll(site, total),
            _ => $"{InAll(site, total)}: {parts}",
        };
    }

    /// <summary>Whether nobody has established any of its limits.</summary>
    public static bool IsOpen(Tier tier) => tier.Limits.Length > 0 && tier.Limits.All(limit => limit.Kind == LimitKind.NotEstablished);

    private static bool IsNone(Limit limit) =>
        limit.Bounds is { Upper: { Closed: true, Value.IsZero: true }, Lower: null or { Value.IsZero: true } };

    private static string InAll(SiteBook site, Limit total) =>
        total.Kind switch
        {
            LimitKind.None => "no limit in all",
            LimitKind.NotEstablished => "in all not established",
            _ => $"{Range(site, total)} in all",
        };

    private static string Limit(SiteBook site, Limit limit)
    {
        var measure = site.Words.Measures[limit.Measure];
        var title = measure.Title;
        if (limit.Kind == LimitKind.None)
            return $"{title} without limit";
        if (limit.Kind == LimitKind.NotEstablished)
            return $"{title} not established";
        if (measure.IsDate)
            return $"{title} {Limits.Say.Bounds(measure, limit.Bounds!)}";
        return IsNone(limit) ? $"no {title}" : $"{Short(title)} {Range(site, limit)}";
    }

    /// <summary>A lower end of nothing is not told where something is allowed above it.</summary>
    private static string Range(SiteBook site, Limit limit)
    {
        var bounds = limit.Bounds!;
        if (bounds is { Lower: { Closed: true, Value.IsZero: true }, Upper.Value.IsPositive: true })
            bounds = bounds with { Lower = null };
        return LimitPhrases.Range(bounds, site.Words.Measures[limit.Measure]);
    }

    private static string Short(string title) => title.EndsWith(" lift", StringComparison.Ordinal) ? title[..^" lift".Length] : title;
}
