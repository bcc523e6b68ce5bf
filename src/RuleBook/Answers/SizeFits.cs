using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>A listed tyre size tried in a job.</summary>
/// <param name="Size">The size.</param>
/// <param name="Outcome">What it gives, by the rules that tyres touch, the rest of the job unchanged.</param>
/// <param name="SameRim">Whether a placard size has the same rim diameter.</param>
/// <param name="Growth">Growth, diameters, width and speedometer against the placard.</param>
/// <param name="TrueSpeed">True speed at <paramref name="Indicated"/> after the change.</param>
/// <param name="Indicated">Speed shown, km/h.</param>
/// <param name="Speedometer">How it stands under the rules that may hold.</param>
/// <param name="Loads">What each axle rating leaves at the load index needed, or at the size's own where one is written.</param>
public sealed record SizeFit(
    TyreSize Size,
    Outcome Outcome,
    bool SameRim,
    TyreGrowth Growth,
    DerivedFigure TrueSpeed,
    Fraction Indicated,
    ImmutableArray<SpeedometerFinding> Speedometer,
    ImmutableArray<SizeLoad> Loads
);

/// <summary>A load index against an axle rating.</summary>
/// <param name="Need">The least index.</param>
/// <param name="Index">The index of the size, where it is written on a tyre of the job; otherwise the least that is enough.</param>
/// <param name="MarginKg">What is left over the axle rating with it, kg; null where no index is enough.</param>
public sealed record SizeLoad(LoadIndexNeed Need, LoadIndex? Index, Fraction? MarginKg);

/// <summary>Tries every listed size in a job and ranks those that some pathway allows.</summary>
internal static class SizeFits
{
    /// <summary>Easiest pathway first, then sizes for the rims at hand, then the largest first.</summary>
    public static ImmutableArray<SizeFit> Of(Book book, Job job, Jurisdiction place)
    {
        if (job.PlacardTyres.IsEmpty)
            return [];
        return
        [
            .. book
                .Reference.TyreSizes.Select(size => Try(book, job, place, size))
                .OfType<SizeFit>()
                .Where(fit => fit.Outcome.Best < Pathway.Prohibited)
                .OrderBy(fit => fit.Outcome.Worst)
                .ThenBy(fit => fit.Outcome.Best)
                .ThenByDescending(fit => fit.SameRim)
                .ThenByDescending(fit => fit.Growth.Growth.Amount)
                .ThenBy(fit => fit.Size.Designation, StringComparer.Ordinal),
        ];
    }

    private static SizeFit? Try(Book book, Job job, Jurisdiction place, TyreSize size)
    {
        var fitted = job with
        {
            FittedTyre = size,
            Measures = job.Measures.RemoveRange([FactSet.TyreGrowth, KnownWords.TyreReduction, FittedTyre.Diameter]),
        };
        var growth = TyreGrowth.Of(size, job.PlacardTyres, DiameterBasis.Handbook);
        if (growth.Growth.Amount is null)
            return null;
        var outcome = Judgement.About(book, fitted, place, DiameterBasis.Handbook, FactSet.TyreGrowth).Outcome;
        var speedometer = SpeedometerReckoning.Of(fitted, growth)!;
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        return new SizeFit(
            size,
            outcome,
            job.PlacardTyres.Any(tyre => tyre.RimDiameterCode == size.RimDiameterCode),
            growth,
            speedometer.TrueAfter,
            speedometer.Indicated,
            [.. speedometer.Findings.Select(check => check.Finding).OfType<SpeedometerFinding>()],
            [.. TyreReckoning.Needs(job, ratings).Select(need => Load(job, size, need))]
        );
    }

    private static SizeLoad Load(Job job, TyreSize size, LoadIndexNeed need)
    {
        var marked = job.PlacardTyres.Append(job.FittedTyre).FirstOrDefault(tyre => tyre?.Designation == size.Designation);
        var own = need.Tyres == 4 ? marked?.DualLoadIndex : marked?.LoadIndex;
        var index = own ?? need.Index;
        return new SizeLoad(need, index, index?.Kilograms * need.Tyres - need.RatingKg);
    }
}
