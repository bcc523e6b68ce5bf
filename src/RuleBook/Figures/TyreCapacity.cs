using RuleBook.Jobs;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>What the tyres of each axle carry by their load index.</summary>
/// <param name="Front">Front axle, kg.</param>
/// <param name="Rear">Rear axle, kg; four tyres where it has dual wheels.</param>
/// <param name="Fact">The path in the job from which it follows.</param>
public sealed record TyreCapacity(DerivedFigure Front, DerivedFigure Rear, string Fact)
{
    /// <summary>Of the tyre fitted; where none is fitted, of the weakest size on the placard.</summary>
    /// <param name="job">The job.</param>
    internal static TyreCapacity Of(Job job) =>
        job.FittedTyre is { } fitted && AxleCapacity.Single(fitted) is var single
            ? new TyreCapacity(single, job.Plan.DualRearWheels ? AxleCapacity.Dual(fitted) : single, "modification.tyres")
            : new TyreCapacity(Least(job, AxleCapacity.Single), Least(job, size => OnRear(job, size)), "vehicle.tyres");

    private static DerivedFigure OnRear(Job job, TyreSize size) =>
        job.Plan.DualRearWheels ? AxleCapacity.Dual(size) : AxleCapacity.Single(size);

    private static DerivedFigure Least(Job job, Func<TyreSize, DerivedFigure> of)
    {
        DerivedFigure[] all = [.. job.PlacardTyres.Select(of)];
        if (all.Length == 0)
            return new DerivedFigure(null, "no tyre is given");
        return all.FirstOrDefault(figure => figure.Amount is null) ?? all.MinBy(figure => figure.Amount!.Value)!;
    }
}
