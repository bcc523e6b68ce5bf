using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The comparison as it stands in the page, without script: for the vehicle that is chosen first.</summary>
public sealed class MatrixTests
{
    private static readonly Lazy<IHtmlDocument> Compare = new(() =>
        Parsed.Of(TheBook.Site.Where(file => file.Path == "compare.html")).Single().Document
    );

    /// <summary>
    /// Queensland from 26 October 2018: 150 mm with a certificate (department's notifications); 75 mm without (minister's release, second
    /// hand).
    /// </summary>
    [Fact]
    public void Queensland_frees_75_and_certifies_150_millimetres_and_each_cell_says_how_that_is_known()
    {
        Cell("au-qld", "Free up to").ShouldStartWith("75 mm in all: suspension 50 mm, tyre 25 mm, no body lift");
        Cell("au-qld", "Free up to").ShouldEndWith("second hand");
        Cell("au-qld", "Certified up to").ShouldStartWith("150 mm in all: suspension 75 mm, tyre 25 mm, body 50 mm");
        Cell("au-qld", "Beyond that").ShouldBe("not established");
        Cell("au-qld", "What counts").ShouldBe("suspension lift + body lift + half the tyre growth");
        Cell("au-qld", "Who certifies").ShouldStartWith("approved person");
    }

    /// <summary>South Australia's sheet asks for its approval before the work; how far it goes is not in it (au-sa/sources.yaml).</summary>
    [Fact]
    public void A_way_that_is_open_to_an_unknown_height_is_told_as_such_and_not_as_closed()
    {
        Cell("au-sa", "With approval first, up to").ShouldStartWith("how far is not established");
        Cell("au-sa", "Certified up to").ShouldStartWith("no such way");
    }

    [Fact]
    public void No_cell_is_empty_and_what_nobody_established_says_so()
    {
        foreach (var cell in Compare.Value.All("#comparison td"))
            Words(cell.TextContent).ShouldNotBeEmpty();
        Cell("au-act", "Free up to").ShouldBe("not established whom to ask");
    }

    [Fact]
    public void Each_topic_has_a_row_for_every_state_without_script()
    {
        var places = Compare.Value.All("[name=state]").Select(box => box.GetAttribute("value")!).ToArray();
        places.ShouldContain("au");
        foreach (var topic in Compare.Value.All(".compared"))
            topic
                .QuerySelectorAll("tbody tr:not([hidden])")
                .Select(row => row.GetAttribute("data-c"))
                .Distinct()
                .ShouldBe(places, topic.Id);
    }

    [Fact]
    public void Alternatives_of_a_pathway_have_a_letter_and_a_name()
    {
        var lines = Row("au-nsw").QuerySelectorAll("td[data-label='Free up to'] p i").Select(name => name.TextContent);
        lines.ShouldBe(["A suspension lift alone", "B suspension lift and growth in tyre diameter"]);
    }

    private static IElement Row(string place) => Compare.Value.QuerySelector($"#ride-height tr[data-c={place}]:not([hidden])")!;

    private static string Cell(string place, string question)
    {
        var cell = Row(place).QuerySelector($"td[data-label='{question}']")!;
        return Words(cell.Children.Length == 0 ? cell.TextContent : string.Join(' ', cell.Children.Select(part => part.TextContent)));
    }

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
