using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Physics.Towing;

/// <summary>What weighbridge readings say about a combination.</summary>
/// <param name="Combination">The masses; null when the readings contradict each other.</param>
/// <param name="DisagreementKg">The two ball loads apart, kg, never negative; null when only one way is known.</param>
/// <param name="Error">Why the readings cannot be used; they are never averaged.</param>
/// <param name="Missing">The readings that would add to the answer.</param>
internal sealed record Weighing(Combination? Combination, Fraction? DisagreementKg, string? Error, ImmutableArray<MissingFact> Missing)
{
    /// <summary>Reads a combination from the weighbridge, the ball load both ways.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="toleranceKg">
    /// How far the two ball loads may be apart, kg: the weighbridge's own resolution, four readings of it.
    /// </param>
    /// <remarks>Within the tolerance the greater of the two ball loads is held against the limits.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative.</exception>
    public static Weighing Of(WeighbridgeReadings readings, Fraction toleranceKg)
    {
        Must.NotBeNegative(toleranceKg, nameof(toleranceKg));
        var (trailer, vehicle) = (readings.BallByTrailerKg, readings.BallByVehicleKg);
        Fraction? apart = trailer - vehicle is { } difference ? Fraction.Abs(difference) : null;
        var error =
            Negative(readings)
            ?? Lifting(trailer ?? vehicle, toleranceKg)
            ?? (
                apart > toleranceKg
                    ? $"the trailer gives off {Numbers.Show(trailer!.Value)} kg but the vehicle gains {Numbers.Show(vehicle!.Value)} kg: "
                        + $"{Numbers.Show(apart.Value)} kg apart, more than the {Numbers.Show(toleranceKg)} kg stated; weigh again "
                        + "in one state of load"
                    : null
            );
        var ball = trailer is { } one && vehicle is { } other ? (one > other ? one : other) : trailer ?? vehicle;
        var axles = readings is { FrontHitchedKg: { } front, RearHitchedKg: { } rear } ? new AxleMasses(front, rear) : null;
        var combination = new Combination(
            axles?.TotalKg,
            axles,
            readings.TrailerAxlesKg ?? readings.TrailerAloneKg - ball,
            readings.TrailerAloneKg ?? readings.TrailerAxlesKg + ball,
            ball
        )
        {
            VehiclePossible = axles is null ? readings.Hitched : null,
            TotalPossible =
                axles is null || readings.TrailerAxlesKg is null
                    ? (readings.Hitched?.Total ?? MassRange.FromZero) + new Interval(readings.TrailerAxlesKg ?? Fraction.Zero, null)
                    : Interval.Anything,
        };
        return new Weighing(error is null ? combination : null, apart, error, Lacking(readings));
    }

    /// <summary>
    /// A ball load below zero by more than the weighbridge can be off: the trailer is tail-heavy, or two readings were swapped.
    /// </summary>
    private static string? Lifting(Fraction? ballKg, Fraction toleranceKg) =>
        ballKg < -toleranceKg
            ? $"the readings give a ball load of {Numbers.Show(ballKg.Value)} kg: the trailer would lift the vehicle at the ball"
            : null;

    private static string? Negative(WeighbridgeReadings readings) =>
        Named(readings).Where(reading => reading.Kg < Fraction.Zero).Select(reading => $"{reading.Fact} is below zero").FirstOrDefault();

    private static ImmutableArray<MissingFact> Lacking(WeighbridgeReadings readings) =>
        [.. Named(readings).Where(reading => reading.Kg is null).Select(reading => new MissingFact(reading.Fact, reading.Adds))];

    private static IEnumerable<(Fraction? Kg, string Fact, string Adds)> Named(WeighbridgeReadings readings)
    {
        const string ByVehicle = "the ball load as what the vehicle gains, to check the other way";
        const string OnAxles = "the hitched vehicle against its GVM and axle ratings, the combination against GCM";
        const string OnTrailerAxles = "the trailer against its GTM, the combination against GCM";
        const string OnTrailer = "the trailer against ATM and tow rating, the ball load as what leaves it";
        yield return (readings.FrontAloneKg, "measured.weighbridge.front-alone", ByVehicle);
        yield return (readings.RearAloneKg, "measured.weighbridge.rear-alone", ByVehicle);
        yield return (readings.FrontHitchedKg, "measured.weighbridge.front-hitched", OnAxles);
        yield return (readings.RearHitchedKg, "measured.weighbridge.rear-hitched", OnAxles);
        yield return (readings.TrailerAxlesKg, "measured.weighbridge.trailer-axles", OnTrailerAxles);
        yield return (readings.TrailerAloneKg, "measured.weighbridge.trailer-alone", OnTrailer);
    }
}
