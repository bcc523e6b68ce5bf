using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Physics.Towing;

/// <summary>The actual masses of a vehicle and its trailer; null where not known.</summary>
/// <param name="VehicleKg">The hitched vehicle on its own axles, ball load included, kg.</param>
/// <param name="VehicleAxles">The hitched vehicle, axle by axle.</param>
/// <param name="TrailerAxlesKg">What the hitched trailer's axles carry (held against GTM), kg.</param>
/// <param name="TrailerAloneKg">The trailer weighed alone on its jockey wheel (held against ATM and tow rating), kg.</param>
/// <param name="BallKg">What the trailer puts on the ball, kg.</param>
public sealed record Combination(
    Fraction? VehicleKg,
    AxleMasses? VehicleAxles,
    Fraction? TrailerAxlesKg,
    Fraction? TrailerAloneKg,
    Fraction? BallKg
)
{
    /// <summary>
    /// Held against GCM, kg: the hitched vehicle and the trailer's axles. The ball load is in the vehicle and counts once.
    /// </summary>
    public Fraction? TotalKg => VehicleKg + TrailerAxlesKg;

    /// <summary>What is known of the hitched vehicle where its figures are not known exactly, or only one axle was weighed.</summary>
    public MassRange? VehiclePossible { get; init; }

    /// <summary>What is known of the total where it is not known exactly, kg.</summary>
    public Interval TotalPossible { get; init; } = Interval.Anything;

    /// <summary>The hitched vehicle, known or within bounds.</summary>
    internal MassRange Vehicle =>
        new(
            Exactly(VehicleKg) ?? VehiclePossible?.Total ?? Interval.Anything,
            Exactly(VehicleAxles?.FrontKg) ?? VehiclePossible?.Front ?? Interval.Anything,
            Exactly(VehicleAxles?.RearKg) ?? VehiclePossible?.Rear ?? Interval.Anything
        );

    /// <summary>The total, known or within bounds, kg.</summary>
    internal Interval Total => Exactly(TotalKg) ?? TotalPossible;

    private static Interval? Exactly(Fraction? mass) => mass is { } known ? Interval.Of(known) : null;
}
