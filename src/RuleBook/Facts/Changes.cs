using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>What a job adds to a vehicle and states only in parts.</summary>
internal static class Changes
{
    /// <summary>Where a modification states its tanks.</summary>
    private const string AddedTanks = "modification.tanks";

    /// <summary>Nominal capacity of the fuel tanks added; a tank without a capacity is there all the same. Null where none is.</summary>
    public static Derived? FuelAdded(Job job)
    {
        var added = job
            .Plan.Tanks.Where(tank => tank.Path.StartsWith(AddedTanks, StringComparison.Ordinal))
            .Select(tank => tank.CapacityL)
            .ToImmutableArray();
        if (added.IsEmpty)
            return null;
        var known = added.OfType<Fraction>().Aggregate(Fraction.Zero, (sum, capacity) => sum + capacity);
        return added.Contains(null)
            ? new Derived(new Interval(known, null), "a tank is added, its capacity is not stated")
            : new Derived(
                Interval.Of(known),
                $"{string.Join(" + ", added.Select(capacity => Numbers.Show(capacity!.Value)))} = {Numbers.Show(known)} L"
            );
    }
}
