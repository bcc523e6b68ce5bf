using System.Collections.Immutable;
using System.Globalization;
using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>A load index and the mass that a tyre so marked may carry.</summary>
/// <param name="Value">The index as marked on the tyre.</param>
/// <remarks>
/// UN Regulation 54, Annex 4 (list of symbols of load-capacity indices), also in ISO 4000-1. The annex itself was not opened: the
/// values are those on which three published charts of the tyre trade agree, their misprints left out.
/// </remarks>
/// <example><c>new LoadIndex(112).Kilograms</c> is 1120.</example>
public sealed record LoadIndex(int Value)
{
    /// <summary>The lowest index in the table.</summary>
    internal const int First = 60;

    /// <summary>The highest index in the table.</summary>
    internal const int Last = 130;

    /// <summary>The highest index that is read at all; the published charts reach from 0 to 150.</summary>
    internal const int HighestRead = 150;

    private static readonly ImmutableArray<int> Table =
    [
        250,
        257,
        265,
        272,
        280,
        290,
        300,
        307,
        315,
        325, // 60 to 69
        335,
        345,
        355,
        365,
        375,
        387,
        400,
        412,
        425,
        437, // 70 to 79
        450,
        462,
        475,
        487,
        500,
        515,
        530,
        545,
        560,
        580, // 80 to 89
        600,
        615,
        630,
        650,
        670,
        690,
        710,
        730,
        750,
        775, // 90 to 99
        800,
        825,
        850,
        875,
        900,
        925,
        950,
        975,
        1000,
        1030, // 100 to 109
        1060,
        1090,
        1120,
        1150,
        1180,
        1215,
        1250,
        1285,
        1320,
        1360, // 110 to 119
        1400,
        1450,
        1500,
        1550,
        1600,
        1650,
        1700,
        1750,
        1800,
        1850, // 120 to 129
        1900, // 130
    ];

    /// <summary>Mass in kg that one tyre may carry, or null where the index is outside the table.</summary>
    public Fraction? Kilograms => Value is >= First and <= Last ? Table[Value - First] : null;

    /// <summary>The least index in the table whose mass is at least <paramref name="kilograms"/> (one tyre); null where none is.</summary>
    internal static LoadIndex? LeastCarrying(Fraction kilograms)
    {
        var at = Table.ToList().FindIndex(mass => mass >= kilograms);
        return at < 0 ? null : new LoadIndex(First + at);
    }

    /// <summary>The mass in words, or why it is not established.</summary>
    public string Derivation =>
        Kilograms is { } mass ? $"load index {this} = {mass} kg" : $"load index {this} is outside the table held here ({First} to {Last})";

    /// <summary>The index as marked.</summary>
    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}
