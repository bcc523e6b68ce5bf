using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>What the towing vehicle may still carry, by each of its two limits; the lower governs.</summary>
/// <param name="ByGvmKg">GVM less vehicle less ball load, kg.</param>
/// <param name="ByGcmKg">GCM less vehicle less the trailer, kg; the ball load is in the trailer's mass and is not taken off again.</param>
/// <remarks>Both formulas as a magazine prints them; the two are seldom equal.</remarks>
internal sealed record CargoLeft(Fraction ByGvmKg, Fraction ByGcmKg)
{
    /// <summary>The lower of the two, kg; negative when a limit is passed already.</summary>
    public Fraction Kg => ByGvmKg < ByGcmKg ? ByGvmKg : ByGcmKg;

    /// <summary>From the vehicle without ball load and the trailer weighed alone.</summary>
    /// <param name="vehicleKg">The vehicle without cargo and ball load, kg.</param>
    /// <param name="trailerAloneKg">The trailer alone, kg.</param>
    /// <param name="ballKg">Ball load, kg.</param>
    /// <param name="gvmKg">GVM, kg.</param>
    /// <param name="gcmKg">GCM, kg.</param>
    public static CargoLeft Of(Fraction vehicleKg, Fraction trailerAloneKg, Fraction ballKg, Fraction gvmKg, Fraction gcmKg) =>
        new(gvmKg - vehicleKg - ballKg, gcmKg - vehicleKg - trailerAloneKg);
}
