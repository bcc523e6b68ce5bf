using AngleSharp.Dom;
using RuleBook.Law.Reading;
using Mapping = RuleBook.Text.Mapping;
using Scalar = RuleBook.Text.Scalar;
using Sequence = RuleBook.Text.Sequence;

namespace RuleBook.Site.Tests.Pages;

/// <summary>A page for each source, against the data files: what cites it, which parts of it were read.</summary>
public sealed class SourcePageTests
{
    private static readonly IElement[] Rows = [.. Page("sources/au-vic/vsi8-2011.html").QuerySelectorAll("#carries + ul > li")];

    [Fact]
    public void Every_citation_in_the_files_is_a_row_that_leads_to_its_rule()
    {
        var files = TheBook.Input.Files.Where(file => file.Path.StartsWith("jurisdictions/au-vic/", StringComparison.Ordinal));
        Rows.Length.ShouldBe(files.Sum(file => Cited(WrittenOut.Of(new BookFile(file.Path, file.Root), []).Root)));
        Rows.ShouldContain(row =>
            row.TextContent.Contains("from 2011-10, 13.2, 13.3.1 (contents page) carries the first day", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_document_of_which_only_the_contents_were_read_says_so_and_one_that_nobody_opened_too()
    {
        Read("sources/au-qld/code-of-practice-v1.html").ShouldBe("only cover, contents");
        Read("sources/au/vsb14-ls-2015.html").ShouldStartWith("nothing of it");
        Read("sources/us-ca/vehicle-code-24008-5.html").ShouldStartWith("whole");
        Read("sources/au-sa/roadworthy-page.html").ShouldEndWith("; it has no clause numbers");
    }

    [Fact]
    public void A_citation_leads_to_the_page_of_the_source_that_it_names()
    {
        var titles = TheBook
            .Input.Book.Jurisdictions.SelectMany(place => place.Sources)
            .ToDictionary(source => $"../sources/{source.Jurisdiction}/{source.Id}.html", source => source.Title);
        var citations = Page("jurisdictions/au-qld.html").QuerySelectorAll("article ul.sources li > a:first-child");
        citations.Length.ShouldBeGreaterThan(20);
        foreach (var link in citations)
            titles.GetValueOrDefault(link.GetAttribute("href")!).ShouldBe(link.TextContent);
    }

    [Fact]
    public void Every_source_of_the_book_has_its_page_and_something_leans_on_it()
    {
        foreach (var source in TheBook.Input.Book.Jurisdictions.SelectMany(place => place.Sources))
            Page($"sources/{source.Jurisdiction}/{source.Id}.html")
                .QuerySelectorAll("#carries + ul > li")
                .Length.ShouldBeGreaterThan(0, source.Id);
    }

    private static int Cited(RuleBook.Text.Node node) =>
        node switch
        {
            Mapping map => map.Entries.Sum(entry =>
                entry is { Key.Text: "cite", Value: Scalar { Text: "vsi8-2011" } } ? 1 : Cited(entry.Value)
            ),
            Sequence list => list.Items.Sum(Cited),
            _ => 0,
        };

    private static string Read(string path) =>
        Page(path).QuerySelectorAll("dt").Single(term => term.TextContent == "Read").NextElementSibling!.TextContent;

    private static IDocument Page(string path) => Parsed.Of(TheBook.Site.Where(file => file.Path == path)).Single().Document;
}
