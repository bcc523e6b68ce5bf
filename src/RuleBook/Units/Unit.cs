using System.Collections.Frozen;
using Fractions;

namespace RuleBook.Units;

/// <summary>A unit with its exact factor to the base unit of its dimension.</summary>
/// <param name="Symbol">How it is written after the number (<c>mm</c>); empty for a count.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="ToBase">Exact factor to the dimension's base unit.</param>
/// <remarks>
/// Inch and pound by the International Yard and Pound Agreement of 1959 (25.4 mm; 0.453 592 37 kg);
/// standard acceleration of gravity 9.806 65 m/s² (3rd CGPM, 1901) in the pound-force per inch.
/// </remarks>
public sealed record Unit(string Symbol, Dimension Dimension, Fraction ToBase)
{
    private static readonly FrozenDictionary<string, Unit> BySymbol = new Unit[]
    {
        new("mm", Dimension.Length, 1),
        new("cm", Dimension.Length, 10),
        new("m", Dimension.Length, 1000),
        new("in", Dimension.Length, new Fraction(254, 10)),
        new("kg", Dimension.Mass, 1),
        new("t", Dimension.Mass, 1000),
        new("lb", Dimension.Mass, new Fraction(45359237, 100000000)),
        new("L", Dimension.Volume, 1),
        new("mL", Dimension.Volume, new Fraction(1, 1000)),
        new("kg/L", Dimension.Density, 1),
        new("%", Dimension.Ratio, 1),
        new("km/h", Dimension.Speed, 1),
        new("N/mm", Dimension.Rate, 1),
        new("lbf/in", Dimension.Rate, new Fraction(44482216152605, 254000000000000)),
        new("deg", Dimension.Angle, 1),
        new("", Dimension.Count, 1),
    }.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    /// <summary>Every unit that is understood, currencies apart.</summary>
    public static IEnumerable<Unit> All => BySymbol.Values.OrderBy(unit => unit.Dimension).ThenBy(unit => unit.ToBase);

    /// <summary>The unit written <paramref name="symbol"/>, or null. Three capital letters are a currency, as in ISO 4217.</summary>
    public static Unit? Find(string symbol) =>
        BySymbol.GetValueOrDefault(symbol) ?? (IsCurrency(symbol) ? new Unit(symbol, Dimension.Money, 1) : null);

    /// <summary>The unit whose factor is 1 in <paramref name="dimension"/>; money has none, since a currency is not converted.</summary>
    /// <exception cref="InvalidOperationException">The dimension is money.</exception>
    public static Unit Base(Dimension dimension) =>
        BySymbol.Values.Single(unit => unit.Dimension == dimension && unit.ToBase == Fraction.One);

    /// <inheritdoc/>
    public override string ToString() => Symbol;

    private static bool IsCurrency(string symbol) => symbol.Length == 3 && symbol.All(char.IsAsciiLetterUpper);
}
