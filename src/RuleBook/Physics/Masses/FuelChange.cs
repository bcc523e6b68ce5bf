using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>The fuel between two states: density times the litres that are added, tank by tank.</summary>
/// <remarks>
/// Tare mass carries its few litres in all, not in each tank. Where they are, the definition does not say: they are taken to be in the
/// maker's main tanks, shared by capacity, so that one main tank gives density x (capacity - 10 L); a tank that replaces them takes them
/// over. Common practice: at unladen mass every tank is full, auxiliary ones too.
/// </remarks>
internal sealed class FuelChange(Fraction? startL, Fraction? targetL, IReadOnlyList<FuelTank> tanks, LoadChecks findings)
{
    private const string Adds = "the mass of its fuel, and with it the total";

    private readonly FuelTank[] replacing = [.. tanks.Where(tank => tank.Replaces)];
    private readonly FuelTank[] mains = [.. tanks.Where(tank => tank is { Auxiliary: false, Replaces: false })];

    internal IEnumerable<BudgetEntry> Entries()
    {
        if (Nullable.Equals(startL, targetL))
            yield break;
        if (mains.Length == 0 && replacing.Length == 0)
        {
            findings.Lacks("vehicle.tanks", "the mass of fuel to add, and with it the total");
            yield return new BudgetEntry("fuel, maker's tank (not given)", AtLeastNothing(), null, "vehicle.tanks");
        }

        foreach (var tank in tanks)
        {
            var litres = Target(tank) - Start(tank);
            if (litres is { IsZero: true })
                continue;
            if (litres is null)
                findings.Lacks(tank.Path + ".capacity", Adds);
            if (tank.DensityKgPerL is null)
                findings.Lacks(tank.Path + ".fuel", Adds);
            yield return new BudgetEntry(
                $"fuel, {tank.Name}",
                Mass(litres, tank),
                tank.BehindFrontAxleMm,
                tank.Path + ".behind-front-axle",
                Derivation(litres, tank)
            );
        }
    }

    /// <summary>Fuel is only added on the way to full tanks, and only taken out on the way back.</summary>
    private Interval AtLeastNothing() => targetL is null ? MassRange.FromZero : new Interval(null, Fraction.Zero);

    private Interval Mass(Fraction? litres, FuelTank tank) =>
        litres is not { } known ? AtLeastNothing()
        : known.IsPositive ? tank.Densities * known
        : new Interval(tank.Densities.High * known, tank.Densities.Low * known);

    private string? Derivation(Fraction? litres, FuelTank tank)
    {
        if (litres is not { } change)
            return null;
        var aboard =
            Start(tank) is { IsZero: false } start && Target(tank) is { } full && startL is not null
                ? $"{Numbers.Show(full)} L less {Numbers.Show(start)} L in tare"
                : $"{Numbers.Show(change)} L";
        return tank.DensityKgPerL is { } density ? $"{aboard}, x {Numbers.Show(density)} kg/L"
            : tank.Densities is { Low: { } low, High: { } high }
                ? $"{aboard}, x {Numbers.Show(low)} to {Numbers.Show(high)} kg/L: which fuel is not given"
            : null;
    }

    private Fraction? Start(FuelTank tank) => Fill(startL, tank);

    private Fraction? Target(FuelTank tank) => Fill(targetL, tank);

    private Fraction? Fill(Fraction? fuelL, FuelTank tank)
    {
        var replaced = replacing.Length > 0 && mains.Contains(tank);
        if (fuelL is not { } litres)
            return replaced ? Fraction.Zero : tank.CapacityL;
        if (tank.Auxiliary || litres.IsZero)
            return Fraction.Zero;
        var holders = mains.Length > 0 ? mains : replacing;
        if (!holders.Contains(tank))
            return Fraction.Zero;
        if (holders.Length == 1)
            return litres >= tank.CapacityL ? tank.CapacityL : litres;
        return holders.Aggregate((Fraction?)Fraction.Zero, (sum, other) => sum + other.CapacityL) is not { } capacity ? null
            : litres >= capacity ? tank.CapacityL
            : litres * tank.CapacityL / capacity;
    }
}
