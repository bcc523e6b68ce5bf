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
        return site
            .Places.SelectMany(place =>
                place.Sources.Select(source =>
                    (Func<Page>)(
                        () =>
                            Of(
                                source,
                                new Link(place.Name, $"{Links.Jurisdiction(place.Id)}#sources"),
                                [.. leaning.Value[(source.Jurisdiction, source.Id)]]
                            )
                    )
                )
            )
            .Concat(
                ReferencePage
                    .Leaning(site)
                    .Select(group =>
                        (Func<Page>)(() => Of(group.Key, new Link("Tables of no single place", ReferencePage.Path), [.. group]))
                    )
            );
    }

    private static Page Of(Source source, Link place, LeaningView[] leaning)
    {
        var path = Links.Source(source);
        var body = Templates.Render(
            "source",
            ("root", Page.Root(path)),
            ("id", $"{source.Jurisdiction}/{source.Id}"),
            ("place", place),
            ("s", SourceView.Of(source)),
            ("leaning", leaning)
        );
        return new Page(path, source.Title, "jurisdictions", body, []);
    }
}
