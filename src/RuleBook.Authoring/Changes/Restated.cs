using Fractions;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Authoring.Changes;

/// <summary>A witness in measures that a job can state: what follows from others is put as what it follows from.</summary>
/// <param name="Witness">With no changed measure left that is derived.</param>
/// <param name="Tyres">Whether the placard's tyre has to be stated for it.</param>
internal sealed record Restated(Witness Witness, bool Tyres)
{
    /// <summary>A size on an invented placard, and a rating before, for what is a share of the one or an increase of the other.</summary>
    public const string Placard = "265/65R17";

    private static readonly Fraction Rating = new(3000);

    /// <summary>What another measure is a share of, in its base unit, where the vocabulary says no least that is plausible.</summary>
    private static readonly Fraction AnyWhole = new(1000);
    private static readonly Lazy<GrowthShares> Shares = new(() =>
    {
        var diameter = OverallDiameter.Of(TyreSize.Parse(Placard), DiameterBasis.Handbook).Millimetres!.Value;
        return new GrowthShares(diameter, diameter);
    });

    /// <summary>The witness restated; null when a job cannot say it, or its measures do not go together.</summary>
    public static Restated? Of(Witness witness, Vocabulary vocabulary)
    {
        var at = witness.Measures.ToDictionary(pair => pair.Key.Name, pair => pair.Value);
        var tyres = false;
        foreach (var (measure, value) in witness.Measures.Where(pair => pair.Key.IsDerived))
            if (value == measure.IfAbsent)
                at.Remove(measure.Name);
            else if (Shares.Value.GrowthAt(measure.Name, value) is { } growth)
            {
                if (!Put(measure.Name, FactSet.TyreGrowth, growth.Reduce()))
                    return null;
                tyres = true;
            }
            else if (measure.Share is { } share ? !Part(share, value) : !Increase(measure.Name, value))
                return null;

        return at.Keys.All(vocabulary.Measures.ContainsKey)
            ? new Restated(
                witness with
                {
                    Measures = [.. at.Select(pair => KeyValuePair.Create(vocabulary.Measures[pair.Key], pair.Value))],
                },
                tyres
            )
            : null;

        // A share is the one measure over the other; where the other is not told, it is one that is plausible.
        bool Part(MeasureShare share, Fraction value)
        {
            if (!vocabulary.Measures.TryGetValue(share.Whole, out var measure) || !vocabulary.Measures.ContainsKey(share.Part))
                return false;
            var whole =
                at.TryGetValue(share.Whole, out var known) ? known
                : at.TryGetValue(share.Part, out var part) && !value.IsZero ? 100 * part / value
                : measure.Plausible.Low ?? AnyWhole;
            at[share.Whole] = whole;
            return whole.IsPositive && Put(share.Name, share.Part, value * whole / 100);
        }

        // An increase is the rating asked for less the rating before.
        bool Increase(string name, Fraction value)
        {
            const string suffix = "-increase";
            if (!name.EndsWith(suffix, StringComparison.Ordinal))
                return false;
            var rating = name[..^suffix.Length];
            if (!vocabulary.Measures.ContainsKey(rating) || !vocabulary.Measures.ContainsKey($"new-{rating}"))
                return false;
            var before =
                at.TryGetValue(rating, out var known) ? known
                : at.TryGetValue($"new-{rating}", out var after) ? after - value
                : Rating;
            at[rating] = before;
            return before.IsPositive && Put(name, $"new-{rating}", before + value);
        }

        bool Put(string derived, string stated, Fraction value)
        {
            if (at.TryGetValue(stated, out var known) && known != value)
                return false;
            at.Remove(derived);
            at[stated] = value;
            return true;
        }
    }
}
