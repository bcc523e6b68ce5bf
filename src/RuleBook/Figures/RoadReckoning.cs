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
        var suspension = job.Plan.TellsLift && Stated(job, Lifts.Measure) is null ? Lifts.Of(job)?.Value.High : Change(job, Lifts.Measure);
        var tyre =
            growth is not null ? growth.TyreLift.Amount
            : job.Measures.ContainsKey(FittedTyre.Diameter) && Stated(job, KnownWords.TyreGrowth) is null ? null
            : Change(job, KnownWords.TyreGrowth) / 2;
        var rise = suspension + tyre + Change(job, KnownWords.BodyLift);
        var wider =
            track
            + (
                job.Plan.WheelOffset is { } offset && Stated(job, KnownWords.TrackIncrease) is null
                    ? offset.TrackIncreaseMm
                    : Change(job, KnownWords.TrackIncrease)
            );
        return (
            before,
            (rise, wider) is ({ } up, { } after) && (height + up).IsPositive ? StaticStability.Factor(after, height + up) : null
        );
    }

    /// <summary>None where the job states nothing of it; null where it says that it is not known.</summary>
    private static Fraction? Change(Job job, string measure) =>
        Stated(job, measure) ?? (job.Unknown.Contains(measure) ? null : Fraction.Zero);

    private static Fraction? Stated(Job job, string measure) => job.Measures.GetValueOrDefault(measure)?.Base;
}
