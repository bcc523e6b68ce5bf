using Fractions;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;

namespace RuleBook.Figures;

/// <summary>The mass budgets of a job.</summary>
internal static class Budgets
{
    public static MassBudget Unladen(Job job) => MassBudget.For(Plan(job), MassStateDefinition.Unladen);

    public static MassBudget Loaded(Job job) => MassBudget.For(Plan(job), MassStateDefinition.Loaded);

    public static MassBudget Unhitched(Job job) => MassBudget.For(Plan(job), MassStateDefinition.LoadedUnhitched);

    public static VehicleLimits Limits(Job job)
    {
        var tyres = TyreCapacity.Of(job);
        return new VehicleLimits(job.Plan.Ratings, job.Plan.Rerated, tyres.Front.Amount, tyres.Rear.Amount) { TyresFact = tyres.Fact };
    }

    /// <summary>Of trailer alone, trailer axles and ball load, two give the third.</summary>
    public static Fraction? BallKg(TrailerPlan? trailer) => trailer?.BallKg ?? trailer?.MassKg - trailer?.AxlesKg;

    private static MassPlan Plan(Job job)
    {
        var plan = job.Plan;
        var items = plan.Trailer is null
            ? plan.Items
            : plan.Items.Add(MassItem.BallLoad(BallKg(plan.Trailer), plan.WheelbaseMm, plan.BallBehindRearAxleMm));
        return new MassPlan(plan.Start, plan.WheelbaseMm, plan.Tanks, items, Limits(job));
    }
}
