using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>How a mass at a place along the vehicle is shared between the axles (balance of moments about the front axle).</summary>
internal static class Moments
{
    /// <summary>
    /// R = m x / L and F = m - R: the procedure of truck makers' body-builder manuals (weight distribution appendix).
    /// </summary>
    /// <param name="massKg">The mass, kg; negative for a mass taken off.</param>
    /// <param name="behindFrontAxleMm">
    /// Its centre behind the front axle, mm; negative ahead of it; beyond the wheelbase it lightens the front.
    /// </param>
    /// <param name="wheelbaseMm">Distance between the axles, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public static AxleMasses OnAxles(Fraction massKg, Fraction behindFrontAxleMm, Fraction wheelbaseMm)
    {
        var rear = massKg * ShareOn(Axle.Rear, behindFrontAxleMm, wheelbaseMm);
        return new AxleMasses(massKg - rear, rear);
    }

    /// <summary>The part of a mass at a place that one axle carries: 0 none, 1 all; above 1 or below 0 outside the wheelbase.</summary>
    /// <param name="axle">The axle asked about.</param>
    /// <param name="behindFrontAxleMm">The place behind the front axle, mm.</param>
    /// <param name="wheelbaseMm">Distance between the axles, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public static Fraction ShareOn(Axle axle, Fraction behindFrontAxleMm, Fraction wheelbaseMm)
    {
        Must.BeAboveZero(wheelbaseMm, nameof(wheelbaseMm));
        var rear = behindFrontAxleMm / wheelbaseMm;
        return axle == Axle.Rear ? rear : Fraction.One - rear;
    }
}
