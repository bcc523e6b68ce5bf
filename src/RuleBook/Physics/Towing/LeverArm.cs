using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>
/// What a ball load does to the axles: standing behind the rear axle, it puts more than itself on the rear and lightens the front.
/// </summary>
/// <remarks>
/// Mass moved = ball load x arm / wheelbase, taken off the front axle and added to the rear on top of the ball load itself
/// (magazine article on ball load, two postings).
/// </remarks>
internal static class LeverArm
{
    /// <summary>The change on each axle: front -B d/L, rear B (1 + d/L); together the ball load.</summary>
    /// <param name="ballKg">Ball load B, kg.</param>
    /// <param name="ballBehindRearAxleMm">Centre of the ball behind the rear axle, d, mm.</param>
    /// <param name="wheelbaseMm">Wheelbase L, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public static AxleMasses OnAxles(Fraction ballKg, Fraction ballBehindRearAxleMm, Fraction wheelbaseMm) =>
        Moments.OnAxles(ballKg, wheelbaseMm + ballBehindRearAxleMm, wheelbaseMm);

    /// <summary>
    /// The arm that would explain a measured gain of the rear axle, mm: an arm far from the vehicle's own shows a scale error,
    /// a hitch extension or a weight-distribution hitch.
    /// </summary>
    /// <param name="ballKg">Ball load, kg; above zero.</param>
    /// <param name="rearGainKg">What the rear axle gained when the trailer was hitched, kg.</param>
    /// <param name="wheelbaseMm">Wheelbase, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ball load is not above zero.</exception>
    public static Fraction ImpliedMm(Fraction ballKg, Fraction rearGainKg, Fraction wheelbaseMm)
    {
        Must.BeAboveZero(ballKg, nameof(ballKg));
        return (rearGainKg - ballKg) * wheelbaseMm / ballKg;
    }
}
