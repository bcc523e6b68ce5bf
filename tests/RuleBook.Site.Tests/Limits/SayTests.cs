using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Site.Tests.Limits;

/// <summary>The words of a limit follow from its bounds: closed ends are "at most" and "at least", open ones "under" and "over".</summary>
public sealed class SayTests
{
    private static readonly Measure Lift = new("x", "x", Unit.Find("mm")!, "x", null, false, false, false, "x", default);

    private static string Say(Bound? lower, Bound? upper) =>
        Site.Limits.Say.Limit(Lift, new Limit("x", LimitKind.Bounded, new Bounds(lower, upper), default(Mark)));

    [Fact]
    public void A_closed_upper_end_is_at_most() => Say(null, new Bound(50, true)).ShouldBe("at most 50 mm");

    [Fact]
    public void An_open_upper_end_is_under() => Say(null, new Bound(50, false)).ShouldBe("under 50 mm");

    [Fact]
    public void A_range_without_width_is_exactly_its_value() => Say(new Bound(0, true), new Bound(0, true)).ShouldBe("exactly 0 mm");

    [Fact]
    public void The_same_up_and_down_is_told_once() => Say(new Bound(-50, true), new Bound(50, true)).ShouldBe("at most 50 mm up or down");

    /// <summary>Florida Statutes, 316.251: bumpers at most 22 in; 22 × 25.4 mm.</summary>
    [Fact]
    public void A_limit_in_inches_is_told_in_inches_first() =>
        Say(null, new Bound(Quantity.Parse("22 in").Base, true) { Written = Quantity.Parse("22 in") }).ShouldBe("at most 22 in (558.8 mm)");

    [Fact]
    public void No_limit_and_a_limit_that_nobody_established_are_told_apart()
    {
        Site.Limits.Say.Limit(Lift, new Limit("x", LimitKind.None, null, default)).ShouldBe("no limit");
        Site.Limits.Say.Limit(Lift, new Limit("x", LimitKind.NotEstablished, null, default)).ShouldBe("not established");
    }
}
