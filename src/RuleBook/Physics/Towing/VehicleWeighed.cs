using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>The vehicle alone as it stood on the weighbridge, whatever was aboard, held against its ratings.</summary>
/// <param name="Mass">What was read, whole and axle by axle.</param>
/// <param name="Checks">One record a comparison.</param>
internal sealed record VehicleWeighed(MassRange Mass, ImmutableArray<LoadCheck> Checks)
{
    /// <summary>Holds the readings of the vehicle alone against its ratings; null where there is none.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="limits">The ratings.</param>
    /// <param name="readingGuardKg">Guard band of one reading, kg.</param>
    internal static VehicleWeighed? Of(WeighbridgeReadings readings, VehicleLimits limits, Fraction readingGuardKg)
    {
        if (readings.Alone is not { } mass)
            return null;
        var checks = new LoadChecks();
        checks.CompareVehicle(mass, limits, readingGuardKg);
        return new VehicleWeighed(mass, checks.Checks);
    }
}
