using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Facts;

/// <summary>What follows from a growth in diameter once the placard's diameters are known.</summary>
/// <param name="Largest">Overall diameter of the largest placard size, mm.</param>
/// <param name="Smallest">Overall diameter of the smallest one, mm.</param>
internal sealed record GrowthShares(Fraction Largest, Fraction Smallest)
{
    /// <summary>Of a job's placard; null where it names no size, or the diameter of one is not established.</summary>
    public static GrowthShares? Of(Job job, DiameterBasis basis)
    {
        Fraction?[] all = [.. job.PlacardTyres.Select(size => OverallDiameter.Of(size, basis).Millimetres)];
        return all.Length == 0 || all.Contains(null) ? null : new GrowthShares(all.Max()!.Value, all.Min()!.Value);
    }

    /// <summary>The measures that follow, in their base units.</summary>
    /// <param name="growth">Growth over the largest placard size, mm.</param>
    public IEnumerable<(string Measure, Fraction Value)> From(Fraction growth)
    {
        yield return (KnownWords.TyreGrowthPercent, 100 * growth / Largest);
        yield return (KnownWords.TyreReductionPercent, -100 * growth / Largest);
        yield return (KnownWords.TyreReduction, Smallest - Largest - growth);
    }

    /// <summary>The growth at which one of them reaches a value; null for a measure that does not follow.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="value">Its value, in base units.</param>
    public Fraction? GrowthAt(string measure, Fraction value) =>
        measure switch
        {
            KnownWords.TyreGrowthPercent => value * Largest / 100,
            KnownWords.TyreReductionPercent => -value * Largest / 100,
            KnownWords.TyreReduction => Smallest - Largest - value,
            _ => null,
        };
}
