using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Units;

namespace RuleBook.Figures;

/// <summary>The combination that a job plans.</summary>
internal static class TowingPlans
{
    /// <summary>The trailer's figures alone, to be checked against each other.</summary>
    public static TowingPlan Of(Job job) =>
        new()
        {
            TrailerAloneKg = job.Plan.Trailer?.MassKg,
            TrailerAxlesKg = job.Plan.Trailer?.AxlesKg,
            BallKg = job.Plan.Trailer?.BallKg,
            WheelbaseMm = job.Plan.WheelbaseMm,
            BallBehindRearAxleMm = job.Plan.BallBehindRearAxleMm,
        };

    /// <summary>With the vehicle as loaded; where its mass does not follow from the plan, as the weighbridge read it alone.</summary>
    public static TowingPlan Of(Job job, MassBudget unhitched)
    {
        var weighed = unhitched.TotalKg is null ? job.Plan.Weighed?.Alone : null;
        var plan = Of(job) with
        {
            UnhitchedKg = unhitched.TotalKg ?? weighed?.Total.Exact,
            UnhitchedAxles =
                unhitched.Axles ?? (weighed is { Front.Exact: { } front, Rear.Exact: { } rear } ? new AxleMasses(front, rear) : null),
            UnhitchedPossible = weighed?.Total ?? unhitched.Possible.Total,
        };
        return plan.UnhitchedAxles is null ? plan with { HitchedPossible = (weighed ?? unhitched.Possible) + Ball(job) } : plan;
    }

    private static MassRange Ball(Job job) =>
        MassRange.At(
            Budgets.BallKg(job.Plan.Trailer) is { } ball ? Interval.Of(ball) : MassRange.FromZero,
            job.Plan.WheelbaseMm + job.Plan.BallBehindRearAxleMm,
            job.Plan.WheelbaseMm
        );
}
