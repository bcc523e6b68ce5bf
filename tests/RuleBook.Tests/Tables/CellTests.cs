using Fractions;
using RuleBook.Tables;
using RuleBook.Tests.Answers;
using RuleBook.Units;

namespace RuleBook.Tests.Tables;

/// <summary>Stretches of a measure in words (derived: what is open and what is closed).</summary>
public sealed class CellTests
{
    private static readonly Bound Fifty = new(50, true),
        Over50 = new(50, false),
        Seventy = new(70, true),
        Under70 = new(70, false);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_stretch_says_whether_its_ends_belong_to_it()
    {
        Label(null, null).ShouldBe("any value");
        Label(null, Fifty).ShouldBe("at most 50 mm");
        Label(null, Over50).ShouldBe("under 50 mm");
        Label(Fifty, null).ShouldBe("at least 50 mm");
        Label(Over50, null).ShouldBe("over 50 mm");
        Label(Fifty, Fifty).ShouldBe("50 mm");
        Label(Fifty, Seventy).ShouldBe("from 50 mm up to 70 mm");
        Label(Over50, Under70).ShouldBe("over 50 mm to under 70 mm");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Two_stretches_are_told_as_one_from_the_start_of_the_first_to_the_end_of_the_last() =>
        Cell(Over50, Under70).Through(Cell(Under70, null)).Label.ShouldBe("over 50 mm");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_length_is_told_in_the_unit_of_its_measure() =>
        new Cell(
            Made.MeasureOf("lift") with
            {
                Unit = RuleBook.Units.Unit.Find("in")!,
            },
            null,
            new Bound(new Fraction(508, 10), true)
        ).Label.ShouldBe("at most 2 in");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_stretch_of_days_is_told_in_days()
    {
        var built = Made.MeasureOf("built") with { IsDate = true };
        var day = new Fraction(new DateOnly(2006, 7, 1).DayNumber);
        new Cell(built, null, new Bound(day, false)).Label.ShouldBe("before 2006-07-01");
        new Cell(built, new Bound(day, true), null).Label.ShouldBe("from 2006-07-01");
        new Cell(built, new Bound(day, true), new Bound(day, true)).Label.ShouldBe("2006-07-01");
        new Cell(built, new Bound(day, false), new Bound(day + 30, true)).Label.ShouldBe("after 2006-07-01 up to 2006-07-31");
    }

    private static string Label(Bound? lower, Bound? upper) => Cell(lower, upper).Label;

    private static Cell Cell(Bound? lower, Bound? upper) => new(Made.MeasureOf("lift"), lower, upper);
}
