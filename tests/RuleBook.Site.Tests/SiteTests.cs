using System.Text.RegularExpressions;
using RuleBook.Site.Building;
using RuleBook.Site.Templating;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests;

public sealed class SiteTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes()
    {
        var again = SiteBuild.Render(TheBook.Make(TheBook.Texts()) with { Shown = TheBook.Input.Shown });
        again.Length.ShouldBe(TheBook.Site.Length);
        foreach (var (first, second) in TheBook.Site.Zip(again))
        {
            second.Path.ShouldBe(first.Path);
            second.Content.Span.SequenceEqual(first.Content.Span).ShouldBeTrue(first.Path);
        }
    }

    [Fact]
    public void What_the_scripts_of_a_page_import_is_named_in_its_head_so_that_all_is_asked_for_at_once()
    {
        string[] Direct(string script) =>
            [
                .. Regex
                    .Matches(File.ReadAllText(Path.Combine(TheBook.Folder, "site-templates", script)), "from \"\\./([^\"/]+)\"")
                    .Select(import => import.Groups[1].Value),
            ];
        IEnumerable<string> Whole(string script) => Direct(script).SelectMany(import => Whole(import).Append(import));
        string[] All(params IEnumerable<string> scripts) =>
            [.. scripts.SelectMany(Whole).Except(scripts).Distinct().Order(StringComparer.Ordinal)];
        All("check.js").Length.ShouldBeGreaterThan(5);
        Imports.Of(["check.js", "notes.js"]).ShouldBe(All("check.js", "notes.js"));
        foreach (var (path, document, _) in Parsed.Of(TheBook.Site))
        {
            string[] Named(string selector, string attribute) =>
                [.. document.All(selector).Select(each => each.GetAttribute(attribute)!.Split('/')[^1])];
            Named("link[rel=modulepreload]", "href").ShouldBe(All(Named("script[type=module]", "src")), path);
        }
    }

    [Fact]
    public void Every_figure_of_a_state_page_leads_to_its_data_line()
    {
        var page = Parsed.Of(TheBook.Site.Where(file => file.Path == "jurisdictions/au-qld.html")).Single().Document;
        foreach (var row in page.QuerySelectorAll(".tiers tbody tr").Where(row => row.QuerySelector(".limits") is not null))
            row.QuerySelectorAll("a[href*='lines/']").Length.ShouldBe(1);
    }
}
