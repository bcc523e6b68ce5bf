using RuleBook.Authoring.Exports;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>
/// Cells as the languages write them: literals of SQL (ISO/IEC 9075-2, 5.3: a quote is doubled, a day says DATE), unary tests of FEEL
/// (OMG DMN 1.3, 10.3.1.2: square brackets hold their end, round ones do not).
/// </summary>
public sealed class WrittenCellTests
{
    private static readonly string Number = $"DECIMAL({Decimals.Digits}, {Decimals.Places})";

    [Fact]
    public void A_relation_is_made_and_filled_with_literals_of_each_type() =>
        SqlScript
            .Of([
                new Relation(
                    "things",
                    [
                        new("name", ColumnType.Text),
                        new("at", ColumnType.Whole),
                        new("size", ColumnType.Decimal),
                        new("part", ColumnType.Factor),
                        new("since", ColumnType.Day),
                    ],
                    [
                        ["a maker's", "1", "2.5", "0.5", "2026-11-28"],
                        [null, null, null, null, null],
                    ]
                ),
            ])
            .ShouldBe(
                $"""
                CREATE TABLE things (name VARCHAR(500), at INTEGER, size {Number}, part DECIMAL(2, 1), since DATE);
                INSERT INTO things VALUES
                  ('a maker''s', 1, 2.5, 0.5, DATE '2026-11-28'),
                  (NULL, NULL, NULL, NULL, NULL);

                """.ReplaceLineEndings("\n")
            );

    [Theory]
    [InlineData(1, true, 5, true, "[1..5]")]
    [InlineData(1, false, 5, false, "(1..5)")]
    [InlineData(1, true, 5, false, "[1..5)")]
    [InlineData(1, true, null, true, ">= 1")]
    [InlineData(1, false, null, true, "> 1")]
    [InlineData(null, true, 5, true, "<= 5")]
    [InlineData(null, true, 5, false, "< 5")]
    public void A_number_within_bounds_holds_its_ends_or_not(int? low, bool closed, int? high, bool reached, string text)
    {
        var cell = Cell(low, closed, high, reached);
        cell.Text.ShouldBe(text);
        (cell with { OrUnknown = true }).Text.ShouldBe($"null, {text}");
    }

    [Theory]
    [InlineData(1, true, 5, true, 3, true, 9, true, "[3..5]")]
    [InlineData(1, true, 5, true, 1, false, 5, false, "(1..5)")]
    [InlineData(1, true, 5, true, 5, true, 9, true, "[5..5]")]
    [InlineData(1, true, 5, false, 5, true, 9, true, null)]
    [InlineData(1, true, 5, true, 5, false, 9, true, null)]
    [InlineData(1, true, 4, true, 5, true, 9, true, null)]
    [InlineData(1, true, null, true, null, true, 9, true, "[1..9]")]
    public void Both_of_two_ranges_is_what_lies_in_each(int? a, bool ac, int? b, bool bc, int? c, bool cc, int? d, bool dc, string? both)
    {
        Cell(a, ac, b, bc).And(Cell(c, cc, d, dc))?.Text.ShouldBe(both);
        (Cell(a, ac, b, bc).And(Cell(c, cc, d, dc)) is null).ShouldBe(both is null);
        Cell(c, cc, d, dc).And(Cell(a, ac, b, bc))?.Text.ShouldBe(both);
    }

    [Fact]
    public void Both_of_two_lists_of_words_is_what_stands_in_each_and_unknown_where_either_may_be()
    {
        new WordCell(["MC", "NA"], false).Text.ShouldBe("\"MC\", \"NA\"");
        new WordCell(["MC", "NA"], true).And(new WordCell(["NA", "NB"], true))!.Text.ShouldBe("null, \"NA\"");
        new WordCell(["MC", "NA"], true).And(new WordCell(["NA", "NB"], false))!.Text.ShouldBe("\"NA\"");
        new WordCell(["MC"], true).And(new WordCell(["NA"], true)).ShouldBeNull();
    }

    private static NumberCell Cell(int? low, bool closed, int? high, bool reached) =>
        new(
            value => $"{value}",
            low is { } least ? new Bound(least, closed) : null,
            high is { } most ? new Bound(most, reached) : null,
            false
        );
}
