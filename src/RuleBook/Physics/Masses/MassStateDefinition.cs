using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>What a mass state includes: how much fuel, and which kinds of item.</summary>
/// <param name="State">The state that is defined.</param>
/// <param name="FuelL">
/// Fuel aboard in litres, in the main tanks taken together with auxiliary tanks empty; null when every tank is full.
/// </param>
/// <param name="Carries">The kinds of item aboard.</param>
/// <remarks>
/// Tare mass in the wording of the Australian Design Rule definitions (as reproduced by trade pages): all reservoirs at nominal
/// capacity but 10 L of fuel only. The litres are an argument because the definition, not this program, sets them.
/// Whether "unladen" includes accessories that the owner fitted is a matter of each code; give another set where it does not.
/// </remarks>
internal sealed record MassStateDefinition(MassState State, Fraction? FuelL, ImmutableHashSet<ItemKind> Carries)
{
    /// <summary>Fixed accessories aboard, every tank full, auxiliary ones too.</summary>
    public static MassStateDefinition Unladen { get; } = new(MassState.Unladen, null, [ItemKind.FixedAccessory]);

    /// <summary>Everything aboard, every tank full.</summary>
    public static MassStateDefinition Loaded { get; } = new(MassState.Loaded, null, [.. Enum.GetValues<ItemKind>()]);

    /// <summary>As <see cref="Loaded"/>, but with the trailer unhitched.</summary>
    public static MassStateDefinition LoadedUnhitched { get; } = Loaded with { Carries = Loaded.Carries.Remove(ItemKind.BallLoad) };

    /// <summary>Empty, with the stated fuel in the main tanks together.</summary>
    /// <param name="fuelL">Fuel aboard in all, L.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fuel is negative.</exception>
    public static MassStateDefinition Tare(Fraction fuelL)
    {
        Must.NotBeNegative(fuelL, nameof(fuelL));
        return new MassStateDefinition(MassState.Tare, fuelL, []);
    }
}
