using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;
using Fractions;
using RuleBook.Text;

namespace RuleBook.Units;

/// <summary>An exact amount with the unit in which it was written: <c>50 mm</c>, <c>2 in</c>, <c>3.5 t</c>.</summary>
/// <param name="Amount">The number before the unit, exact.</param>
/// <param name="Unit">The unit in which <paramref name="Amount"/> is given.</param>
/// <example><c>Quantity.Parse("2 in").Base</c> is exactly 50.8 (mm).</example>
public sealed record Quantity(Fraction Amount, Unit Unit)
{
    /// <summary>The most characters that a written quantity may have.</summary>
    public const int LongestText = 40;

    /// <summary>The amount in the base unit of the dimension (mm, kg, L, %, ...), exact.</summary>
    public Fraction Base => Amount * Unit.ToBase;

    /// <summary>What the quantity measures.</summary>
    public Dimension Dimension => Unit.Dimension;

    /// <summary>A quantity in the base unit of <paramref name="dimension"/>.</summary>
    public static Quantity Of(Fraction amount, Dimension dimension) => new(amount, Unit.Base(dimension));

    /// <summary>
    /// An amount that is no whole number of <paramref name="unit"/> and one of inches or pounds, in which it must have been written;
    /// null for every other.
    /// </summary>
    /// <param name="value">In the base unit of the dimension.</param>
    /// <param name="unit">The unit in which it would be told.</param>
    internal static Quantity? Customary(Fraction value, Unit unit) =>
        (value / unit.ToBase).Denominator.IsOne
            ? null
            : Unit
                .All.Where(other => other.Dimension == unit.Dimension && other.Symbol is "in" or "lb")
                .Select(other => new Quantity(value / other.ToBase, other))
                .FirstOrDefault(quantity => quantity.Amount.Denominator.IsOne);

    /// <summary>Reads <c>50 mm</c>; a decimal point, no thousands separator, the unit after a space.</summary>
    /// <returns>False, with <paramref name="error"/> saying what would be right, when it cannot be read.</returns>
    public static bool TryParse(string text, [NotNullWhen(true)] out Quantity? quantity, [NotNullWhen(false)] out string? error)
    {
        quantity = null;
        if (text.Length > LongestText || !TryTakeApart(text, out var number, out var symbol))
        {
            error = CommaIn(text) ?? "a quantity is a number and its unit, such as 50 mm, 3.5 t or 7 %";
            return false;
        }

        if (symbol.Length == 0)
        {
            error = $"the unit is missing: write {number} mm, kg, L or another of {Symbols()}";
            return false;
        }

        if (Unit.Find(symbol) is not { } unit)
        {
            error = $"'{symbol}' is not a known unit; known are {Symbols()}";
            return false;
        }

        quantity = new Quantity(ReadNumber(number), unit);
        error = null;
        return true;
    }

    /// <summary>Reads a quantity that is known to be well written.</summary>
    /// <exception cref="FormatException">The text is not a quantity.</exception>
    public static Quantity Parse(string text) =>
        TryParse(text, out var quantity, out var error) ? quantity : throw new FormatException(error);

    /// <summary>The same amount in another unit of the same dimension, exact.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public Quantity In(Unit unit) =>
        unit.Dimension == Dimension
            ? new Quantity(Base / unit.ToBase, unit)
            : throw new ArgumentException($"{unit} does not measure {Dimension}", nameof(unit));

    /// <summary>The amount and its unit, as written in data.</summary>
    public override string ToString() => $"{Numbers.Show(Amount)} {Unit.Symbol}".TrimEnd();

    private static string Symbols() => string.Join(", ", Unit.All.Where(unit => unit.Symbol.Length > 0).Select(unit => unit.Symbol));

    private static Fraction ReadNumber(string number)
    {
        var point = number.IndexOf('.', StringComparison.Ordinal);
        var digits = BigInteger.Parse(
            number.Replace(".", "", StringComparison.Ordinal),
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture
        );
        return point < 0 ? new Fraction(digits) : new Fraction(digits, BigInteger.Pow(10, number.Length - point - 1));
    }

    /// <summary>What is wrong with <c>45,5 mm</c> or <c>3,500 kg</c>; null of a text that no comma parts so.</summary>
    private static string? CommaIn(string text) =>
        text.Split(',') is [[.., >= '0' and <= '9'] whole, [>= '0' and <= '9', ..] rest]
        && TryTakeApart($"{whole}.{rest}", out var decimals, out _)
            ? $"a comma is no decimal point here: write {whole}.{rest}"
                + (decimals.Length - whole.Length == 4 ? $", or {whole}{rest} where thousands are meant" : "")
            : null;

    /// <summary>The number and the unit as written; the unit is empty where there is none.</summary>
    private static bool TryTakeApart(string text, out string number, out string unit)
    {
        var cursor = new Cursor(text);
        if (!cursor.Take("+"))
            cursor.Take("-");
        var isNumber = !cursor.TakeDecimal().IsEmpty;
        number = text[..^cursor.Rest.Length];
        unit = "";
        if (!isNumber || cursor.IsAtEnd)
            return isNumber;
        cursor.Skip();
        unit = cursor.Take(letter => char.IsAsciiLetter(letter) || letter is '%' or '/').ToString();
        return unit is [not '/', ..] && cursor.IsAtEnd;
    }
}
