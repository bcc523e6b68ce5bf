using AngleSharp.Html.Dom;
using RuleBook.InForce;
using RuleBook.Site.Pages;
using RuleBook.Site.Tests.Pages;
using RuleBook.Site.Views;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>Whether a state follows the amendments of a rule that it takes over, or keeps it as it stood on a day.</summary>
public sealed class AdoptionReadBackTests
{
    private const string Following = "adopts: { rule: au/mass-ratings/raise-gvm, as-of: amended }";
    private const string Fixed = "adopts: { rule: au/mass-ratings/raise-gvm, as-of: 2024-05-06 }";

    [Fact]
    public void A_rule_that_is_followed_as_amended_is_told_so_on_the_state_s_page_and_on_the_board()
    {
        Told(TheBook.Site).ShouldAllBe(text => text.Contains("as amended from time to time, looked up on 25 November 2026"));
        Board(TheBook.Site, "Tasmania").ShouldBe("as amended from time to time");
    }

    [Fact]
    public void A_rule_that_is_taken_over_as_on_a_day_is_told_with_that_day()
    {
        SiteSource[] files =
        [
            .. TheBook
                .Texts()
                .Select(file =>
                    file.Path == "jurisdictions/au-tas/mass-ratings.yaml"
                        ? file with
                        {
                            Root = YamlText.Read(file.Text.Replace(Following, Fixed, StringComparison.Ordinal), file.Path),
                        }
                        : file
                ),
        ];
        var site = new SiteBook(TheBook.Make([.. files]));
        var rule = site.Book.Rule("au-tas/mass-ratings/raise-gvm-before-first-registration")!;
        var version = Resolver.Resolve(site.Book, rule, site.Day).Single();
        VersionView.Of(site, version, certain: true).Adopted.Single().Text.ShouldEndWith("as it stood on 6 May 2024");
        AdoptionBoard
            .Of(site, site.Topics.Single(topic => topic.Name == "mass-ratings"))
            .SelectMany(board => board.Rows)
            .Single(row => row.Place == "Tasmania")
            .How.ShouldBe("as it stood on 6 May 2024");
    }

    private static string[] Told(IEnumerable<SiteFile> site) =>
        [.. Page(site, "jurisdictions/au-tas.html").All("p.adopted a").Select(link => link.TextContent)];

    private static string Board(IEnumerable<SiteFile> site, string state) =>
        Page(site, "topics/mass-ratings.html")
            .All("table.board tr")
            .Single(row => row.QuerySelector("th a")?.TextContent == state)
            .QuerySelectorAll("td")[2]
            .TextContent;

    private static IHtmlDocument Page(IEnumerable<SiteFile> site, string path) =>
        Parsed.Of(site.Where(file => file.Path == path)).Single().Document;
}
