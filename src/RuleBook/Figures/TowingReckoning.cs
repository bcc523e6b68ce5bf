using Fractions;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Figures;

/// <summary>Works out the combination of a job, from its plan and from the weighbridge.</summary>
internal static class TowingReckoning
{
    public static TowingAnswer? Of(Job job, MassBudget unhitched, string jurisdiction)
    {
        var plan = job.Plan;
        var limits = Limits(job, jurisdiction);
        var weighing = plan.Weighed is { } readings && Coupled(readings) ? Weighing.Of(readings, plan.WeighedToleranceKg) : null;
        if (plan.Trailer is null && weighing is null)
            return null;

        var planned = plan.Trailer is null ? null : TowingPlans.Of(job, unhitched).Hitched();
        var ratings = plan.Ratings.Overlaid(plan.Rerated);
        var weighed = weighing?.Combination;
        var counted = weighed ?? planned;
        return new TowingAnswer(
            planned,
            planned is null ? null : CombinationCheck.Of(planned, limits),
            weighed,
            weighed is null ? null : CombinationCheck.Of(weighed, limits, plan.ReadingGuardKg),
            plan.Weighed?.BallByTrailerKg,
            plan.Weighed?.BallByVehicleKg,
            weighing?.DisagreementKg,
            Arm(plan, weighed)
        )
        {
            Capacity = Capacity(ratings, limits.Trailer),
            CargoLeft = Cargo(ratings, counted),
            DownRating =
                plan.DownRating.IsEmpty || counted?.BallKg is not { } ball
                    ? null
                    : DownRating.Of(plan.DownRating, ball, counted.VehicleKg, ratings.GvmKg),
        };
    }

    private static bool Coupled(WeighbridgeReadings readings) =>
        (readings.FrontHitchedKg ?? readings.RearHitchedKg ?? readings.TrailerAxlesKg ?? readings.TrailerAloneKg) is not null;

    private static CombinationLimits Limits(Job job, string jurisdiction)
    {
        var byDefault = job.Plan.Reference.Towing.FirstOrDefault(each => each.Jurisdiction == jurisdiction);
        var trailer = job.Plan.Trailer?.Limits ?? new TrailerLimits();
        return new CombinationLimits(
            Budgets.Limits(job),
            trailer,
            Budgets.Unladen(job).TotalKg,
            trailer.Braked switch
            {
                true => byDefault?.Braked,
                false => byDefault?.Unbraked,
                null => null,
            }
        );
    }

    /// <summary>
    /// The maker's figure for the trailer's brakes; only where the maker states none, what the design rules' definition leaves.
    /// </summary>
    private static TowRating? Capacity(Ratings ratings, TrailerLimits trailer)
    {
        var (makers, fact) = trailer.Braked is false
            ? (ratings.UnbrakedTowKg, "vehicle.ratings.unbraked-tow")
            : (ratings.BrakedTowKg, "vehicle.ratings.braked-tow");
        return makers is { } stated ? new TowRating(stated, true, fact)
            : trailer.TowbarKg is { } towbar && ratings is { GcmKg: { } gcm, GvmKg: { } gvm }
                ? new TowRating(TowRating.CapacityKg(towbar, gcm, gvm), false, "vehicle.towbar.mass")
            : null;
    }

    /// <summary>What the vehicle may still carry: the hitched vehicle less its ball load, the trailer alone.</summary>
    private static CargoLeft? Cargo(Ratings ratings, Combination? counted) =>
        counted is { VehicleKg: { } vehicle, TrailerAloneKg: { } trailer, BallKg: { } ball }
        && ratings is { GvmKg: { } gvm, GcmKg: { } gcm }
            ? CargoLeft.Of(vehicle - ball, trailer, ball, gvm, gcm)
            : null;

    private static Fraction? Arm(JobPlan plan, Combination? weighed) =>
        weighed?.BallKg is { IsPositive: true } ball
        && plan.WheelbaseMm is { } wheelbase
        && plan.Weighed!.RearHitchedKg - plan.Weighed.RearAloneKg is { } gain
            ? LeverArm.ImpliedMm(ball, gain, wheelbase)
            : null;
}
