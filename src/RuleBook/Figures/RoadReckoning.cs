using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>Works out clearance and the static stability factor.</summary>
internal static class RoadReckoning
{
    public static RoadAnswer Of(Job job, TyreGrowth? growth)
    {
        var plan = job.Plan;
        var rule = plan.Reference.Clearance is { } held && Territory.Includes(held.Jurisdiction, job.RegisteredIn) ? held : null;
        var (before, after) = Stability(job, growth);
        return new RoadAnswer(
            plan.WheelbaseMm is { } wheelbase && rule is not null ? Clearance.LeastMidwayMm(wheelbase, rule.MidwayMmPerMetre) : null,
            plan is { ClearanceMidwayMm: { } midway, WheelbaseMm: { } length } && rule is not null
                ? Clearance.Check(midway, length, rule.MidwayMmPerMetre)
                : null,
            job.Measures.GetValueOrDefault(KnownWords.GroundClearance)?.Base is { } running && rule is not null
                ? new LengthCheck(running, rule.RunningMm)
                : null,
            before,
            after,
            rule
        );
    }

    /// <summary>The whole lift taken for the rise of the centre of mass: it rises by less, since axles and wheels stay down.</summary>
    private static (Fraction? Before, Fraction? After) Stability(Job job, TyreGrowth? growth)
    {
        if (job.Plan is not { TrackMm: { } track, CentreOfMassMm: { } height })
            return (null, null);
        var before = StaticStability.Factor(track, height);
        var suspension = Stated(job, Lifts.Measure) ?? (job.Plan.TellsLift ? Lifts.Of(job)?.Value.High : Fraction.Zero);
        var tyre = growth is null ? Stated(job, KnownWords.TyreGrowth) / 2 ?? Fraction.Zero : growth.TyreLift.Amount;
        var rise = suspension + tyre + (Stated(job, KnownWords.BodyLift) ?? Fraction.Zero);
        var wider =
            track
            + (
                Stated(job, KnownWords.TrackIncrease) is { } stated ? stated
                : job.Plan.WheelOffset is { } offset ? offset.TrackIncreaseMm
                : Fraction.Zero
            );
        return (
            before,
            (rise, wider) is ({ } up, { } after) && (height + up).IsPositive ? StaticStability.Factor(after, height + up) : null
        );
    }

    private static Fraction? Stated(Job job, string measure) => job.Measures.GetValueOrDefault(measure)?.Base;
}
