using Fractions;

namespace RuleBook.Physics.Heights;

/// <summary>How far the guard of one axle has come up from its wheels.</summary>
/// <param name="LeftMm">Left, after less reference, as read, mm.</param>
/// <param name="RightMm">Right, after less reference, as read, mm.</param>
/// <param name="CorrectionMm">What a different axle load hid (above zero) or added (below zero), mm.</param>
/// <param name="BodyBlockMm">The part that a body block makes, mm.</param>
/// <param name="LeftRightMm">Left and right height after the work apart, mm; never negative.</param>
/// <param name="Uneven">True when that passes the warning value; null when no value was given.</param>
public sealed record AxleLift(
    Fraction LeftMm,
    Fraction RightMm,
    Fraction CorrectionMm,
    Fraction BodyBlockMm,
    Fraction LeftRightMm,
    bool? Uneven
)
{
    /// <summary>Mean of left and right with the correction, mm: suspension and body block together.</summary>
    public Fraction GuardRiseMm => ((LeftMm + RightMm) / 2) + CorrectionMm;

    /// <summary>The suspension's part: the body block taken out, mm.</summary>
    public Fraction SuspensionMm => GuardRiseMm - BodyBlockMm;
}
