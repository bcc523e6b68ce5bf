using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>
/// The measures that rules bound as a share of another one, from what is known of both: exact where both are, a range where one is, and not
/// known where nothing is known of the one or the other.
/// </summary>
internal static class MeasureShares
{
    /// <summary>Adds the shares that follow from what is known, in place of those that followed from something else.</summary>
    /// <param name="measures">What is known.</param>
    /// <param name="vocabulary">The words, with the shares that its rules bound.</param>
    public static void AddShares(this Dictionary<string, Derived> measures, Vocabulary vocabulary)
    {
        foreach (var share in VocabularyIndex.Of(vocabulary).Shares)
            if (Follows(measures, share, vocabulary) is { } known)
                measures[share.Name] = known;
            else
                measures.Remove(share.Name);
    }

    /// <summary>The expanded uncertainties, with those of the shares of what was measured.</summary>
    internal static ImmutableDictionary<string, Fraction> With(
        this ImmutableDictionary<string, Fraction> uncertainties,
        Vocabulary vocabulary,
        ImmutableDictionary<string, Quantity> stated
    )
    {
        foreach (var share in VocabularyIndex.Of(vocabulary).Shares)
            if (
                uncertainties.TryGetValue(share.Part, out var expanded)
                && stated.TryGetValue(share.Whole, out var whole)
                && whole.Base.IsPositive
            )
                uncertainties = uncertainties.SetItem(share.Name, 100 * expanded / whole.Base);
        return uncertainties;
    }

    /// <summary>The first of the two measures that is not known exactly: what has to be asked for.</summary>
    internal static Measure Asked(Measure share, FactSet facts, Vocabulary vocabulary)
    {
        var (part, whole) = (share.Share!.Part, share.Share.Whole);
        return vocabulary.Measures[facts.Measure(part, []).Exact is null ? part : whole];
    }

    private static Derived? Follows(Dictionary<string, Derived> measures, MeasureShare share, Vocabulary vocabulary)
    {
        var facts = FactSet.Nothing with { Measures = measures };
        var (part, whole) = (facts.Measure(share.Part, []), facts.Measure(share.Whole, []));
        if (part.Exact is { IsZero: true })
            return new Derived(Interval.Of(Fraction.Zero), $"the {vocabulary.Measures[share.Part].Title} is nothing");
        if (whole.Low is not { IsPositive: true } || part == Interval.Anything)
            return null;
        var range = new Interval(Least(part.Low, whole), Greatest(part.High, whole));
        if (range == Interval.Anything)
            return null;
        var unit = vocabulary.Measures[share.Part].Unit;
        return new Derived(
            range,
            (part.Exact, whole.Exact) is ({ } one, { } other)
                ? $"{Numbers.Show(one / unit.ToBase)} of {Numbers.Show(other / unit.ToBase)} {unit.Symbol}"
                : $"{vocabulary.Measures[share.Part].Title} and {vocabulary.Measures[share.Whole].Title} are known within bounds"
        );
    }

    /// <summary>
    /// The least share; where the whole has no upper end, a part that is not negative can be as small a share as one likes.
    /// </summary>
    private static Fraction? Least(Fraction? part, Interval whole) =>
        part is not { } low ? null
        : low.IsNegative ? 100 * low / whole.Low!.Value
        : whole.High is { } high ? 100 * low / high
        : Fraction.Zero;

    private static Fraction? Greatest(Fraction? part, Interval whole) =>
        part is not { } high ? null
        : !high.IsNegative ? 100 * high / whole.Low!.Value
        : whole.High is { } widest ? 100 * high / widest
        : Fraction.Zero;
}
