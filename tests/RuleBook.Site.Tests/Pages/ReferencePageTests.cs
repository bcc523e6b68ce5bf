namespace RuleBook.Site.Tests.Pages;

/// <summary>
/// The tables of no single place stand on a page with their values, and each says where it comes from and how that is known.
/// </summary>
public sealed class ReferencePageTests
{
    private static readonly AngleSharp.Html.Dom.IHtmlDocument Page = Parsed
        .Of(TheBook.Site.Where(file => file.Path == "reference.html"))
        .Single()
        .Document;

    [Theory]
    [InlineData("load-index", "112: 1120 kg")] // three charts of the tyre trade
    [InlineData("load-index", "62: 265 kg")] // one chart misprints it as 165
    [InlineData("speed-symbol", "H: 210 km/h")] // the same charts
    [InlineData("rim-code", "16: 406 mm")] // a retailer's worked example
    public void A_value_of_a_published_chart_stands_in_its_table(string table, string value) =>
        Page.GetElementById(table)!.ParentElement!.QuerySelectorAll("ul.run li").ShouldContain(item => item.TextContent == value);

    [Fact]
    public void Every_table_and_file_of_figures_names_a_source_with_its_standing_and_leads_to_its_page()
    {
        var sections = Page.QuerySelectorAll("main section").ToArray();
        sections.Length.ShouldBeGreaterThanOrEqualTo(14); // five tables of standards, nine files of figures
        foreach (var section in sections)
        {
            var sources = section.QuerySelectorAll("ul.sources > li").ToArray();
            sources.ShouldNotBeEmpty(section.QuerySelector("h2")!.TextContent);
            sources.ShouldAllBe(source =>
                source.ClassName != null
                && source.QuerySelector("a")!.GetAttribute("href")!.StartsWith("sources/", StringComparison.Ordinal)
            );
        }
    }
}
