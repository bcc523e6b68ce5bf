using System.Collections.Concurrent;
using AngleSharp.Html.Dom;
using RuleBook.Site.Changes;
using RuleBook.Site.Pages;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>The pages of the invented book as trees, each made when it is first looked at.</summary>
internal static class InventedPages
{
    private static readonly Lazy<Dictionary<string, Page>> Made = new(() =>
        new IEnumerable<Func<Page>>[]
        {
            [() => HomePage.Of(Site), () => RereadPage.Of(Site), () => WordsPage.Of(Site), () => CoveragePage.Of(Site)],
            [() => DataPage.Of(Site), () => OpenPage.Of(Site)],
            ChangesPage.Of(Site).Select<Page, Func<Page>>(page => () => page),
            ComparePages.Of(Site),
            JurisdictionPages.Of(Site),
            SourcePages.Of(Site),
            TopicPages.Of(Site),
            LinesPages.Of(Site),
        }
            .SelectMany(pages => pages.Select(make => make()))
            .ToDictionary(page => page.Path)
    );

    private static readonly ConcurrentDictionary<string, IHtmlDocument> Trees = [];

    private static SiteBook Site => InventedBook.Site;

    public static IReadOnlyCollection<string> Paths => Made.Value.Keys;

    public static IHtmlDocument Of(string path) => Trees.GetOrAdd(path, _ => Parsed.Of([Made.Value[path].Write(Site)]).Single().Document);
}
