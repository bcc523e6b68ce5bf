using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Figures;

/// <summary>Works out the masses of a job.</summary>
internal static class MassReckoning
{
    /// <summary>The masses; null where the job gives none to start from.</summary>
    /// <param name="job">The job.</param>
    /// <param name="jurisdiction">Id of the jurisdiction, for its towing mass by default.</param>
    public static MassAnswer? Of(Job job, string jurisdiction)
    {
        var plan = job.Plan;
        var says =
            plan.Start.TotalKg is not null
            || plan.Start.Axles is not null
            || plan.Items.Length > 0
            || plan.Tanks.Length > 0
            || plan.Trailer is not null
            || plan.Weighed is not null;
        if (!says)
            return null;
        var unladen = Budgets.Unladen(job);
        var travels = plan.Trailer is not null || plan.Items.Any(item => item.Kind != ItemKind.FixedAccessory);
        var loaded = travels ? Budgets.Loaded(job) : null;
        var unhitched = Budgets.Unhitched(job);
        var towing = TowingReckoning.Of(job, unhitched, jurisdiction);
        var ratings = plan.Ratings.Overlaid(plan.Rerated);
        return new MassAnswer(
            unladen,
            loaded,
            plan.Rerated?.GvmKg is { } asked ? Ceiling(job, ratings, asked) : null,
            towing,
            Missing(unladen, loaded, towing, unhitched, job)
        )
        {
            Weighed = plan.Weighed is { } readings ? VehicleWeighed.Of(readings, Budgets.Limits(job), plan.ReadingGuardKg) : null,
            TradeOff = TradeOffOf(job, plan.Ratings, unladen.TotalKg),
            ReratedTradeOff = plan.Rerated is { GvmKg: not null } or { GcmKg: not null } ? TradeOffOf(job, ratings, unladen.TotalKg) : [],
            RearLoadAgainstBall = RearLoad(job, ratings, unhitched),
        };
    }

    private static ReratingCeiling Ceiling(Job job, Ratings ratings, Fraction askedKg)
    {
        var tyres = TyreCapacity.Of(job);
        return ReratingCeiling.Of(ratings, tyres.Front.Amount, tyres.Rear.Amount, tyres.Fact, askedKg);
    }

    private static ImmutableArray<TradeOffPoint> TradeOffOf(Job job, Ratings ratings, Fraction? unladenKg)
    {
        var ball = Budgets.BallKg(job.Plan.Trailer) is { IsPositive: true } down ? down : Fraction.Zero;
        var trailer = job.Plan.Trailer?.Limits;
        var rated = trailer?.Braked is false ? ratings.UnbrakedTowKg : ratings.BrakedTowKg;
        return job.Plan.Trailer is null && job.Plan.Rerated is null ? []
            : ratings is { GvmKg: { } gvm, GcmKg: { } gcm } && rated is { } tow && unladenKg + ball is { } from && from <= gvm
                ? TradeOff.TrailerAgainstVehicle(from, gvm, gcm, tow, ball, trailer?.GtmKg, trailer?.AtmKg)
            : [];
    }

    private static ImmutableArray<TradeOffPoint> RearLoad(Job job, Ratings ratings, MassBudget unhitched)
    {
        var plan = job.Plan;
        Fraction?[] limits = [ratings.BallKg, plan.Trailer?.Limits.TowbarBallKg, plan.Trailer?.Limits.CouplingBallKg];
        return
            plan.Trailer is not null
            && limits.Min() is { } most
            && unhitched.Axles is { } axles
            && ratings is { GvmKg: { } gvm, RearAxleKg: { } rear }
            && plan is { BallBehindRearAxleMm: { } arm, WheelbaseMm: { } wheelbase }
            ? TradeOff.RearLoadAgainstBall(axles, gvm, rear, most, arm, wheelbase)
            : [];
    }

    private static ImmutableArray<MissingFact> Missing(
        MassBudget unladen,
        MassBudget? loaded,
        TowingAnswer? towing,
        MassBudget unhitched,
        Job job
    ) =>
        [
            .. unladen
                .Missing.Concat(loaded?.Missing ?? [])
                .Concat(job.Plan.Trailer is null ? [] : TowingPlans.Of(job, unhitched).Missing())
                .Concat(towing?.Planned?.Missing ?? [])
                .Concat(towing?.Weighed?.Missing ?? [])
                .Where(missing => missing.Fact != "vehicle.tare" || job.Plan.Start.TotalKg is null)
                .GroupBy(missing => missing.Fact)
                .Select(group => new MissingFact(group.Key, string.Join("; ", group.Select(missing => missing.Adds).Distinct()))),
        ];
}
