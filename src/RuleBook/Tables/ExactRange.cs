using Fractions;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>What is known of a number: a range whose ends are missing, open or closed.</summary>
internal readonly struct ExactRange
{
    private readonly bool hasLow;
    private readonly bool hasHigh;
    private readonly bool lowOpen;
    private readonly bool highOpen;
    private readonly bool isPoint; // made of one value; a range may still turn out to hold just one
    private readonly Exact low;
    private readonly Exact high;

    public ExactRange(Exact value)
        : this(value, value, true, true, false, false) => isPoint = true;

    public ExactRange(Exact? low, bool lowOpen, Exact? high, bool highOpen)
        : this(low ?? default, high ?? default, low is not null, high is not null, lowOpen, highOpen) { }

    private ExactRange(Exact low, Exact high, bool hasLow, bool hasHigh, bool lowOpen, bool highOpen) =>
        (this.low, this.high, this.hasLow, this.hasHigh, this.lowOpen, this.highOpen) = (low, high, hasLow, hasHigh, lowOpen, highOpen);

    public static ExactRange Anything => default;

    public Exact? Low => hasLow ? low : null;

    public Exact? High => hasHigh ? high : null;

    /// <summary>Whether exactly one value is possible.</summary>
    public bool IsExact => isPoint || hasLow && hasHigh && !lowOpen && !highOpen && low.CompareTo(high) == 0;

    /// <summary>Whether anything at all is known.</summary>
    public bool IsKnown => hasLow || hasHigh;

    public static ExactRange operator +(in ExactRange left, in ExactRange right) =>
        left.isPoint && right.isPoint
            ? new(left.low + right.low)
            : new(
                left.hasLow && right.hasLow ? left.low + right.low : default,
                left.hasHigh && right.hasHigh ? left.high + right.high : default,
                left.hasLow && right.hasLow,
                left.hasHigh && right.hasHigh,
                left.lowOpen || right.lowOpen,
                left.highOpen || right.highOpen
            );

    /// <summary>Times a positive factor.</summary>
    public static ExactRange operator *(in ExactRange range, Exact factor) =>
        range.isPoint
            ? new(range.low * factor)
            : new(
                range.hasLow ? range.low * factor : default,
                range.hasHigh ? range.high * factor : default,
                range.hasLow,
                range.hasHigh,
                range.lowOpen,
                range.highOpen
            );

    public static ExactRange Of(Interval interval) => new(Of(interval.Low), false, Of(interval.High), false);

    /// <summary>From the lower end of this range to the upper end of a later one.</summary>
    public ExactRange Through(ExactRange later) => new(low, later.high, hasLow, later.hasHigh, lowOpen, later.highOpen);

    /// <summary>What both allow; null where that is nothing.</summary>
    public ExactRange? Meet(in ExactRange other)
    {
        var (from, to) = (this, other);
        if (other.hasLow && (!hasLow || other.low.CompareTo(low) is var side && (side > 0 || side == 0 && other.lowOpen)))
            from = other;
        if (hasHigh && (!other.hasHigh || high.CompareTo(other.high) is var end && (end < 0 || end == 0 && highOpen)))
            to = this;
        var met = from.Through(to);
        return
            met.hasLow && met.hasHigh && met.low.CompareTo(met.high) is var left && (left > 0 || left == 0 && (met.lowOpen || met.highOpen))
            ? null
            : met;
    }

    /// <summary>The first and the last cell of an axis that it reaches.</summary>
    public (int First, int Last) On(Axis axis)
    {
        if (isPoint)
        {
            var cell = axis.Place(low);
            return (cell, cell);
        }

        var first = hasLow ? axis.Place(low) : 0;
        if (hasLow && lowOpen && (first & 1) == 1)
            first++;
        if (hasLow && hasHigh && !lowOpen && !highOpen && low.CompareTo(high) == 0)
            return (first, first);
        var last = hasHigh ? axis.Place(high) : axis.Cells - 1;
        if (hasHigh && highOpen && (last & 1) == 1)
            last--;
        return (first, Math.Max(first, last));
    }

    private static Exact? Of(Fraction? value) => value is { } known ? Exact.Of(known) : null;
}
