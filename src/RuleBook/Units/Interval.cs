using Fractions;

namespace RuleBook.Units;

/// <summary>What is known of a measure: it lies in <c>[Low, High]</c>, exact; a missing end is unbounded.</summary>
/// <param name="Low">Least value, included.</param>
/// <param name="High">Greatest value, included.</param>
public readonly record struct Interval(Fraction? Low, Fraction? High)
{
    /// <summary>Nothing is known.</summary>
    public static Interval Anything { get; } = new(null, null);

    /// <summary>The value, where exactly one is possible.</summary>
    public Fraction? Exact => Low is { } low && High is { } high && low == high ? low : null;

    /// <summary>A known value.</summary>
    public static Interval Of(Fraction value) => new(value, value);

    /// <summary>Whether a value lies in it, the ends included.</summary>
    public bool Contains(Fraction value) => !(value < Low) && !(value > High);

    /// <summary>Sum of two independent measures.</summary>
    public static Interval operator +(Interval left, Interval right) => new(left.Low + right.Low, left.High + right.High);

    /// <summary>The measure times a positive factor.</summary>
    public static Interval operator *(Interval interval, Fraction factor) => new(interval.Low * factor, interval.High * factor);

    /// <summary>As <c>+</c>.</summary>
    public static Interval Add(Interval left, Interval right) => left + right;

    /// <summary>As <c>*</c>.</summary>
    public static Interval Multiply(Interval left, Fraction right) => left * right;

    /// <summary>Whether every, no or only some possible value lies within the bounds.</summary>
    public Truth Within(Bounds bounds) => Above(bounds.Lower).And(Below(bounds.Upper));

    private Truth Below(Bound? upper)
    {
        if (upper is null)
            return Truth.Yes;
        if (High is { } high && Passes(high, upper, 1))
            return Truth.Yes;
        return Low is { } low && !Passes(low, upper, 1) ? Truth.No : Truth.Unknown;
    }

    private Truth Above(Bound? lower)
    {
        if (lower is null)
            return Truth.Yes;
        if (Low is { } low && Passes(low, lower, -1))
            return Truth.Yes;
        return High is { } high && !Passes(high, lower, -1) ? Truth.No : Truth.Unknown;
    }

    private static bool Passes(Fraction value, Bound bound, int sign)
    {
        var side = value.CompareTo(bound.Value) * sign;
        return side < 0 || (side == 0 && bound.Closed);
    }
}
