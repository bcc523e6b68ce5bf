using AngleSharp.Html.Dom;
using RuleBook.Site.Building;
using RuleBook.Site.Pages;

namespace RuleBook.Site.Tests.Pages;

public sealed class MarkupTests
{
    private static readonly Lazy<(string Path, IHtmlDocument Document, IReadOnlyList<string> Errors)[]> Pages = new(() =>
        [.. Parsed.Of(TheBook.Site)]
    );

    [Fact]
    public void Every_page_parses_without_an_error_of_the_html_standard() => Pages.Value.SelectMany(page => page.Errors).ShouldBeEmpty();

    [Fact]
    public void An_id_stands_once_on_a_page()
    {
        foreach (var (path, document, _) in Pages.Value)
            document
                .All("[id]")
                .GroupBy(element => element.Id)
                .Where(group => group.Count() > 1)
                .Select(group => $"{path}#{group.Key}")
                .ShouldBeEmpty();
    }

    [Fact]
    public void Every_internal_link_and_anchor_resolves()
    {
        var pages = Pages.Value.ToDictionary(
            page => page.Path,
            page => page.Document.All("[id]").Select(element => element.Id!).ToHashSet()
        );
        var files = TheBook.Site.Select(file => file.Path).ToHashSet();
        var broken = new SortedSet<string>();
        foreach (var (path, document, _) in Pages.Value)
        foreach (
            var address in document.All("[href], [src]").Select(element => element.GetAttribute("href") ?? element.GetAttribute("src")!)
        )
        {
            if (address.Contains("://", StringComparison.Ordinal))
                continue;
            var at = new Uri(new Uri($"http://site.example/{path}"), address);
            var file = at.AbsolutePath[1..];
            if (!files.Contains(file) || (at.Fragment.Length > 1 && !pages[file].Contains(Uri.UnescapeDataString(at.Fragment[1..]))))
                broken.Add($"{path} -> {address}");
        }

        broken.ShouldBeEmpty();
    }

    [Fact]
    public void A_link_leads_within_the_site_or_to_http_and_no_address_starts_at_the_root_of_the_host()
    {
        foreach (var (path, document, _) in Pages.Value)
        foreach (
            var address in document.All("[href], [src]").Select(element => element.GetAttribute("href") ?? element.GetAttribute("src")!)
        )
        {
            address.StartsWith('/').ShouldBeFalse(path);
            if (address.Contains(':', StringComparison.Ordinal))
                address.ShouldMatch("^https?://");
        }
    }

    [Fact]
    public void The_policy_of_a_page_forbids_inline_script_and_style_and_the_page_has_none()
    {
        foreach (var (path, document, _) in Pages.Value)
        {
            var policy = document.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")!;
            policy.ShouldContain("default-src 'none'");
            policy.ShouldContain("script-src 'self' 'wasm-unsafe-eval';");
            policy.ShouldContain("style-src 'self';");
            policy.ShouldNotContain("unsafe-inline");
            document.All("script:not([src]), style, [style]").ShouldBeEmpty(path);
            document
                .All("*")
                .SelectMany(element => element.Attributes)
                .Select(attribute => attribute.Name)
                .Where(name => name.StartsWith("on", StringComparison.Ordinal))
                .ShouldBeEmpty(path);
        }
    }

    [Fact]
    public void Nothing_is_loaded_from_elsewhere()
    {
        foreach (var (path, document, _) in Pages.Value)
            document
                .All("link[href], script[src], img[src], [srcset], iframe, object, embed")
                .Select(element => element.GetAttribute("href") ?? element.GetAttribute("src") ?? "://")
                .Where(address => address.Contains("//", StringComparison.Ordinal))
                .ShouldBeEmpty(path);
        TheBook.Site.Single(file => file.Path == "site.css").Text().ShouldNotContain("url(");
    }

    [Fact]
    public void Every_table_has_a_caption_and_every_heading_cell_a_scope()
    {
        foreach (var (path, document, _) in Pages.Value)
        {
            document.All("table").Where(table => table.QuerySelector("caption") is null).ShouldBeEmpty(path);
            document.All("th:not([scope])").ShouldBeEmpty(path);
            document.All("[title]:not(link)").ShouldBeEmpty(path);
        }
    }

    [Fact]
    public void Every_page_has_a_title_with_the_site_s_name_and_a_description_that_no_search_result_cuts_off_at_once()
    {
        foreach (var (path, document, _) in Pages.Value)
        {
            document.Title!.ShouldEndWith(" - RuleBook", Case.Sensitive, path);
            document.QuerySelector("meta[name=description]")!.GetAttribute("content")!.Length.ShouldBeInRange(30, 400, path);
        }
    }

    /// <summary>sitemaps.org, protocol 0.9: urlset, url, loc with whole addresses; PNG signature: ISO/IEC 15948, 5.2.</summary>
    [Fact]
    public void A_site_whose_address_is_known_lists_its_pages_and_shows_a_picture_and_any_other_does_not()
    {
        var input = TheBook.Input with { Address = new Uri("https://limits.example/book/") };
        var page = new Page("compare/us.html", "x", "compare", new RuleBook.Site.Templating.Html(""), []);
        page.Write(new SiteBook(input))
            .Text()
            .ShouldContain("<meta property=\"og:image\" content=\"https://limits.example/book/preview.png\">");
        var map = System
            .Xml.Linq.XDocument.Parse(
                SiteMap.Of(input, TheBook.Site.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal))).Single().Text()
            )
            .Root!;
        map.Name.ToString().ShouldBe("{http://www.sitemaps.org/schemas/sitemap/0.9}urlset");
        map.Descendants()
            .Where(each => each.Name.LocalName == "loc")
            .Select(each => each.Value)
            .ShouldContain("https://limits.example/book/jurisdictions/au-qld.html");
        TheBook
            .Site.Single(file => file.Path == "preview.png")
            .Content.Span[..8]
            .SequenceEqual((byte[])[137, 80, 78, 71, 13, 10, 26, 10])
            .ShouldBeTrue();
        TheBook.Site.ShouldNotContain(file => file.Path == SiteMap.Path);
        Pages.Value.ShouldAllBe(each => each.Document.QuerySelector("meta[property]") == null);
    }

    [Fact]
    public void A_page_is_smaller_than_200_kilobytes() =>
        TheBook
            .Site.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal) && file.Content.Length >= 200_000)
            .Select(file => $"{file.Path} {file.Content.Length}")
            .ShouldBeEmpty();
}
