using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Dynamics;

/// <summary>Ground clearance midway between two axles, by the distance between them.</summary>
/// <remarks>
/// The form of the rule is that of Australian Design Rule 43/04 clause 6.4.2 (as quoted), at maximum loaded test mass on a level
/// road. The figure a metre is the rule's own and comes in as an argument.
/// </remarks>
internal static class Clearance
{
    /// <summary>The least clearance midway, mm.</summary>
    /// <param name="wheelbaseMm">Distance between the two axles, mm; above zero.</param>
    /// <param name="mmPerMetre">Clearance that the rule asks for a metre of that distance, mm/m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public static Fraction LeastMidwayMm(Fraction wheelbaseMm, Fraction mmPerMetre)
    {
        Must.BeAboveZero(wheelbaseMm, nameof(wheelbaseMm));
        return mmPerMetre * wheelbaseMm / 1000;
    }

    /// <summary>A measured clearance midway against the least.</summary>
    /// <param name="measuredMm">Clearance as measured, mm.</param>
    /// <param name="wheelbaseMm">Distance between the two axles, mm; above zero.</param>
    /// <param name="mmPerMetre">Clearance that the rule asks for a metre of that distance, mm/m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public static LengthCheck Check(Fraction measuredMm, Fraction wheelbaseMm, Fraction mmPerMetre) =>
        new(measuredMm, LeastMidwayMm(wheelbaseMm, mmPerMetre));
}
