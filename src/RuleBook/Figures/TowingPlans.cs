using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Figures;

/// <summary>The combination that a job plans.</summary>
internal static class TowingPlans
{
    /// <summary>The trailer's figures alone, to be checked against each other.</summary>
    public static TowingPlan Of(Job job) => new()
    {
        TrailerAloneKg = job.Plan.Trailer?.MassKg,
        TrailerAxlesKg = job.Plan.Trailer?.AxlesKg,
        BallKg = job.Plan.Trailer?.BallKg,
        WheelbaseMm = job.Plan.WheelbaseMm,
        BallBehindRearAxleMm = job.Plan.BallBehindRearAxleMm,
    };

    /// <summary>With the vehicle as loaded.</summary>
    public static TowingPlan Of(Job job, MassBudget unhitched) =>
        Of(job) with { UnhitchedKg = unhitched.TotalKg, UnhitchedAxles = unhitched.Axles };
}
