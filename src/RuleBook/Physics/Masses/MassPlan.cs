using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>A vehicle, what its known mass was, and all that may be aboard.</summary>
/// <param name="Start">The known mass to start from.</param>
/// <param name="WheelbaseMm">Distance between the axles, mm.</param>
/// <param name="Tanks">Every fuel tank, the auxiliary ones too.</param>
/// <param name="Items">Accessories, occupants, luggage, load and ball load; their order changes no result.</param>
/// <param name="Limits">What the masses are held against.</param>
internal sealed record MassPlan(
    StartingMass Start,
    Fraction? WheelbaseMm,
    ImmutableArray<FuelTank> Tanks,
    ImmutableArray<MassItem> Items,
    VehicleLimits Limits
);
