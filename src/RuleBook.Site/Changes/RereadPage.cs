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
        var due = site.Places.SelectMany(place => place.Sources.Select(source => (place, source)))
            .OrderBy(pair => pair.source.RecheckAfter.Earliest)
            .ThenBy(pair => pair.source.Checked.Earliest)
            .ThenBy(pair => $"{pair.place.Id}/{pair.source.Id}", StringComparer.Ordinal)
            .Select(pair => DueView.Of(pair.place, pair.source));
        var body = Templates.Render("reread", ("root", ""), ("day", Phrases.Day(site.Day)), ("due", due.ToArray()));
        return new Page("reread.html", "Due to be read again", "changes", body, []);
    }
}

/// <summary>A source due to be read again.</summary>
internal sealed record DueView(string Due, string Checked, string Place, string Title, string ReadAs, string Url)
{
    public static DueView Of(Jurisdiction place, Source source) =>
        new(source.RecheckAfter.Text, source.Checked.Text, place.Name, source.Title, Phrases.ReadAs(source), Links.Source(source));
}
