using System.Text;
using System.Xml.Linq;

namespace RuleBook.Site.Building;

/// <summary>
/// The list of pages for search engines (sitemaps.org, 0.9); only where the site's address is known, since it holds whole addresses.
/// </summary>
internal static class SiteMap
{
    public const string Path = "sitemap.xml";

    private static readonly XNamespace Schema = "http://www.sitemaps.org/schemas/sitemap/0.9";

    public static IEnumerable<SiteFile> Of(SiteInput input, IEnumerable<SiteFile> pages)
    {
        if (input.Address is not { } address)
            yield break;
        var urls = pages.Select(page => new XElement(
            Schema + "url",
            new XElement(Schema + "loc", new Uri(address, page.Path).AbsoluteUri)
        ));
        var text = new XElement(Schema + "urlset", urls).ToString().ReplaceLineEndings("\n");
        yield return new SiteFile(Path, Encoding.UTF8.GetBytes($"<?xml version=\"1.0\" encoding=\"utf-8\"?>\n{text}\n"));
    }
}
