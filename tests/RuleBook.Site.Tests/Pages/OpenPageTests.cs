namespace RuleBook.Site.Tests.Pages;

/// <summary>The work list on the site tells what the ranking has, row by row; each line to edit leads to that line.</summary>
public sealed class OpenPageTests
{
    [Fact]
    public void Each_document_is_a_row_with_its_counts_its_questions_and_the_lines_to_edit()
    {
        var rows = Parsed.Of(TheBook.Site.Where(file => file.Path == "open.html")).Single().Document.QuerySelectorAll("tbody tr").ToArray();
        rows.Length.ShouldBe(TheBook.Input.Open.Length);
        foreach (var (row, open) in rows.Zip(TheBook.Input.Open))
        {
            var cells = row.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim()).ToArray();
            row.QuerySelector("th a")!.TextContent.ShouldBe(open.Place.Name);
            cells[1].ShouldContain(open.Document ?? "No document is named");
            cells[1].ShouldContain($"Ask: {open.Ask}");
            cells[2].ShouldBe($"{open.Answers}");
            cells[3].ShouldBe($"{open.Alone}");
            row.QuerySelectorAll("li").Length.ShouldBe(open.LookFor.Length);
            row.QuerySelectorAll("a.line")
                .Select(link => link.GetAttribute("href")!.Split('#')[1])
                .ShouldBe(open.Edit.Select(mark => $"L{mark.Line}"));
        }
    }
}
