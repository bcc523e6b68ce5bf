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

    /// <summary>Whether the values of a point, one an axis, can stand together.</summary>
    public static Predicate<Fraction[]> Possible(Axes axes)
    {
        var names = axes.Measures.Select(measure => measure.Name).ToList();
        var (growth, reduction) = (names.IndexOf(FactSet.TyreGrowth), names.IndexOf(KnownWords.TyreReduction));
        var (growthPercent, reductionPercent) = (
            names.IndexOf(KnownWords.TyreGrowthPercent),
            names.IndexOf(KnownWords.TyreReductionPercent)
        );
        return at =>
            (growth < 0 || reduction < 0 || !(at[growth] + at[reduction] > Fraction.Zero))
            && SameSign(Sign(at, growth), Sign(at, growthPercent))
            && SameSign(Sign(at, growth), -Sign(at, reductionPercent))
            && SameSign(Sign(at, growthPercent), -Sign(at, reductionPercent));
    }

    private static int? Sign(Fraction[] at, int axis) => axis < 0 ? null : at[axis].Numerator.Sign;

    /// <summary>Witnesses of one size may differ in figure; only their signs must agree.</summary>
    private static bool SameSign(int? left, int? right) => left is null || right is null || left == right;
}
