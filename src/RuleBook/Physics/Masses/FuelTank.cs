using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>A fuel tank of the vehicle.</summary>
/// <param name="Path">Its path in the job, such as <c>vehicle.tanks[0]</c>.</param>
/// <param name="Name">What a reader calls it.</param>
/// <param name="CapacityL">Nominal capacity, L.</param>
/// <param name="DensityKgPerL">Density of its fuel, kg/L: data with a source, never a constant of this program.</param>
/// <param name="BehindFrontAxleMm">Centre of the fuel behind the front axle, mm; negative ahead of it.</param>
/// <param name="Auxiliary">True for a tank beside the main ones, which is empty at tare mass.</param>
internal sealed record FuelTank(
    string Path,
    string Name,
    Fraction? CapacityL,
    Fraction? DensityKgPerL,
    Fraction? BehindFrontAxleMm,
    bool Auxiliary = false
)
{
    /// <summary>Stands in the place of the maker's main tanks, which are taken out.</summary>
    public bool Replaces { get; init; }

    /// <summary>
    /// The tank empty, where it is added, less the ones that it takes the place of; null for a tank that tare includes. Where its mass is
    /// not known, it is at least nothing: one that replaces others is taken to weigh no less than they do.
    /// </summary>
    public MassItem? Itself { get; init; }

    /// <summary>From the lightest to the heaviest fuel that it may hold where its own is not known, kg/L.</summary>
    public Interval AnyFuel { get; init; } = MassRange.FromZero;

    /// <summary>Density of its fuel, or of any that it may hold, kg/L.</summary>
    public Interval Densities => DensityKgPerL is { } density ? Interval.Of(density) : AnyFuel;
}
