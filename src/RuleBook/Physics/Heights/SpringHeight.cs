using Fractions;

namespace RuleBook.Physics.Heights;

/// <summary>One point of a spring's line of height against load, as its maker states it.</summary>
internal abstract record SpringHeight
{
    private SpringHeight() { }

    /// <summary>Height gained over the maker's trim height while the axle carries a stated load.</summary>
    /// <param name="GainMm">Height gained, mm.</param>
    /// <param name="AxleLoadKg">The axle load at which it is gained, kg.</param>
    public sealed record Gain(Fraction? GainMm, Fraction? AxleLoadKg) : SpringHeight;

    /// <summary>Height of the guard over the wheel centre with nothing on the springs.</summary>
    /// <param name="FreeHeightMm">Wheel centre to guard edge at no load on the springs, mm.</param>
    /// <param name="TrimHeightMm">The maker's trim height between the same points, mm.</param>
    /// <param name="UnsprungKg">The part of the axle load that does not rest on the springs (wheels, hubs, axle), kg.</param>
    public sealed record Free(Fraction? FreeHeightMm, Fraction? TrimHeightMm, Fraction? UnsprungKg) : SpringHeight;
}
