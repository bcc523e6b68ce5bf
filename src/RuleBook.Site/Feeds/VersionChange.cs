using RuleBook.Law;
using RuleBook.Site.Views;
using RuleBook.Units;

namespace RuleBook.Site.Feeds;

/// <summary>A version as a change: since when, where, what it says.</summary>
internal sealed record VersionChange(Jurisdiction Place, Rule Rule, RuleVersion Version, string Says)
{
    /// <summary>The day, month or year that counts; null for a proposal, and for a start that nobody knows.</summary>
    public PartialDate? Date => Version.Announced ?? Version.From;

    /// <summary>The same in every build, whatever else changes in the book.</summary>
    public string Name => $"{Rule.Id}@{Links.Start(Version)}";

    /// <summary>proposed, announced, to come, in force, or ended: where it says so, or else where the next version starts.</summary>
    public string State(DateOnly day) =>
        HistoryView.StateOf(Version, day) is { Length: > 0 } state ? state
        : (Version.Until ?? Next?.From ?? Next?.InForceBy)?.Latest <= day ? "ended"
        : "in force";

    /// <summary>The last day on which somebody compared one of its sources, or corrected a figure of it.</summary>
    public DateOnly Checked(Book book) =>
        Version
            .Sources.Select(citation => book.Source(Place.Id, citation.Cite)?.Checked.Earliest ?? DateOnly.MinValue)
            .Concat(Version.Corrected.Select(correction => correction.On))
            .DefaultIfEmpty(DateOnly.MinValue)
            .Max();

    public static IEnumerable<VersionChange> Of(SiteBook site) =>
        site
            .Places.SelectMany(place =>
                place.Rules.SelectMany(rule =>
                    rule.Versions.Select(version => new VersionChange(place, rule, version, Summary.Of(site, version)))
                )
            )
            .OrderByDescending(change => HistoryView.DayOf(change.Version))
            .ThenBy(change => change.Name, StringComparer.Ordinal);

    private RuleVersion? Next =>
        Rule.Versions.SkipWhile(each => !ReferenceEquals(each, Version)).Skip(1).FirstOrDefault(each => each.Decides);
}
