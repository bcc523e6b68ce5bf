using System.Globalization;
using RuleBook.Law;
using RuleBook.Site.Feeds;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>What this edition changes, what is to come, what changed, and which sources are due to be read again.</summary>
internal static class ChangesPage
{
    public static Page Of(SiteBook site)
    {
        var changes = VersionChange.Of(site).ToArray();
        var open = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length > 0);
        var past = changes.Where(change => HistoryView.StateOf(change.Version, site.Day).Length == 0 && change.Date is not null);
        var body = Templates.Render(
            "changes",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("edition", EditionView.Of(site, site.Input.Since)),
            ("editions", site.Book.Editions.Reverse().Select(NamedEditionView.Of).ToArray()),
            ("coming", open.Select(change => ChangeView.Of(site, change)).ToArray()),
            ("years", past.GroupBy(change => change.Date!.Earliest.Year)
                .Select(year => new YearView(year.Key.ToString(CultureInfo.InvariantCulture), [.. year.Select(change => ChangeView.Of(site, change))])).ToArray()),
            ("due", site.Places.SelectMany(place => place.Sources.Select(source => (place, source)))
                .OrderBy(pair => pair.source.RecheckAfter.Earliest)
                .ThenBy(pair => pair.source.Checked.Earliest)
                .ThenBy(pair => $"{pair.place.Id}/{pair.source.Id}", StringComparer.Ordinal)
                .Select(pair => DueView.Of(pair.place, pair.source)).ToArray()));
        return new Page("changes.html", "What changes", "changes", body, []);
    }
}

/// <summary>A state of the book that has a name, with its news by consequence.</summary>
internal sealed record NamedEditionView(string Name, string Day, string Digest, string[] News)
{
    public static NamedEditionView Of(Edition edition) =>
        new(edition.Name, Phrases.Day(edition.Day), edition.Digest, [.. edition.News.OrderBy(news => news.Kind).Select(EditionWords.Sentence)]);
}

/// <summary>The changes of a year.</summary>
internal sealed record YearView(string Year, ChangeView[] Changes);

/// <summary>A change as a row.</summary>
internal sealed record ChangeView(string Date, string State, string Place, string Title, string Says, string Url, string Line)
{
    public static ChangeView Of(SiteBook site, VersionChange change) => new(
        change.Date?.Words ?? "no day",
        change.State(site.Day),
        change.Place.Name,
        change.Rule.Title,
        change.Says,
        Links.Version(change.Rule, change.Version),
        Links.Line(change.Version.Mark));
}

/// <summary>A source due to be read again.</summary>
internal sealed record DueView(string Due, string Checked, string Place, string Title, string ReadAs, string Url)
{
    public static DueView Of(Jurisdiction place, Source source) =>
        new(source.RecheckAfter.Text, source.Checked.Text, place.Name, source.Title, Phrases.ReadAs(source), Links.Source(source));
}
