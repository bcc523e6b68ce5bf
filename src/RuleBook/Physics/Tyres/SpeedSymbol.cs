using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>A speed symbol and the speed for which a tyre so marked is made.</summary>
/// <param name="Symbol">The symbol as marked: <c>S</c>, <c>A6</c>, <c>ZR</c>, <c>(Y)</c>.</param>
/// <param name="KilometresPerHour">The speed in km/h; where <paramref name="IsOver"/>, the tyre is good for more than this.</param>
/// <param name="IsOver">The table says "over" the speed (<c>Z</c>, <c>ZR</c>, <c>(Y)</c>): how far over is the maker's to say.</param>
/// <remarks>Published charts of the tyre trade, which agree. Ordered by speed, not by letter: H (210) comes after U (200).</remarks>
public sealed record SpeedSymbol(string Symbol, int KilometresPerHour, bool IsOver = false)
{
    /// <summary>Every symbol, from the slowest to the fastest.</summary>
    internal static ImmutableArray<SpeedSymbol> All { get; } =
    [
        new("A1", 5),
        new("A2", 10),
        new("A3", 15),
        new("A4", 20),
        new("A5", 25),
        new("A6", 30),
        new("A7", 35),
        new("A8", 40),
        new("B", 50),
        new("C", 60),
        new("D", 65),
        new("E", 70),
        new("F", 80),
        new("G", 90),
        new("J", 100),
        new("K", 110),
        new("L", 120),
        new("M", 130),
        new("N", 140),
        new("P", 150),
        new("Q", 160),
        new("R", 170),
        new("S", 180),
        new("T", 190),
        new("U", 200),
        new("H", 210),
        new("V", 240),
        new("Z", 240, true),
        new("ZR", 240, true),
        new("W", 270),
        new("Y", 300),
        new("(Y)", 300, true),
    ];

    /// <summary>The symbol written <paramref name="symbol"/> in capitals, or null.</summary>
    internal static SpeedSymbol? Find(string symbol) =>
        All.FirstOrDefault(known => string.Equals(known.Symbol, symbol, StringComparison.Ordinal));

    /// <summary>Whether a tyre so marked is good for <paramref name="speed"/> (km/h); null where only its maker can say.</summary>
    public bool? IsGoodFor(Fraction speed) =>
        speed <= KilometresPerHour ? true
        : IsOver ? null
        : false;

    /// <summary>The symbol as marked.</summary>
    public override string ToString() => Symbol;
}
