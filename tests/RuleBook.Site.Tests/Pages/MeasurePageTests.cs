using AngleSharp.Dom;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The page of one measure: what each place says of it, each limit once.</summary>
public sealed class MeasurePageTests
{
    private static readonly Lazy<(string Place, string[] Cells, IElement Row)[]> Rows = new(() =>
        [
            .. Parsed
                .Of(TheBook.Site.Where(file => file.Path == "topics/ride-height/suspension-lift.html"))
                .Single()
                .Document.All("table.measures tbody")
                .SelectMany(
                    place => place.QuerySelectorAll("tr:has(td)"),
                    (place, row) => (Words(place.QuerySelector("th")!), row.QuerySelectorAll("td").Select(Words).ToArray(), row)
                ),
        ]
    );

    [Fact]
    public void A_limit_stands_once_for_each_kind_of_vehicle_however_many_clauses_say_it()
    {
        Rows.Value.Select(row => (row.Place, row.Cells[0], row.Cells[1])).ShouldBeUnique();
        Rows.Value.Where(row => row.Row.QuerySelectorAll("span.clause").Length > 1).ShouldNotBeEmpty();
        foreach (var (_, _, row) in Rows.Value)
            row.QuerySelectorAll("a[href*='lines/']").ShouldNotBeEmpty();
    }

    /// <summary>California Vehicle Code 24008.5 limits the height of the frame; it has no figure for springs.</summary>
    [Fact]
    public void A_place_stands_on_the_page_only_where_it_says_something_of_the_measure()
    {
        var told = Rows.Value.Select(row => row.Place).ToHashSet();
        told.ShouldContain("Queensland");
        told.ShouldNotContain("California");
    }

    private static string Words(IElement element) =>
        string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
