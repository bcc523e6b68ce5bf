using RuleBook.Units;

namespace RuleBook.Tests.Units;

/// <summary>A limit keeps how it is written; what it means does not hang on that.</summary>
public sealed class BoundTests
{
    private static readonly Unit Millimetre = Unit.Find("mm")!;

    /// <summary>
    /// 27 in × 25.4 mm (International Yard and Pound Agreement, 1959); the figure of the California Vehicle Code, 24008.5(b)(2).
    /// </summary>
    private static readonly Bound Written = new(Quantity.Parse("27 in").Base, true) { Written = Quantity.Parse("27 in") };

    [Fact]
    public void A_limit_in_inches_is_told_as_written_with_the_millimetres_beside_it() =>
        Written.Show(Millimetre).ShouldBe("27 in (685.8 mm)");

    [Fact]
    public void A_limit_in_the_unit_of_its_measure_is_told_once()
    {
        Written.Show(Unit.Find("in")!).ShouldBe("27 in");
        new Bound(50, true) { Written = Quantity.Parse("50 mm") }
            .Show(Millimetre)
            .ShouldBe("50 mm");
        new Bound(50, true).Show(Millimetre).ShouldBe("50 mm");
    }

    [Fact]
    public void Limits_that_mean_the_same_are_equal_however_they_are_written()
    {
        var other = new Bound(Quantity.Parse("685.8 mm").Base, true) { Written = Quantity.Parse("685.8 mm") };
        Written.ShouldBe(other);
        Written.GetHashCode().ShouldBe(other.GetHashCode());
        new Bounds(null, Written).ShouldBe(new Bounds(null, other));
        new Bounds(null, Written).ToString().ShouldBe(new Bounds(null, other).ToString());
        Written.ShouldNotBe(other with { Closed = false });
    }

    [Fact]
    public void A_limit_that_was_changed_does_not_tell_what_was_written_before()
    {
        var changed = Written with { Value = 700 };
        changed.Written.ShouldBeNull();
        changed.Show(Millimetre).ShouldBe("700 mm");
    }
}
