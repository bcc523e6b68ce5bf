using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>Works out what a change of tyres does to the speedometer, under the rule for the day of manufacture.</summary>
internal static class SpeedometerReckoning
{
    /// <summary>Speed at which a speedometer that nobody checked is looked at, km/h.</summary>
    private static readonly Fraction Usual = 100;

    public static SpeedometerAnswer? Of(Job job, TyreGrowth growth)
    {
        if (growth.Largest is not { } before)
            return null;
        var reading = job.Plan.Speedometer ?? new SpeedometerReading(Usual, Usual);
        var after = Speedometer.TrueSpeed(reading.True, before, growth.New);
        var periods = PeriodsOf(job);
        return new SpeedometerAnswer(
            reading.Indicated,
            reading.True,
            job.Plan.Speedometer is null,
            after,
            [
                .. periods
                    .SelectMany(period => period.Rules)
                    .DistinctBy(rule => rule.Name)
                    .Select(rule => Check(rule, reading, after, growth.GrowthPercent.Amount)),
            ],
            periods
        );
    }

    /// <summary>The rules of the place for the day of manufacture, of every day that it may be; none where it is not known.</summary>
    public static ImmutableArray<SpeedometerPeriod> PeriodsOf(Job job) =>
        job.Built is { } built ? [.. job.Plan.Reference.Speedometer.Where(period => period.MayHold(job.RegisteredIn, built))] : [];

    private static SpeedometerCheck Check(
        NamedSpeedometerRule rule,
        SpeedometerReading reading,
        DerivedFigure after,
        Fraction? usedPercent
    ) =>
        new(
            rule,
            after.Amount is { } real ? rule.Rule.Check(reading.Indicated, real) : null,
            Speedometer.LargestGrowthPercent(rule.Rule, reading.Indicated, reading.True),
            Speedometer.LargestGrowthPercent(rule.Rule, reading.Indicated, reading.True) - usedPercent
        );
}
