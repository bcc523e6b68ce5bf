using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;

namespace RuleBook.Tests.Physics.Towing;

/// <summary>
/// Procedure of trade weighing services: vehicle alone, coupled, trailer alone; ball = A - G and (F1 + R1) - (F0 + R0) must agree.
/// </summary>
public sealed class WeighingTests
{
    // Invented readings: 240 kg both ways.
    private static readonly WeighbridgeReadings Readings = new(1400, 1450, 1300, 1790, 2650, 2890);

    [Fact]
    [Trait("Basis", "published")]
    public void The_ball_load_is_read_both_ways_and_they_agree()
    {
        // Trade weighing service: 2890 kg - 2650 kg = 240 kg.
        Readings.BallByTrailerKg.ShouldBe((Fraction)240);
        Readings.BallByVehicleKg.ShouldBe((Fraction)240);
        var weighing = Weighing.Of(Readings, 0);
        weighing.DisagreementKg.ShouldBe(Fraction.Zero);
        weighing.Combination.ShouldBe(new Combination(3090, new AxleMasses(1300, 1790), 2650, 2890, 240));
        weighing.Missing.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Readings_that_disagree_beyond_the_tolerance_are_an_error_and_are_not_averaged()
    {
        var weighing = Weighing.Of(Readings with { RearHitchedKg = 1831 }, 40);
        weighing.Combination.ShouldBeNull();
        weighing.DisagreementKg.ShouldBe((Fraction)41);
        weighing.Error.ShouldNotBeNull().ShouldContain("41 kg apart");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Readings_that_disagree_within_the_tolerance_count_with_the_greater_ball_load()
    {
        var weighing = Weighing.Of(Readings with { RearHitchedKg = 1830 }, 40);
        weighing.Error.ShouldBeNull();
        weighing.DisagreementKg.ShouldBe((Fraction)40);
        weighing.Combination!.BallKg.ShouldBe((Fraction)280);
        weighing.Combination.TrailerAloneKg.ShouldBe((Fraction)2890);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_the_round_uncoupled_the_trailer_gives_the_ball_load_and_the_cross_check_is_named()
    {
        var weighing = Weighing.Of(Readings with { FrontAloneKg = null, RearAloneKg = null }, 20);
        weighing.Combination!.BallKg.ShouldBe((Fraction)240);
        weighing.DisagreementKg.ShouldBeNull();
        weighing.Missing.Select(missing => missing.Fact).ShouldBe(["measured.weighbridge.front-alone", "measured.weighbridge.rear-alone"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_the_trailer_alone_its_mass_follows_from_its_axles_and_the_vehicles_gain() =>
        Weighing.Of(Readings with { TrailerAloneKg = null }, 20).Combination!.TrailerAloneKg.ShouldBe((Fraction)2890);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_reading_below_zero_is_an_error() =>
        Weighing.Of(Readings with { TrailerAxlesKg = -2650 }, 10000).Error.ShouldNotBeNull().ShouldContain("trailer-axles");

    [Fact]
    [Trait("Basis", "property")]
    public void A_planned_combination_weighed_without_error_gives_its_ball_load_back() =>
        Gen.Select(Any.Tenths(1, 400), Any.Tenths(500, 3500), Any.Tenths(800, 1500))
            .Sample(
                (ball, trailer, arm) =>
                {
                    var plan = new TowingPlan
                    {
                        UnhitchedAxles = new AxleMasses(1400, 1450),
                        TrailerAloneKg = trailer,
                        BallKg = ball,
                        WheelbaseMm = 2850,
                        BallBehindRearAxleMm = arm,
                    };
                    var hitched = plan.Hitched();
                    var axles = hitched.VehicleAxles!;
                    var readings = new WeighbridgeReadings(1400, 1450, axles.FrontKg, axles.RearKg, hitched.TrailerAxlesKg, trailer);
                    return Weighing.Of(readings, 0).Combination == hitched;
                }
            );
}
