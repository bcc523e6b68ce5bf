using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Dynamics;

/// <summary>The static stability factor: half the track over the height of the centre of mass (NHTSA, rollover ratings).</summary>
internal static class StaticStability
{
    /// <summary>What the figure is and is not.</summary>
    public const string Caution =
        "an indicator that the US road safety authority uses, not a limit: it leaves out tyres, suspension, stability control and driving, "
        + "and the height of the centre of mass must be measured, not guessed";

    /// <summary>T / 2h, without unit.</summary>
    /// <param name="trackMm">Track T, mm.</param>
    /// <param name="centreOfMassMm">Height h of the centre of mass above the ground, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above zero.</exception>
    public static Fraction Factor(Fraction trackMm, Fraction centreOfMassMm)
    {
        Must.BeAboveZero(centreOfMassMm, nameof(centreOfMassMm));
        return trackMm / (2 * centreOfMassMm);
    }

    /// <summary>
    /// How far the centre of mass of the whole rises, mm: less than the suspension lift, because axles and wheels stay down.
    /// </summary>
    /// <param name="suspensionLiftMm">Suspension lift, mm.</param>
    /// <param name="sprungFraction">The part of the vehicle's mass that the springs carry, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is outside 0 to 1.</exception>
    public static Fraction RiseMm(Fraction suspensionLiftMm, Fraction sprungFraction)
    {
        Must.NotBeNegative(sprungFraction, nameof(sprungFraction));
        Must.NotBeNegative(Fraction.One - sprungFraction, nameof(sprungFraction));
        return suspensionLiftMm * sprungFraction;
    }

    /// <summary>Wider track that would bring the factor back to what it was, mm.</summary>
    /// <param name="trackMm">Track before, mm.</param>
    /// <param name="centreOfMassMm">Height of the centre of mass before, mm; above zero.</param>
    /// <param name="riseMm">How far the centre of mass has come up, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above zero.</exception>
    public static Fraction TrackToRecoverMm(Fraction trackMm, Fraction centreOfMassMm, Fraction riseMm)
    {
        Must.BeAboveZero(centreOfMassMm, nameof(centreOfMassMm));
        return trackMm * riseMm / centreOfMassMm;
    }
}
