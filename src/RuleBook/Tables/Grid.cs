using System.Numerics;
using System.Runtime.CompilerServices;
using Fractions;

namespace RuleBook.Tables;

/// <summary>
/// The whole numbers on which a table counts its measures: so many steps to a base unit that every edge of the table and every hundredth of
/// a thousandth lies on one. What lies on the grid is placed by comparing 64-bit integers; what does not, or is too large, is compared as a
/// fraction. Both are exact.
/// </summary>
internal readonly struct Grid
{
    /// <summary>The most times that a measure may count in a sum.</summary>
    public const int Times = 1 << 8;

    /// <summary>Stands for the steps of what is not stated: it follows from others, or is unknown.</summary>
    public const long Nowhere = long.MinValue;

    /// <summary>Stands for the steps of a range, or of a value that does not lie on the grid.</summary>
    public const long Off = long.MinValue + 1;

    private const long Most = long.MaxValue / (4 * Times); // differences of sums still fit
    private const int Decimals = 100_000;
    private const int Finest = 1 << 30;

    private readonly long whole;
    private readonly long far; // the largest whole number that is not too large

    private Grid(long whole, int parts) => (this.whole, Steps, far) = (whole, whole * parts, Most / (whole * parts));

    /// <summary>Steps to a base unit.</summary>
    public long Steps { get; }

    /// <summary>The grid on which values lie; where that would be too fine, the one of decimals.</summary>
    /// <param name="values">Edges, and what measures are that a job does not state.</param>
    /// <param name="parts">What is stated has to lie on every so manieth step, so that the shares of it in sums lie on a step.</param>
    public static Grid Of(IEnumerable<Fraction> values, int parts)
    {
        var whole = new BigInteger(Decimals);
        foreach (var value in values)
        {
            whole *= value.Denominator / BigInteger.GreatestCommonDivisor(whole, value.Denominator);
            if (whole > Finest)
                return new Grid(Decimals, parts);
        }

        return new Grid((long)whole, parts);
    }

    /// <summary>The least common multiple of two positive numbers.</summary>
    public static int Common(int left, int right) => left / (int)BigInteger.GreatestCommonDivisor(left, right) * right;

    /// <summary>Where on the grid a number lies; false where it does not lie on it.</summary>
    /// <param name="numerator">What is divided.</param>
    /// <param name="denominator">By what.</param>
    /// <param name="at">Steps from zero.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Holds(long numerator, long denominator, out long at)
    {
        if (denominator == 1)
        {
            at = unchecked(numerator * Steps);
            return numerator <= far && numerator >= -far;
        }

        at = 0;
        return denominator > 0
            && whole % denominator == 0
            && Math.BigMul(numerator, Steps / denominator, out at) == at >> 63
            && at is <= Most and >= -Most;
    }

    /// <inheritdoc cref="Holds(long, long, out long)"/>
    public bool Holds(Fraction value, out long at)
    {
        var (over, under) = (value.Numerator, value.Denominator);
        if (over.GetBitLength() < 63 && under.GetBitLength() < 63)
            return Holds((long)over, (long)under, out at);
        at = 0;
        return false;
    }

    /// <summary>The number at so many steps.</summary>
    public Exact Value(long at) => new(at, Steps);
}
