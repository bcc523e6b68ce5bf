using Fractions;
using RuleBook.Units;

namespace RuleBook.Tests.Units;

/// <summary>
/// Kleene's strong three-valued logic over what is known of a measure (S. C. Kleene, Introduction to Metamathematics, 1952, section 64).
/// </summary>
public sealed class IntervalTests
{
    [Theory]
    [InlineData(50, 50, true, Truth.Yes)] // 50 mm is within "at most 50 mm"
    [InlineData(50, 50, false, Truth.No)] // and not "under 50 mm"
    [InlineData(40, 60, true, Truth.Unknown)]
    [InlineData(51, 60, true, Truth.No)]
    public void An_upper_limit_is_kept_broken_or_open(int low, int high, bool closed, Truth expected) =>
        new Interval(low, high).Within(new Bounds(null, new Bound(50, closed))).ShouldBe(expected);

    [Fact]
    public void A_tenth_of_a_millimetre_over_the_limit_is_over_it() =>
        Interval.Of(new Fraction(501, 10)).Within(new Bounds(null, new Bound(50, true))).ShouldBe(Truth.No);

    [Theory]
    [InlineData(Truth.Yes, Truth.Unknown, Truth.Unknown)]
    [InlineData(Truth.No, Truth.Unknown, Truth.No)]
    [InlineData(Truth.Yes, Truth.Yes, Truth.Yes)]
    public void Both_is_the_lesser_of_two_truths(Truth left, Truth right, Truth both) => left.And(right).ShouldBe(both);
}
