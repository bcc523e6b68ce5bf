using Fractions;
using RuleBook.Facts;
using RuleBook.Law;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// Which values of the tyre measures can stand together. With the fitted diameter d, the smallest placard diameter s and the largest l (s
/// at most l): growth d - l, reduction s - d, growth in per cent of l, reduction in per cent of l.
/// </summary>
internal static class TyreSense
{
    /// <summary>Where growth and reduction of one tyre meet, d - l = d - s: all sizes of the placard are alike.</summary>
    public static IEnumerable<LimitBoundary> Edge(IReadOnlyCollection<string> measures) =>
        measures.Contains(FactSet.TyreGrowth) && measures.Contains(KnownWords.TyreReduction)
            ?
            [
                new(
                    [.. measures.Select(name => name is FactSet.TyreGrowth or KnownWords.TyreReduction ? Fraction.One : Fraction.Zero)],
                    Fraction.Zero
                ),
            ]
            : [];

    public static bool Possible(Axes axes, Fraction[] at)
    {
        var growth = At(FactSet.TyreGrowth);
        var reduction = At(KnownWords.TyreReduction);
        var growthPercent = At(KnownWords.TyreGrowthPercent);
        var reductionPercent = At(KnownWords.TyreReductionPercent);
        return (growth is null || reduction is null || !(growth + reduction > Fraction.Zero))
            && SameSign(growth, growthPercent)
            && SameSign(growth, -reductionPercent)
            && SameSign(growthPercent, -reductionPercent);

        Fraction? At(string name)
        {
            for (var i = 0; i < at.Length; i++)
                if (axes.Measures[i].Name == name)
                    return at[i];
            return null;
        }
    }

    /// <summary>Witnesses of one size may differ in figure; only their signs must agree.</summary>
    private static bool SameSign(Fraction? left, Fraction? right) =>
        left is null || right is null || left.Value.Numerator.Sign == right.Value.Numerator.Sign;
}
