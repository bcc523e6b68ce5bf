using RuleBook.Text;

namespace RuleBook.Tests.Text;

/// <summary>RFC 4180: rows end with CRLF; a field with a comma or a quote is quoted, and its quotes are doubled.</summary>
public sealed class CsvTests
{
    [Theory]
    [InlineData("LS9, item 2", "\"LS9, item 2\"")]
    [InlineData("the \"high lift\"", "\"the \"\"high lift\"\"\"")]
    [InlineData("50 mm", "50 mm")]
    [InlineData("-50", "-50")]
    public void A_cell_is_quoted_where_it_has_a_comma_or_a_quote(string text, string written) => Csv.Cell(text).ShouldBe(written);

    /// <summary>What a spreadsheet would run gets an apostrophe before it (common practice).</summary>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@sum", "'@sum")]
    public void A_text_that_a_spreadsheet_would_run_is_defused(string text, string written) => Csv.Cell(text).ShouldBe(written);

    [Fact]
    public void A_row_ends_with_a_carriage_return_and_a_line_feed() => Csv.Row(["a", "b,c"]).ShouldBe("a,\"b,c\"\r\n");
}
