using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Physics.Towing;

/// <summary>
/// Three rounds on a weighbridge, loaded as travelled and with the occupants aboard: vehicle alone, coupled, trailer alone.
/// </summary>
/// <param name="FrontAloneKg">Front axle, not coupled (F0), kg.</param>
/// <param name="RearAloneKg">Rear axle, not coupled (R0), kg.</param>
/// <param name="FrontHitchedKg">Front axle, coupled (F1), kg.</param>
/// <param name="RearHitchedKg">Rear axle, coupled (R1), kg.</param>
/// <param name="TrailerAxlesKg">Trailer axle group, coupled (G), kg.</param>
/// <param name="TrailerAloneKg">Trailer alone on its jockey wheel (A), kg.</param>
internal sealed record WeighbridgeReadings(
    Fraction? FrontAloneKg,
    Fraction? RearAloneKg,
    Fraction? FrontHitchedKg,
    Fraction? RearHitchedKg,
    Fraction? TrailerAxlesKg,
    Fraction? TrailerAloneKg
)
{
    /// <summary>The whole vehicle, not coupled, where its axles were not weighed apart, kg.</summary>
    public Fraction? MassAloneKg { get; init; }

    /// <summary>The vehicle alone as it was weighed; null where no reading is of it.</summary>
    public MassRange? Alone => (FrontAloneKg ?? RearAloneKg ?? MassAloneKg) is null ? null : Of(FrontAloneKg, RearAloneKg, MassAloneKg);

    /// <summary>The vehicle coupled as it was weighed, one axle or both; null where no reading is of it.</summary>
    public MassRange? Hitched => (FrontHitchedKg ?? RearHitchedKg) is null ? null : Of(FrontHitchedKg, RearHitchedKg, null);

    private static MassRange Of(Fraction? front, Fraction? rear, Fraction? mass) =>
        new(
            (mass ?? front + rear) is { } total ? Interval.Of(total) : new Interval(front ?? rear, null),
            On(front ?? mass - rear),
            On(rear ?? mass - front)
        );

    private static Interval On(Fraction? axle) => axle is { } known ? Interval.Of(known) : MassRange.FromZero;

    /// <summary>Ball load as what leaves the trailer: A - G, kg.</summary>
    public Fraction? BallByTrailerKg => TrailerAloneKg - TrailerAxlesKg;

    /// <summary>Ball load as what the vehicle gains: (F1 + R1) - (F0 + R0), kg.</summary>
    public Fraction? BallByVehicleKg => FrontHitchedKg + RearHitchedKg - FrontAloneKg - RearAloneKg;
}
