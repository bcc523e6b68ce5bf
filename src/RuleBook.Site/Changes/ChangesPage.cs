using RuleBook.Law;
using RuleBook.Site.Feeds;
using RuleBook.Site.Pages;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;
using RuleBook.Telling;

namespace RuleBook.Site.Changes;

/// <summary>
/// What this edition changes, what is to come, and the log of what changed: as many of the latest years as the page holds, and pages of
/// their own for those before.
/// </summary>
internal static class ChangesPage
{
    /// <summary>What a page may weigh without its frame.</summary>
    private const int Most = 130_000;

    private static readonly string[] Kinds = ["law", "evidence", "corrected"];

    public static IEnumerable<Page> Of(SiteBook site)
    {
        var changes = VersionChange.Of(site).ToArray();
        var open = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length > 0);
        var past = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length == 0 && change.Date is not null);
        (string, object?)[] now =
        [
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("edition", EditionView.Of(site, site.Input.Since)),
            ("editions", site.Book.Editions.Reverse().Select(NamedEditionView.Of).ToArray()),
            ("coming", open.Select(change => ChangeView.Of(site, change)).ToArray()),
        ];
        var room = Most - Templates.Render("changes", [.. now, ("log", "")]).Text.Length;
        var pages = Paged(LogEntry.All(site, past).GroupBy(entry => entry.Year).Select((year, at) => LogYear.Of(year, at == 0)), room);
        string[] spans = [.. pages.Select(years => years is [var only] ? only.Year : $"{years[^1].Year} to {years[0].Year}")];
        foreach (var (at, years) in pages.Index())
        {
            var others = spans.Select((span, other) => new LogPageView(span, other == at ? null : Path(other)));
            var log = Log(site, years, [.. others]);
            yield return at == 0
                ? new Page(
                    Path(0),
                    "What changes",
                    "changes",
                    Templates.Render("changes", [.. now, ("log", log)]),
                    ["changes.js", "report.js"]
                )
                : new Page(Path(at), $"What changed, {spans[at]}", "changes", log, ["changes.js", "report.js"]);
        }
    }

    private static string Path(int page) => page == 0 ? "changes.html" : $"changes-{page + 1}.html";

    /// <summary>Years in order, a new page wherever the next one has no room left; there is always a first page.</summary>
    private static List<List<LogYear>> Paged(IEnumerable<LogYear> years, int room)
    {
        List<List<LogYear>> pages =
        [
            [],
        ];
        foreach (var year in years)
        {
            if (pages[^1].Count > 0 && year.Html.Text.Length > room)
            {
                pages.Add([]);
                room = Most;
            }

            pages[^1].Add(year);
            room -= year.Html.Text.Length;
        }

        return pages;
    }

    private static Html Log(SiteBook site, List<LogYear> years, LogPageView[] pages)
    {
        LogEntry[] log = [.. years.SelectMany(year => year.Entries)];
        return Templates.Render(
            "log",
            ("pages", pages),
            ("years", years),
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

/// <summary>The changes of a year, as they stand in the page.</summary>
internal sealed record LogYear(string Year, LogEntry[] Entries, Html Html)
{
    public static LogYear Of(IGrouping<string, LogEntry> year, bool open)
    {
        LogEntry[] entries = [.. year];
        return new LogYear(
            year.Key,
            entries,
            Templates.Render("year", ("root", ""), ("year", new YearView(year.Key, entries)), ("open", open))
        );
    }
}

/// <summary>The changes of a year.</summary>
internal sealed record YearView(string Year, LogEntry[] Entries);

/// <summary>A page of the log; no address where it is this one.</summary>
internal sealed record LogPageView(string Years, string? Url);

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
