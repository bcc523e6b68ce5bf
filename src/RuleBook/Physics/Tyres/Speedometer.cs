using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>What a change of overall diameter does to the speed that is shown.</summary>
/// <remarks>Takes the rolling radius as proportional to the overall diameter and the vehicle's speed constant as unchanged.</remarks>
internal static class Speedometer
{
    /// <summary>True speed after the change (km/h) at an indicated speed that was <paramref name="trueBefore"/> (km/h) before it.</summary>
    /// <returns>Not established where one of the diameters is not.</returns>
    public static DerivedFigure TrueSpeed(Fraction trueBefore, OverallDiameter before, OverallDiameter after)
    {
        if (new[] { before, after }.FirstOrDefault(tyre => tyre.Millimetres is null) is { } unknown)
            return new DerivedFigure(null, $"the overall diameter of {unknown.Size.Designation} is not established: {unknown.Derivation}");

        var (old, now) = (before.Millimetres!.Value, after.Millimetres!.Value);
        var speed = trueBefore * now / old;
        return new DerivedFigure(
            speed,
            $"{Numbers.Show(trueBefore)} x {Numbers.Show(now)} / {Numbers.Show(old)} = {Numbers.Show(speed)} km/h"
        );
    }

    /// <summary>
    /// The largest growth in overall diameter (%) that still complies when <paramref name="indicated"/> is shown at the true speed
    /// <paramref name="trueBefore"/> on the tyres before the change: where a speedometer may never read low, its over-reading is the whole
    /// allowance. Speeds in km/h, above zero.
    /// </summary>
    public static Fraction LargestGrowthPercent(SpeedometerRule rule, Fraction indicated, Fraction trueBefore) =>
        100 * rule.HighestTrue(indicated) / trueBefore - 100;
}
