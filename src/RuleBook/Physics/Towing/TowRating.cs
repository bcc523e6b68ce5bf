using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>The most that a trailer weighed alone may have.</summary>
/// <param name="Kg">The rating, kg.</param>
/// <param name="ByMaker">True for the maker's figure, false for the default by the mass of the vehicle.</param>
/// <param name="Fact">The path in the job from which it comes.</param>
internal sealed record TowRating(Fraction Kg, bool ByMaker, string Fact)
{
    /// <summary>The maker's figure; where there is none, a ratio of the vehicle's own unloaded mass.</summary>
    /// <param name="makersKg">The maker's figure for this kind of trailer, kg.</param>
    /// <param name="makersFact">The path of that figure.</param>
    /// <param name="unloadedKg">Unloaded mass of the vehicle, not coupled, kg.</param>
    /// <param name="defaultRatio">
    /// What the jurisdiction's rule multiplies that by for this kind of brakes; null where it has no such rule.
    /// </param>
    /// <returns>Null when neither is known.</returns>
    public static TowRating? Of(Fraction? makersKg, string makersFact, Fraction? unloadedKg, Fraction? defaultRatio) =>
        makersKg is { } given ? new TowRating(given, true, makersFact)
        : unloadedKg * defaultRatio is { } byMass ? new TowRating(byMass, false, "vehicle.tare")
        : null;

    /// <summary>
    /// Where the maker states no towing mass: rated towing capacity in the wording of the design rules (as reproduced by trade pages), the
    /// lesser of the tow equipment's rating and GCM - GVM, kg. Another number than the maker's figure.
    /// </summary>
    /// <param name="equipmentKg">Rating of the tow equipment, kg.</param>
    /// <param name="gcmKg">GCM, kg.</param>
    /// <param name="gvmKg">GVM, kg.</param>
    public static Fraction CapacityKg(Fraction equipmentKg, Fraction gcmKg, Fraction gvmKg) =>
        equipmentKg < gcmKg - gvmKg ? equipmentKg : gcmKg - gvmKg;
}
