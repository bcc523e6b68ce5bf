using System.Globalization;
using System.Numerics;
using Fractions;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Exports;

/// <summary>Exact numbers as decimals of the base unit; a day is the number yyyymmdd, which orders as days do.</summary>
internal static class Decimals
{
    /// <summary>
    /// So many decimals a column has: all of a pound (0.453 592 37 kg), and half of it with the one more that every engine's decimals hold.
    /// </summary>
    public const int Places = 8;

    /// <summary>Digits that a column has in all: what 64 bits hold, in every engine.</summary>
    public const int Digits = 18;

    /// <summary>The value; rounded where it has more decimals than a column.</summary>
    public static string Of(Measure measure, Fraction value) =>
        measure.IsDate ? DateOnly.FromDayNumber((int)value.ToDecimal()).ToString("yyyyMMdd", CultureInfo.InvariantCulture) : Of(value);

    /// <inheritdoc cref="Of(Measure, Fraction)"/>
    public static string Of(Fraction value) => Numbers.Show(value, Places);

    /// <summary>Whether a column holds the value as it is.</summary>
    public static bool IsExact(Fraction value) => (BigInteger.Pow(10, Places) * value.Numerator % value.Denominator).IsZero;
}
