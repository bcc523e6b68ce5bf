using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>The tyre fitted against the placard: by its measured diameter where that is given, otherwise by its size.</summary>
internal static class FittedTyre
{
    /// <summary>The measured diameter.</summary>
    public const string Diameter = KnownWords.TyreDiameter;

    /// <summary>The placard's tyres that the one fitted stands for: of its size, or all where none has its size.</summary>
    public static TyreSize[] StandsFor(Job job, TyreSize fitted)
    {
        var same = job.PlacardTyres.Where(size => size.Designation == fitted.Designation).ToArray();
        return same.Length > 0 ? same : [.. job.PlacardTyres];
    }

    /// <summary>
    /// Whether other tyres are fitted of which the job does not state the size: by their growth, their diameter, or as not known.
    /// </summary>
    public static bool IsOtherWithoutSize(Job job) =>
        job.FittedTyre is null
        && (
            job.Measures.ContainsKey(Diameter)
            || ((string[])[KnownWords.TyreGrowth, KnownWords.TyreReduction]).Any(each =>
                job.Unknown.Contains(each) || job.Measures.GetValueOrDefault(each) is { Base.IsZero: false }
            )
        );

    /// <summary>Growth over the placard; null where the tyres stay.</summary>
    /// <param name="job">The job.</param>
    /// <param name="basis">Of diameters that are not measured.</param>
    /// <param name="told">Whether the derivations are wanted.</param>
    public static TyreGrowth? Growth(Job job, DiameterBasis basis, bool told = true) =>
        job.FittedTyre is { } fitted
            ? TyreGrowth.Of(
                job.Measures.TryGetValue(Diameter, out var measured)
                    ? OverallDiameter.Measured(fitted, measured.Base)
                    : OverallDiameter.Of(fitted, basis),
                job.PlacardTyres.Select(size => OverallDiameter.Of(size, basis)),
                told
            )
            : null;
}
