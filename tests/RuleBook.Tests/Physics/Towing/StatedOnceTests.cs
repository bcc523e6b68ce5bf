using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using static RuleBook.Tests.Physics.Masses.Invented;

namespace RuleBook.Tests.Physics.Towing;

/// <summary>Of the masses of a combination some give the others; what lacks is named. Derived: sums and differences.</summary>
public sealed class StatedOnceTests
{
    private static readonly WeighbridgeReadings Readings = new(1400, 1450, 1300, 1790, 2650, 2890);

    [Fact]
    [Trait("Basis", "derived")]
    public void An_empty_plan_asks_for_each_mass_and_for_the_two_lengths_that_share_the_ball_load() =>
        new TowingPlan()
            .Missing()
            .Select(missing => missing.Fact)
            .ShouldBe([
                "vehicle.tare",
                "vehicle.tare-axles",
                "trailer.ball-load",
                "trailer.mass",
                "vehicle.wheelbase",
                "vehicle.ball-behind-rear-axle",
            ]);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_plan_with_the_trailers_axles_and_the_ball_load_needs_neither_the_trailer_alone_nor_the_mass_beside_the_axles()
    {
        var plan = new TowingPlan
        {
            UnhitchedAxles = new AxleMasses(1400, 1400),
            TrailerAxlesKg = 2650,
            BallKg = 240,
            WheelbaseMm = 2850,
            BallBehindRearAxleMm = 1200,
        };
        plan.Missing().ShouldBeEmpty();
        plan.Hitched().TrailerAloneKg.ShouldBe((Fraction)2890);
        plan.Hitched().VehicleKg.ShouldBe((Fraction)3040);
        (plan with { UnhitchedAxles = null, UnhitchedKg = 2800 })
            .Missing()
            .Select(missing => missing.Fact)
            .ShouldBe(["vehicle.tare-axles"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_mass_of_the_vehicle_alone_is_enough_for_the_whole_and_not_for_the_axles()
    {
        var hitched = new TowingPlan
        {
            UnhitchedKg = 2800,
            TrailerAloneKg = 2890,
            TrailerAxlesKg = 2650,
            WheelbaseMm = 2850,
            BallBehindRearAxleMm = 1200,
        }.Hitched();
        hitched.ShouldBe(new Combination(3040, null, 2650, 2890, 240));
        hitched.TotalKg.ShouldBe((Fraction)5690);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_trailers_two_masses_count_even_where_the_ball_load_is_not_known()
    {
        new TowingPlan { UnhitchedKg = 2800, TrailerAxlesKg = 2650 }
            .Hitched()
            .ShouldBe(new Combination(null, null, 2650, null, null));
        new TowingPlan { UnhitchedKg = 2800, TrailerAloneKg = 2890 }
            .Hitched()
            .ShouldBe(new Combination(null, null, null, 2890, null));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicles_mass_that_is_not_the_sum_of_its_axles_is_an_error()
    {
        var plan = new TowingPlan { UnhitchedKg = 2810, UnhitchedAxles = new AxleMasses(1400, 1400) };
        plan.Problem.ShouldNotBeNull().ShouldContain("2810 kg");
        (plan with { UnhitchedKg = 2800 }).Problem.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Every_reading_that_was_not_taken_is_named() =>
        Weighing
            .Of(new WeighbridgeReadings(null, null, null, null, null, null), 0)
            .Missing.Select(missing => missing.Fact)
            .ShouldBe([
                "measured.weighbridge.front-alone",
                "measured.weighbridge.rear-alone",
                "measured.weighbridge.front-hitched",
                "measured.weighbridge.rear-hitched",
                "measured.weighbridge.trailer-axles",
                "measured.weighbridge.trailer-alone",
            ]);

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_the_trailers_axles_what_they_carry_is_the_trailer_less_the_vehicles_gain()
    {
        var combination = Weighing.Of(Readings with { TrailerAxlesKg = null }, 20).Combination!;
        combination.TrailerAxlesKg.ShouldBe((Fraction)2650);
        combination.BallKg.ShouldBe((Fraction)240);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_was_read_on_the_trailers_axles_counts_and_not_what_the_two_ball_loads_would_make_of_it()
    {
        // The vehicle gains 250 kg, the trailer gives off 240: within 20 kg, the greater ball load counts, the readings stay.
        var combination = Weighing.Of(Readings with { RearHitchedKg = 1800 }, 20).Combination!;
        combination.BallKg.ShouldBe((Fraction)250);
        combination.TrailerAxlesKg.ShouldBe((Fraction)2650);
        combination.TrailerAloneKg.ShouldBe((Fraction)2890);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_greater_ball_load_counts_whichever_way_it_was_read()
    {
        Weighing.Of(Readings with { RearHitchedKg = 1780 }, 20).Combination!.BallKg.ShouldBe((Fraction)240); // the vehicle gains 230
        Weighing.Of(Readings with { TrailerAxlesKg = null, TrailerAloneKg = null }, 20).Combination!.BallKg.ShouldBe((Fraction)240);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_negative_reading_is_told_as_such_even_where_the_two_ball_loads_disagree_and_an_empty_scale_is_no_error()
    {
        Weighing.Of(Readings with { TrailerAxlesKg = -2650 }, 0).Error.ShouldBe("measured.weighbridge.trailer-axles is below zero");
        Weighing.Of(new WeighbridgeReadings(0, 0, 120, 120, 0, 240), 0).Error.ShouldBeNull();
        Should.Throw<ArgumentOutOfRangeException>(() => Weighing.Of(Readings, -1));
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void One_rating_that_is_passed_fails_the_combination_however_many_hold() // common practice, no source
    {
        var limits = new CombinationLimits(new VehicleLimits(WagonRatings), new TrailerLimits { Braked = true, AtmKg = 2800 });
        var check = CombinationCheck.Of(new Combination(3000, null, 2650, 2890, 240), limits);
        check.Checks.Count(each => each.Holds).ShouldBeGreaterThan(1);
        check.Holds.ShouldBeFalse();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_default_by_the_vehicles_own_mass_counts_only_where_neither_the_maker_nor_a_re_rating_gives_a_figure()
    {
        var none = WagonRatings with { BrakedTowKg = null };
        Tow(new VehicleLimits(none)).ShouldBe(["trailer alone against the default by the vehicle's own mass"]);
        Tow(new VehicleLimits(WagonRatings)).ShouldBe(["trailer alone against the tow rating"]);
        Tow(new VehicleLimits(none, new Ratings { BrakedTowKg = 3000 })).ShouldBe(["trailer alone against the tow rating, re-rated"]);
        Tow(new VehicleLimits(none, new Ratings { GvmKg = 3800 }))
            .ShouldBe(["trailer alone against the default by the vehicle's own mass"]);

        static string[] Tow(VehicleLimits vehicle) =>
            [
                .. CombinationCheck
                    .Of(
                        new Combination(3000, null, 2650, 2890, 240),
                        new CombinationLimits(vehicle, new TrailerLimits { Braked = true }, 2650, new Fraction(3, 2))
                    )
                    .Checks.Select(check => check.What)
                    .Where(what => what.StartsWith("trailer alone against the ", StringComparison.Ordinal)),
            ];
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_lower_of_the_two_limits_leaves_the_cargo_whichever_it_is()
    {
        CargoLeft.Of(2650, 2890, 240, 3500, 7000).ShouldBe(new CargoLeft(610, 1460));
        CargoLeft.Of(2650, 2890, 240, 3500, 7000).Kg.ShouldBe((Fraction)610);
        CargoLeft.Of(2650, 2890, 240, 3500, 6000).Kg.ShouldBe((Fraction)460);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Figures_that_no_combination_has_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => LeverArm.ImpliedMm(0, 300, 2850));
        Should.Throw<ArgumentOutOfRangeException>(() => TradeOff.TrailerAgainstVehicle(-1, 3500, 7000, 3500, 300));
        Should.Throw<ArgumentOutOfRangeException>(() => TradeOff.TrailerAgainstVehicle(2500, 3500, 7000, 3500, -1));
        Should.Throw<ArgumentOutOfRangeException>(() => TradeOff.TrailerAgainstVehicle(3600, 3500, 7000, 3500, 300));
        Should.Throw<ArgumentOutOfRangeException>(() =>
            TradeOff.RearLoadAgainstBall(new AxleMasses(1400, 1450), 3500, 2100, -1, 1200, 2850)
        );
    }
}
