using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>The fuel between two states: density times the litres that are added, tank by tank.</summary>
/// <remarks>
/// Tare mass carries its few litres in all, not in each tank: the main tanks share them by capacity, so that one main tank gives
/// density x (capacity - 10 L). Common practice: at unladen mass every tank is full, auxiliary ones too.
/// </remarks>
internal static class FuelChange
{
    internal static IEnumerable<BudgetEntry> Between(
        Fraction? startL, Fraction? targetL, IReadOnlyList<FuelTank> tanks, LoadChecks findings)
    {
        const string Adds = "the mass of its fuel, and with it the total";
        if (Nullable.Equals(startL, targetL)) yield break;
        if (tanks.Count == 0)
        {
            findings.Lacks("vehicle.tanks", "the mass of fuel to add, and with it the total");
            yield return new BudgetEntry("fuel", null, null, "vehicle.tanks");
            yield break;
        }

        foreach (var tank in tanks)
        {
            var litres = Fill(targetL, tank, tanks) - Fill(startL, tank, tanks);
            if (litres is { IsZero: true }) continue;
            if (tank.CapacityL is null) findings.Lacks(tank.Path + ".capacity", Adds);
            if (tank.DensityKgPerL is null) findings.Lacks(tank.Path + ".fuel", Adds);
            var derivation = litres is { } added && tank.DensityKgPerL is { } density
                ? $"{Numbers.Show(added)} L x {Numbers.Show(density)} kg/L"
                : null;
            yield return new BudgetEntry(
                $"fuel, {tank.Name}", litres * tank.DensityKgPerL, tank.BehindFrontAxleMm, tank.Path + ".behind-front-axle", derivation);
        }
    }

    private static Fraction? Fill(Fraction? fuelL, FuelTank tank, IReadOnlyList<FuelTank> tanks)
    {
        if (fuelL is not { } litres) return tank.CapacityL;
        if (tank.Auxiliary || litres.IsZero) return Fraction.Zero;
        var mains = tanks.Where(other => !other.Auxiliary)
            .Aggregate((Fraction?)Fraction.Zero, (sum, other) => sum + other.CapacityL);
        if (mains is not { } capacity) return null;
        return litres >= capacity ? tank.CapacityL : litres * tank.CapacityL / capacity;
    }
}
