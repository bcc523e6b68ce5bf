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

    /// <summary>A day that is excluded does not count: before 1 July 2024 ends with 30 June.</summary>
    [Theory]
    [InlineData(true, "up to 1 July 2024", "from 1 July 2024 on")]
    [InlineData(false, "before 1 July 2024", "after 1 July 2024")]
    public void A_day_that_counts_is_told_as_up_to_or_from_and_one_that_does_not_as_before_or_after(bool counts, string end, string start)
    {
        var day = new Bound(new DateOnly(2024, 7, 1).DayNumber, counts);
        var days = Lift with { IsDate = true };
        Site.Limits.Say.Bounds(days, new Bounds(null, day)).ShouldBe(end);
        Site.Limits.Say.Bounds(days, new Bounds(day, null)).ShouldBe(start);
    }

    [Fact]
    public void No_limit_and_a_limit_that_nobody_established_are_told_apart()
    {
        Site.Limits.Say.Limit(Lift, new Limit("x", LimitKind.None, null, default)).ShouldBe("no limit");
        Site.Limits.Say.Limit(Lift, new Limit("x", LimitKind.NotEstablished, null, default)).ShouldBe("not established");
    }

    /// <summary>Invented: goods vehicles, or what is driven by all wheels; the tier asks for stability control of either.</summary>
    [Fact]
    public void Each_description_of_the_vehicles_stands_with_what_opens_the_tier()
    {
        var when = new Predicate([Test("stability-control", "yes")]);
        var tier = new Tier("x", Pathway.NoCertificate, when, [], [], [], [], null, default);
        var vehicles = new Descriptions([new([Test("category", "NA")]), new([Test("four-wheel-drive", "yes")])]);

        Site.Limits.Say.When(Vocabulary.None, vehicles, tier)
            .ShouldBe("category NA; stability-control yes; or else four-wheel-drive yes; stability-control yes");
        Site.Limits.Say.When(Vocabulary.None, vehicles, null).ShouldBe("category NA; or else four-wheel-drive yes");

        static FactTest Test(string fact, string word) => new(fact, [word], null, default);
    }
}
