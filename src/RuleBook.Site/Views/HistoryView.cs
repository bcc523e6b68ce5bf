using RuleBook.Law;

namespace RuleBook.Site.Views;

/// <summary>A version as one step of a jurisdiction's history.</summary>
internal sealed record HistoryView(
    string Anchor,
    string Date,
    string State,
    string Title,
    string Says,
    string Url,
    string Line,
    DateOnly Order
)
{
    public static IEnumerable<HistoryView> Of(SiteBook site, Jurisdiction place) =>
        place
            .Rules.SelectMany(rule => rule.Versions.Select(version => Of(site, rule, version)))
            .OrderByDescending(step => step.Order)
            .ThenBy(step => step.Anchor, StringComparer.Ordinal);

    public static HistoryView Of(SiteBook site, Rule rule, RuleVersion version) =>
        new(
            Links.Anchor(rule, version),
            DateOf(version),
            StateOf(version, site.Day),
            rule.Title,
            Summary.Of(site, version),
            Links.Rule(rule),
            Links.Line(version.Mark),
            DayOf(version)
        );

    public static string DateOf(RuleVersion version)
    {
        var until = version.Until is { } end ? $" until {end.Words}" : "";
        return version switch
        {
            { Proposed: true } => "proposed",
            { Announced: { } day } => $"announced for {day.Words}",
            { From: { } from } => $"{from.Words}{until}",
            { InForceBy: { } by } => $"in force by {by.Words}{until}, start unknown",
            _ => $"start unknown{until}",
        };
    }

    /// <summary>proposed, announced, to come, or empty.</summary>
    public static string StateOf(RuleVersion version, DateOnly day) =>
        version switch
        {
            { Proposed: true } => "proposed",
            { Announced: not null } => "announced",
            { From: { } from } when from.Earliest > day => "to come",
            _ => "",
        };

    public static DateOnly DayOf(RuleVersion version) =>
        version switch
        {
            { Proposed: true } => DateOnly.MaxValue,
            { Announced: { } day } => day.Earliest,
            { From: { } from } => from.Earliest,
            { InForceBy: { } by } => by.Latest,
            _ => DateOnly.MinValue,
        };
}
