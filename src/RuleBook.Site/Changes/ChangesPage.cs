using RuleBook.Law;
using RuleBook.Site.Feeds;
using RuleBook.Site.Pages;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;
using RuleBook.Telling;

namespace RuleBook.Site.Changes;

/// <summary>What this edition changes, what is to come, and the log of what changed.</summary>
internal static class ChangesPage
{
    private static readonly string[] Kinds = ["law", "evidence", "corrected"];

    public static Page Of(SiteBook site)
    {
        var changes = VersionChange.Of(site).ToArray();
        var open = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length > 0);
        var past = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length == 0 && change.Date is not null);
        var log = LogEntry.All(site, past);
        var body = Templates.Render(
            "changes",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("edition", EditionView.Of(site, site.Input.Since)),
            ("editions", site.Book.Editions.Reverse().Select(NamedEditionView.Of).ToArray()),
            ("coming", open.Select(change => ChangeView.Of(site, change)).ToArray()),
            ("years", log.GroupBy(entry => entry.Year).Select(year => new YearView(year.Key, [.. year])).ToArray()),
            (
                "places",
                log.Where(entry => entry.Place.Length > 0)
                    .Select(entry => new Choice(entry.Place, entry.PlaceName))
                    .Distinct()
                    .OrderBy(place => place.Title, StringComparer.Ordinal)
                    .ToArray()
            ),
            (
                "topics",
                site.Topics.Where(topic => log.Any(entry => entry.Topic == topic.Name))
                    .Select(topic => new Choice(topic.Name, SiteBook.Heading(topic.Title)))
                    .ToArray()
            ),
            ("kinds", Kinds.Select(kind => new Choice(kind, LogEntry.Words(kind))).ToArray()),
            ("count", log.Length)
        );
        return new Page("changes.html", "What changes", "changes", body, ["changes.js", "report.js"]);
    }
}

/// <summary>A state of the book that has a name, with its news by consequence.</summary>
internal sealed record NamedEditionView(string Name, string Day, string Digest, string[] News)
{
    public static NamedEditionView Of(Edition edition) =>
        new(
            edition.Name,
            Phrases.Day(edition.Day),
            edition.Digest,
            [.. edition.News.OrderBy(news => news.Kind).Select(EditionWords.Sentence)]
        );
}

/// <summary>The changes of a year.</summary>
internal sealed record YearView(string Year, LogEntry[] Entries);

/// <summary>Something to filter by.</summary>
internal sealed record Choice(string Name, string Title);

/// <summary>A change as a row.</summary>
internal sealed record ChangeView(string Date, string State, string Place, string Title, string Says, string Url, string Line)
{
    public static ChangeView Of(SiteBook site, VersionChange change) =>
        new(
            change.Date?.Words ?? "no day",
            change.State(site.Day),
            change.Place.Name,
            change.Rule.Title,
            change.Says,
            Links.Version(change.Rule, change.Version),
            Links.Line(change.Version.Mark)
        );
}
