using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>
/// How exactly a law wants a measure taken: within a tolerance on either side, or to the nearest multiple of a step. Either moves the
/// limits on it.
/// </summary>
/// <param name="Measure">Name of the measure.</param>
/// <param name="Amount">The tolerance or the step, over zero.</param>
/// <param name="ToNearest">Whether it is a step.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Allowance(string Measure, Quantity Amount, bool ToNearest, Mark Mark)
{
    /// <summary>For a reader, beside the figure of the law.</summary>
    public string Words => ToNearest ? $"taken to the nearest {Amount}" : $"with a tolerance of {Amount}";

    /// <summary>The limits of a version that is measured so, each as far as it reaches; the figure of the law is told beside it.</summary>
    internal static Content Apply(Content content, Measured measured, Vocabulary vocabulary) =>
        content is Stated stated
            ? stated with
            {
                Tiers =
                [
                    .. stated.Tiers.Select(tier =>
                        tier with
                        {
                            Limits =
                            [
                                .. tier.Limits.Select(limit => Apply(limit, tier.Pathway == Pathway.Prohibited, measured, vocabulary)),
                            ],
                        }
                    ),
                ],
            }
            : content;

    /// <summary>The limit as far as it reaches.</summary>
    internal static Limit Apply(Limit limit, bool prohibits, Measured measured, Vocabulary vocabulary)
    {
        if (limit.Bounds is not { } bounds || measured.Allowances.FirstOrDefault(own => own.Measure == limit.Measure) is not { } allowance)
            return limit;
        var unit = vocabulary.Measures[limit.Measure].Unit;
        return limit with
        {
            Bounds = new Bounds(
                bounds.Lower is { } lower ? allowance.Of(lower, false, prohibits, unit) : null,
                bounds.Upper is { } upper ? allowance.Of(upper, true, prohibits, unit) : null
            ),
        };
    }

    /// <summary>
    /// How far the bound reaches. A tolerance is in favour of whoever is measured; half a step, which could be taken either way, is not.
    /// </summary>
    private Bound Of(Bound bound, bool upper, bool prohibits, Unit unit)
    {
        var amount = Amount.Base;
        var figure = bound.Show(unit);
        var reaches = ToNearest
            ? new Bound(LastTaken(bound, upper) + (upper ? amount : -amount) / 2, prohibits)
            : bound with
            {
                Value = bound.Value + (upper == prohibits ? -amount : amount),
            };
        return reaches with { Stated = $"{figure} {Words}" };
    }

    /// <summary>The last multiple of the step that lies within the bound.</summary>
    private Fraction LastTaken(Bound bound, bool upper)
    {
        var (step, steps) = (Amount.Base, bound.Value / Amount.Base);
        return step
            * (upper, bound.Closed) switch
            {
                (true, true) => Floor(steps),
                (true, false) => Ceiling(steps) - 1,
                (false, true) => Ceiling(steps),
                _ => Floor(steps) + 1,
            };
    }

    private static Fraction Floor(Fraction value) => Fraction.Round(value, 0, MidpointRounding.ToNegativeInfinity);

    private static Fraction Ceiling(Fraction value) => Fraction.Round(value, 0, MidpointRounding.ToPositiveInfinity);
}
