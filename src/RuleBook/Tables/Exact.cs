using System.Numerics;
using Fractions;

namespace RuleBook.Tables;

/// <summary>
/// A rational number for comparing and adding: two 64-bit integers compared by 128-bit cross multiplication, and a fraction of any size
/// only where those do not hold it. Always exact.
/// </summary>
internal readonly struct Exact : IComparable<Exact>
{
    private readonly long numerator;
    private readonly long denominator; // positive; zero where the value is kept in large
    private readonly object? large;

    public Exact(long numerator, long denominator = 1)
    {
        if (denominator > 0 && numerator != long.MinValue)
        {
            (this.numerator, this.denominator) = (numerator, denominator);
            return;
        }

        large = new Fraction(numerator, denominator);
    }

    private Exact(Fraction value) => large = value;

    public Fraction Value =>
        denominator == 0
            ? large is Fraction value
                ? value
                : Fraction.Zero
            : new Fraction(numerator, denominator);

    /// <summary>
    /// Whether it is two 32-bit integers: what is multiplied then fits into 64 bits, and so does the sum of two such products.
    /// </summary>
    private bool IsSmall => denominator != 0 && numerator == (int)numerator && denominator == (int)denominator;

    public static Exact operator +(in Exact left, in Exact right)
    {
        if (left.IsSmall && right.IsSmall)
            return left.denominator == right.denominator
                ? new Exact(left.numerator + right.numerator, left.denominator)
                : new Exact(left.numerator * right.denominator + right.numerator * left.denominator, left.denominator * right.denominator);
        if (left.denominator == 0 || right.denominator == 0)
            return Of(left.Value + right.Value);
        return Of(
            (Int128)left.numerator * right.denominator + (Int128)right.numerator * left.denominator,
            (Int128)left.denominator * right.denominator
        );
    }

    public static Exact operator *(in Exact left, in Exact right) =>
        left.IsSmall && right.IsSmall ? new Exact(left.numerator * right.numerator, left.denominator * right.denominator)
        : left.denominator == 0 || right.denominator == 0 ? Of(left.Value * right.Value)
        : Of((Int128)left.numerator * right.numerator, (Int128)left.denominator * right.denominator);

    public static Exact Of(Fraction value)
    {
        var (over, under) = (value.Numerator, value.Denominator);
        return Fits(over) && Fits(under) && under.Sign > 0 ? new Exact((long)over, (long)under) : new Exact(value);
    }

    public int CompareTo(Exact other) => CompareTo(in other);

    /// <inheritdoc cref="CompareTo(Exact)"/>
    public int CompareTo(in Exact other)
    {
        if (denominator == other.denominator && denominator != 0)
            return numerator.CompareTo(other.numerator);
        if (IsSmall && other.IsSmall)
            return (numerator * other.denominator).CompareTo(other.numerator * denominator);
        return denominator == 0 || other.denominator == 0
            ? Value.CompareTo(other.Value)
            : ((Int128)numerator * other.denominator).CompareTo((Int128)other.numerator * denominator);
    }

    public override string ToString() => Value.ToString();

    private static Exact Of(Int128 over, Int128 under)
    {
        if (!Fits(over) || !Fits(under))
        {
            var shared = Divisor(Int128.Abs(over), under);
            (over, under) = (over / shared, under / shared);
        }

        return Fits(over) && Fits(under)
            ? new Exact((long)over, (long)under)
            : new Exact(new Fraction((BigInteger)over, (BigInteger)under));
    }

    private static Int128 Divisor(Int128 left, Int128 right)
    {
        while (right != 0)
            (left, right) = (right, left % right);
        return left;
    }

    private static bool Fits(Int128 value) => value > long.MinValue && value <= long.MaxValue;

    private static bool Fits(BigInteger value) => value.CompareTo(long.MinValue) > 0 && value.CompareTo(long.MaxValue) <= 0;
}
