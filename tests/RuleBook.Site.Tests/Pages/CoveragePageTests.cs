using AngleSharp.Html.Parser;
using RuleBook.Law;
using RuleBook.Site.Pages;

namespace RuleBook.Site.Tests.Pages;

/// <summary>What the book has of each jurisdiction, against its own statement.</summary>
public sealed class CoveragePageTests
{
    [Fact]
    public void What_a_jurisdiction_says_of_a_topic_is_told_and_what_it_does_not_speak_of_is_none()
    {
        var book = TheBook.Input.Book;
        var silent = book.Jurisdiction("nz")!;
        var less = book with { Jurisdictions = book.Jurisdictions.Replace(silent, silent with { Coverage = silent.Coverage[1..] }) };
        var site = new SiteBook(TheBook.Input with { Book = less });
        var rows = new HtmlParser().ParseDocument(CoveragePage.Of(site).Body.ToString()!).QuerySelectorAll("tbody tr").ToArray();
        rows.Length.ShouldBe(less.Jurisdictions.Length);
        foreach (var place in less.Jurisdictions)
            rows.Single(row => row.QuerySelector("th a")!.TextContent == place.Name)
                .QuerySelectorAll("td span")
                .Select(cell => cell.TextContent)
                .ShouldBe(site.Topics.Select(topic => Stated(place, topic)), place.Name);
    }

    private static string Stated(Jurisdiction place, Topic topic) =>
        place.Coverage.Where(entry => entry.Topic == topic.Name).Select(entry => entry.State).SingleOrDefault("none");
}
