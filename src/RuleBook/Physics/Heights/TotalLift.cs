using Fractions;

namespace RuleBook.Physics.Heights;

/// <summary>How far the guard comes up from the ground.</summary>
internal static class TotalLift
{
    /// <summary>Suspension, body block and half the growth in tyre diameter together, mm; the tyres' own deflection is left out.</summary>
    /// <param name="suspensionMm">Suspension lift, mm.</param>
    /// <param name="bodyBlockMm">Body block, mm.</param>
    /// <param name="tyreMm">Half the growth in overall diameter, mm.</param>
    public static Fraction Mm(Fraction suspensionMm, Fraction bodyBlockMm, Fraction tyreMm) => suspensionMm + bodyBlockMm + tyreMm;
}
