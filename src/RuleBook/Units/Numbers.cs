using System.Globalization;
using System.Numerics;
using Fractions;

namespace RuleBook.Units;

/// <summary>How an exact number is written for a reader.</summary>
internal static class Numbers
{
    /// <summary>
    /// Exact where it has at most <paramref name="decimals"/> decimals; otherwise rounded half away from zero to that many.
    /// Never used to decide anything.
    /// </summary>
    public static string Show(Fraction value, int decimals = 3)
    {
        if (value.Denominator.IsOne)
            return value.Numerator.ToString(CultureInfo.InvariantCulture);
        var scale = BigInteger.Pow(10, decimals);
        var scaled = BigInteger.Abs(value.Numerator) * scale;
        var (whole, rest) = BigInteger.DivRem(scaled, value.Denominator);
        if (rest * 2 >= value.Denominator)
            whole++;
        var digits = whole.ToString(CultureInfo.InvariantCulture).PadLeft(decimals + 1, '0');
        var text = $"{digits[..^decimals]}.{digits[^decimals..]}".TrimEnd('0').TrimEnd('.');
        return value.Numerator.Sign < 0 && !whole.IsZero ? "-" + text : text;
    }

    /// <summary>The nearest whole number; a half goes up (the handbooks' rule for section heights).</summary>
    public static Fraction RoundHalfUp(Fraction value)
    {
        var twice = value * 2 + 1;
        var whole = BigInteger.DivRem(twice.Numerator, twice.Denominator * 2, out var rest);
        return new Fraction(rest.Sign < 0 ? whole - 1 : whole);
    }
}
