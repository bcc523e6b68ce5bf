using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>What a job changes on a vehicle and states only in parts: ratings raised, fuel tanks added.</summary>
internal static class Changes
{
    /// <summary>Where a modification states its tanks.</summary>
    private const string AddedTanks = "modification.tanks";

    /// <summary>Each measure with what is known of it; what the job does not change is left out.</summary>
    public static IEnumerable<(string Measure, Derived Known)> Of(Job job)
    {
        var (before, asked) = (job.Plan.Ratings, job.Plan.Rerated);
        if (Raised(before.FrontAxleKg, asked?.FrontAxleKg) is { } front) yield return ("front-axle-increase", front);
        if (Raised(before.RearAxleKg, asked?.RearAxleKg) is { } rear) yield return ("rear-axle-increase", rear);
        if (Raised(before.UnbrakedTowKg, asked?.UnbrakedTowKg) is { } unbraked) yield return ("unbraked-tow-increase", unbraked);
        if (Raised(before.BallKg, asked?.BallKg) is { } ball) yield return ("ball-increase", ball);
        if (Added(job) is { } fuel) yield return ("added-fuel-capacity", fuel);
    }

    private static Derived? Raised(Fraction? before, Fraction? asked) => (before, asked) switch
    {
        (_, null) => null,
        (null, _) => new Derived(Interval.Anything, "the rating before is not stated"),
        ({ } stated, { } now) => new Derived(Interval.Of(now - stated), $"{Numbers.Show(now)} - {Numbers.Show(stated)} = {Numbers.Show(now - stated)} kg"),
    };

    /// <summary>A tank without a capacity is there all the same.</summary>
    private static Derived? Added(Job job)
    {
        var added = job.Plan.Tanks.Where(tank => tank.Path.StartsWith(AddedTanks, StringComparison.Ordinal)).Select(tank => tank.CapacityL).ToImmutableArray();
        if (added.IsEmpty) return null;
        var known = added.OfType<Fraction>().Aggregate(Fraction.Zero, (sum, capacity) => sum + capacity);
        return added.Contains(null)
            ? new Derived(new Interval(known, null), "a tank is added, its capacity is not stated")
            : new Derived(Interval.Of(known), $"{string.Join(" + ", added.Select(capacity => Numbers.Show(capacity!.Value)))} = {Numbers.Show(known)} L");
    }
}
