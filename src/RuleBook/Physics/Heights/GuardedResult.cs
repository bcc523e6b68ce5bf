using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>A measured value held against a limit with a guard band for the uncertainty of the measurement.</summary>
/// <param name="Value">The measured value, in the unit of the limit.</param>
/// <param name="Limit">The limit.</param>
/// <param name="GuardBand">Width of the guard band on each side of the limit, exact.</param>
/// <param name="Conformity">What the measurement says.</param>
/// <remarks>
/// Guarded acceptance and guarded rejection of JCGM 106:2012 (ISO/IEC Guide 98-4): the acceptance limit is the tolerance limit
/// moved inward by the guard band, the guard band a multiple of the expanded uncertainty. The clause was not opened.
/// </remarks>
public sealed record GuardedResult(Fraction Value, Fraction Limit, Fraction GuardBand, Conformity Conformity)
{
    /// <summary>Holds a value against a limit.</summary>
    /// <param name="value">The measured value.</param>
    /// <param name="expandedUncertainty">Its expanded uncertainty, same unit; zero decides by the limit alone.</param>
    /// <param name="limit">The limit; reached is within.</param>
    /// <param name="sense">Whether the limit is the most or the least allowed.</param>
    /// <param name="guardFactor">The guard band as a multiple of the expanded uncertainty.</param>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty or the factor is negative.</exception>
    internal static GuardedResult Of(Fraction value, Fraction expandedUncertainty, Fraction limit, LimitSense sense, Fraction guardFactor)
    {
        Must.NotBeNegative(expandedUncertainty, nameof(expandedUncertainty));
        Must.NotBeNegative(guardFactor, nameof(guardFactor));
        var band = expandedUncertainty * guardFactor;
        var past = sense == LimitSense.AtMost ? value - limit : limit - value;
        var conformity =
            past <= -band ? Conformity.Within
            : past > band ? Conformity.Beyond
            : Conformity.TooCloseToCall;
        return new GuardedResult(value, limit, band, conformity);
    }
}
