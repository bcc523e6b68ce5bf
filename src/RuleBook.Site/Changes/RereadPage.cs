using RuleBook.Law;
using RuleBook.Site.Pages;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Changes;

/// <summary>The sources by the day after which somebody should read them again: the maintainers' list.</summary>
internal static class RereadPage
{
    public static Page Of(SiteBook site)
    {
        var due = site
            .Places.SelectMany(place => place.Sources.Select(source => (place, source)))
            .OrderBy(pair => pair.source.RecheckAfter.Earliest)
            .ThenBy(pair => pair.source.Checked.Earliest)
            .ThenBy(pair => $"{pair.place.Id}/{pair.source.Id}", StringComparer.Ordinal)
            .GroupBy(pair => (After: pair.source.RecheckAfter.Text, Compared: pair.source.Checked.Text))
            .Select(day => new DueDay(
                day.Key.After,
                day.Key.Compared,
                [.. day.GroupBy(pair => pair.place, pair => pair.source, DuePlace.Of)]
            ));
        var body = Templates.Render("reread", ("root", ""), ("due", due.ToArray()));
        return new Page("reread.html", "Due to be read again", "changes", body, []);
    }
}

/// <summary>What is due after one day and was compared on one day.</summary>
internal sealed record DueDay(string After, string Compared, DuePlace[] Places);

/// <summary>The sources of a place that are due.</summary>
internal sealed record DuePlace(string Name, DueView[] Sources)
{
    public static DuePlace Of(Jurisdiction place, IEnumerable<Source> sources) => new(place.Name, [.. sources.Select(DueView.Of)]);
}

/// <summary>A source due to be read again.</summary>
internal sealed record DueView(string Title, string ReadAs, string Url)
{
    public static DueView Of(Source source) => new(source.Title, Phrases.ReadAs(source), Links.Source(source));
}
