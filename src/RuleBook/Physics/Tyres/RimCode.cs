using System.Collections.Frozen;
using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>The nominal rim diameter: its code (inches) and the whole millimetres that stand for it in the tyre standards.</summary>
/// <remarks>
/// The table of UN Regulations 30 and 54 (rim diameter code and d in millimetres): 25.4 mm per code number, rounded to the millimetre.
/// Codes 15 and 16 as used in a tyre retailer's worked examples; the others from memory. The specified rim (bead-seat) diameters of
/// ISO 4000-2 are other numbers (code 17 is 436.6 mm there) and never enter an overall diameter.
/// </remarks>
internal static class RimCode
{
    /// <summary>The smallest rim code that a size designation may have.</summary>
    public const int Smallest = 8;

    /// <summary>The largest rim code that a size designation may have.</summary>
    public const int Largest = 30;

    private static readonly FrozenDictionary<Fraction, int> Table = new Dictionary<Fraction, int>
    {
        [10] = 254,
        [12] = 305,
        [13] = 330,
        [14] = 356,
        [15] = 381,
        [16] = 406,
        [17] = 432,
        [18] = 457,
        [19] = 483,
        [20] = 508,
        [21] = 533,
        [22] = 559,
    }.ToFrozenDictionary();

    /// <summary>The nominal rim diameter in whole millimetres, or null where the table has no such code (half codes among them).</summary>
    public static Fraction? Millimetres(Fraction code) => Table.TryGetValue(code, out var millimetres) ? millimetres : null;

    /// <summary>
    /// Whether <paramref name="code"/> is a whole or half number of inches from <see cref="Smallest"/> to <see cref="Largest"/>.
    /// </summary>
    public static bool IsPossible(Fraction code) => code >= Smallest && code <= Largest && (code * 2).Denominator.IsOne;
}
