using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>Everything that a combination is held against.</summary>
/// <param name="Vehicle">The vehicle's ratings and its tyres' capacity.</param>
/// <param name="Trailer">The trailer's and the coupling's limits.</param>
/// <param name="UnloadedKg">Unloaded mass of the vehicle, kg, for the default where its maker gives no tow rating.</param>
/// <param name="DefaultRatio">Ratio of that mass by the jurisdiction's rule for this trailer's brakes; null where it has none.</param>
internal sealed record CombinationLimits(
    VehicleLimits Vehicle,
    TrailerLimits Trailer,
    Fraction? UnloadedKg = null,
    Fraction? DefaultRatio = null
);
