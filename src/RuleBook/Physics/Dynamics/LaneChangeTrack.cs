using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Dynamics;

/// <summary>The cones to set out for a lane-change test, from the width of the vehicle. The test speed is not established here.</summary>
public static class LaneChangeTrack
{
    /// <summary>
    /// Double lane change of ISO 3888-1 (read in open simulation code that cites the 2018 edition): six sections, 125 m.
    /// </summary>
    /// <param name="vehicleWidthMm">Width of the vehicle without mirrors, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not above zero.</exception>
    public static ImmutableArray<LaneSection> DoubleLaneChange(Fraction vehicleWidthMm)
    {
        Must.BeAboveZero(vehicleWidthMm, nameof(vehicleWidthMm));
        return
        [
            new(1, 15_000, Gate(11, vehicleWidthMm)),
            new(2, 30_000, null),
            new(3, 25_000, Gate(12, vehicleWidthMm)),
            new(4, 25_000, null),
            new(5, 15_000, Gate(13, vehicleWidthMm)),
            new(6, 15_000, Gate(13, vehicleWidthMm)),
        ];
    }

    /// <summary>
    /// Obstacle avoidance of ISO 3888-2: five sections, 61 m (summary of the standard; widths read in open simulation code). The last
    /// gate is never below 3 m: one code base takes the lesser, which would make the gate after the swerve tighter than the one in it.
    /// </summary>
    /// <param name="vehicleWidthMm">Width of the vehicle without mirrors, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not above zero.</exception>
    public static ImmutableArray<LaneSection> ObstacleAvoidance(Fraction vehicleWidthMm)
    {
        Must.BeAboveZero(vehicleWidthMm, nameof(vehicleWidthMm));
        var last = Gate(13, vehicleWidthMm);
        return
        [
            new(1, 12_000, Gate(11, vehicleWidthMm)),
            new(2, 13_500, null),
            new(3, 11_000, vehicleWidthMm + 1000),
            new(4, 12_500, null),
            new(5, 12_000, last < 3000 ? 3000 : last),
        ];
    }

    private static Fraction Gate(int tenths, Fraction vehicleWidthMm) => (vehicleWidthMm * tenths / 10) + 250;
}
