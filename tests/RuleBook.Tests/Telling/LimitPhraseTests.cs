using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Tests.Answers;
using RuleBook.Units;

namespace RuleBook.Tests.Telling;

/// <summary>A limit in the trade's words. Basis: arithmetic on limits of a scenario of our own.</summary>
public sealed class LimitPhraseTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(-50, 50, -30, "suspension-lift -30 mm, limit 50 mm up or down: 20 mm left")] // 50 - 30, not 50 + 30
    [InlineData(-50, 50, 30, "suspension-lift 30 mm, limit 50 mm up or down: 20 mm left")]
    [InlineData(-50, 50, -60, "suspension-lift -60 mm, limit 50 mm up or down: 10 mm too low")]
    [InlineData(-50, 75, 80, "suspension-lift 80 mm, limit 75 mm up, 50 mm down: 5 mm too much")]
    [InlineData(-50, null, 50, "suspension-lift 50 mm, limit 50 mm down: kept")] // a lift uses nothing of a limit downward
    [InlineData(-50, null, -20, "suspension-lift -20 mm, limit 50 mm down: 30 mm left")]
    [InlineData(null, 50, 50, "suspension-lift 50 mm, limit 50 mm: 0 mm left")]
    [InlineData(0, 0, 5, "suspension-lift 5 mm, limit none at all: 5 mm too much")]
    [InlineData(0, 50, 28, "suspension-lift 28 mm, limit 0 to 50 mm: 22 mm left")]
    public void What_is_left_counts_to_the_nearer_end(int? lower, int? upper, int value, string says) =>
        Phrases.Limit(Check(new Bounds(Closed(lower), Closed(upper)), value)).ShouldBe(says);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_that_must_not_be_reached_is_not_passed_by_nothing() =>
        Phrases
            .Limit(Check(new Bounds(null, new Bound(50, false)), 50))
            .ShouldBe("suspension-lift 50 mm, limit under 50 mm: must not be reached");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tier_for_lowered_vehicles_is_not_told_as_a_limit_that_a_lift_is_beyond() =>
        Phrases
            .Limit(Check(new Bounds(null, new Bound(-50, false)), 28))
            .ShouldBe("suspension-lift 28 mm, limit more than 50 mm down: not lowered so far");

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(10, false, 50, true, "over 10 mm, 50 mm")]
    [InlineData(10, true, 50, false, "at least 10 mm, under 50 mm")]
    [InlineData(-50, false, 50, true, "less than 50 mm down, 50 mm")]
    [InlineData(-50, true, 75, false, "50 mm down, under 75 mm")]
    [InlineData(40, true, 40, true, "exactly 40 mm")]
    public void An_end_that_does_not_belong_to_a_limit_is_told_at_either_side(
        int lower,
        bool closed,
        int upper,
        bool reached,
        string says
    ) => LimitPhrases.Range(new Bounds(new Bound(lower, closed), new Bound(upper, reached)), Made.MeasureOf(Made.Lift)).ShouldBe(says);

    /// <summary>An inch is 25.4 mm; the ends are those of West Virginia Code 17C-15-48 for a bumper.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void Both_ends_of_a_limit_stand_in_the_unit_of_the_statute() =>
        LimitPhrases.Range(new Bounds(Inches(6), Inches(31)), Made.MeasureOf(Made.Lift)).ShouldBe("6 in (152.4 mm) to 31 in (787.4 mm)");

    private static Bound Inches(int inches) => new(new Fraction(254 * inches, 10), true) { Written = Quantity.Parse($"{inches} in") };

    [Fact]
    [Trait("Basis", "derived")]
    public void The_tenth_is_shown_where_it_decides() =>
        Phrases
            .Limit(Check(new Bounds(null, new Bound(50, true)), new Fraction(501, 10)))
            .ShouldBe("suspension-lift 50.1 mm, limit 50 mm: 0.1 mm too much");

    [Fact]
    [Trait("Basis", "derived")]
    public void The_margin_of_a_limit_with_two_ends_is_that_to_the_nearer_one() =>
        Check(new Bounds(new Bound(-50, true), new Bound(50, true)), -30).Margin.ShouldBe(20);

    /// <summary>A figure that is known in part: 40 to 60 mm may pass 50 mm, keeps 70 mm and passes 30 mm.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(50, "suspension-lift 40 mm to 60 mm, limit 50 mm: open")]
    [InlineData(70, "suspension-lift 40 mm to 60 mm, limit 70 mm: kept")]
    [InlineData(30, "suspension-lift 40 mm to 60 mm, limit 30 mm: not kept")]
    public void A_limit_that_a_figure_known_in_part_may_pass_is_open(int upper, string says) =>
        Phrases.Limit(Check(new Bounds(null, Closed(upper)), new Interval(40, 60))).ShouldBe(says);

    private static LimitCheck Check(Bounds bounds, Fraction value) => Check(bounds, Interval.Of(value));

    private static LimitCheck Check(Bounds bounds, Interval value)
    {
        var limit = new Limit(Made.Lift, LimitKind.Bounded, bounds, Made.Mark);
        return new LimitCheck(Made.Tier(Pathway.NoCertificate, limit), Made.MeasureOf(Made.Lift), limit, value, value.Within(bounds));
    }

    private static Bound? Closed(int? value) => value is { } known ? new Bound(known, true) : null;
}
