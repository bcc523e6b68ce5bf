using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>The actual masses of a vehicle and its trailer; null where not known.</summary>
/// <param name="VehicleKg">The hitched vehicle on its own axles, ball load included, kg.</param>
/// <param name="VehicleAxles">The hitched vehicle, axle by axle.</param>
/// <param name="TrailerAxlesKg">What the hitched trailer's axles carry (held against GTM), kg.</param>
/// <param name="TrailerAloneKg">The trailer weighed alone on its jockey wheel (held against ATM and tow rating), kg.</param>
/// <param name="BallKg">What the trailer puts on the ball, kg.</param>
public sealed record Combination(
    Fraction? VehicleKg, AxleMasses? VehicleAxles, Fraction? TrailerAxlesKg, Fraction? TrailerAloneKg, Fraction? BallKg)
{
    /// <summary>
    /// Held against GCM, kg: the hitched vehicle and the trailer's axles. The ball load is in the vehicle and counts once.
    /// </summary>
    public Fraction? TotalKg => VehicleKg + TrailerAxlesKg;
}
