using RuleBook.Law;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;

namespace RuleBook.Site.Pages;

/// <summary>A page for each source: how it is known, when it was read, which part of it, and what leans on it.</summary>
internal static class SourcePages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site)
    {
        var leaning = new Lazy<ILookup<(string, string), LeaningView>>(() => LeaningView.All(site));
        return site.Places.SelectMany(place => place.Sources).Select(source => (Func<Page>)(() => Of(site, source, [.. leaning.Value[(source.Jurisdiction, source.Id)]])));
    }

    private static Page Of(SiteBook site, Source source, LeaningView[] leaning)
    {
        var path = Links.Source(source);
        var body = Templates.Render(
            "source",
            ("root", Page.Root(path)),
            ("id", $"{source.Jurisdiction}/{source.Id}"),
            ("place", new Link(site.PlaceName(source.Jurisdiction), $"{Links.Jurisdiction(source.Jurisdiction)}#sources")),
            ("s", SourceView.Of(source)),
            ("leaning", leaning));
        return new Page(path, source.Title, "jurisdictions", body, []);
    }
}
