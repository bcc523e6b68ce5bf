using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Invented;

namespace RuleBook.Tests.Physics.Towing;

public sealed class CombinationTests
{
    private static readonly CombinationLimits Limits = new(
        new VehicleLimits(WagonRatings, null, 1900, 2300),
        new TrailerLimits
        {
            Braked = true,
            AtmKg = 3500,
            GtmKg = 3300,
            TowbarKg = 3500,
            TowbarBallKg = 350,
            CouplingKg = 3500,
            CouplingBallKg = 350,
        }
    );

    [Fact]
    [Trait("Basis", "common practice")]
    public void The_ball_load_counts_against_the_vehicles_GVM_and_once_against_the_GCM()
    {
        // Common practice, no source: GVM 3.5 t, ball load 300 kg, the vehicle's own axles read 3.5 t while hitched.
        var combination = new Combination(3500, null, 3200, 3500, 300);
        combination.TotalKg.ShouldBe((Fraction)6700);
        var check = CombinationCheck.Of(combination, Limits);
        check.Holds.ShouldBeTrue();
        Named(check, "vehicle against its GVM").MarginKg.ShouldBe(Fraction.Zero);
        Named(check, "vehicle and trailer axles against GCM").MarginKg.ShouldBe((Fraction)300);
        Named(check, "trailer alone against the tow rating").MarginKg.ShouldBe(Fraction.Zero);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void A_trailer_over_the_tow_rating_on_its_jockey_wheel_is_over_although_its_axles_read_less() // common practice, no source
    {
        var check = CombinationCheck.Of(new Combination(3300, null, 3250, 3550, 300), Limits);
        Named(check, "trailer axles against GTM").Holds.ShouldBeTrue();
        Named(check, "trailer alone against the tow rating").Holds.ShouldBeFalse();
        Named(check, "trailer alone against its ATM").Holds.ShouldBeFalse();
    }

    [Fact]
    [Trait("Basis", "published")]
    public void Trailer_alone_less_trailer_axles_is_the_ball_load()
    {
        // Trade weighing service: ATM 2890 kg - GTM 2650 kg = 240 kg on the ball.
        var plan = new TowingPlan { TrailerAloneKg = 2890, TrailerAxlesKg = 2650 };
        plan.AnyBallKg.ShouldBe((Fraction)240);
        (plan with { TrailerAxlesKg = null, BallKg = 240 }).Hitched().TrailerAxlesKg.ShouldBe((Fraction)2650);
        (plan with { TrailerAloneKg = null, BallKg = 240 }).Hitched().TrailerAloneKg.ShouldBe((Fraction)2890);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_plan_puts_the_ball_load_on_the_axles_by_its_arm()
    {
        // derived: 350 kg, arm 1200 mm, wheelbase 2850 mm: front -147.37, rear +497.37 kg.
        var hitched = Plan(350).Hitched();
        hitched.VehicleAxles!.FrontKg.ShouldRead("1252.63");
        hitched.VehicleAxles.RearKg.ShouldRead("1897.37");
        hitched.VehicleKg.ShouldBe((Fraction)3150);
        hitched.TotalKg.ShouldBe((Fraction)(3150 + 2650));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_ball_load_that_does_not_fit_the_trailers_two_masses_is_an_error()
    {
        var plan = Plan(350) with { TrailerAxlesKg = 2700 };
        plan.Problem.ShouldNotBeNull().ShouldContain("300 kg");
        Should.Throw<InvalidOperationException>(() => plan.Hitched());
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_the_arm_the_masses_are_known_and_the_axles_are_not()
    {
        var plan = Plan(350) with { BallBehindRearAxleMm = null };
        plan.Hitched().VehicleKg.ShouldBe((Fraction)3150);
        plan.Hitched().VehicleAxles.ShouldBeNull();
        plan.Missing().Select(missing => missing.Fact).ShouldBe(["vehicle.ball-behind-rear-axle"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Ball_load_is_held_against_the_maker_the_towbar_and_the_coupling_each()
    {
        var limits = Limits with { Trailer = Limits.Trailer with { CouplingBallKg = 250 } };
        var check = CombinationCheck.Of(Plan(300).Hitched(), limits);
        Named(check, "ball load against the vehicle maker's limit").Holds.ShouldBeTrue();
        Named(check, "ball load against the towbar").Holds.ShouldBeTrue();
        Named(check, "ball load against the coupling").Holds.ShouldBeFalse();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rating_that_is_not_known_is_named_and_the_others_are_still_checked()
    {
        var limits = new CombinationLimits(new VehicleLimits(WagonRatings with { GcmKg = null }), new TrailerLimits { AtmKg = 3500 });
        var check = CombinationCheck.Of(Plan(300).Hitched(), limits);
        check
            .Missing.Select(missing => missing.Fact)
            .ShouldBe([
                "vehicle.tyres",
                "vehicle.tyres",
                "vehicle.ratings.gcm",
                "trailer.ratings.gtm",
                "trailer.braked",
                "vehicle.towbar.mass",
                "trailer.coupling.mass",
                "vehicle.towbar.ball",
                "trailer.coupling.ball",
            ]);
        Named(check, "vehicle against its GVM").Holds.ShouldBeTrue();
    }

    [Fact]
    [Trait("Basis", "property")]
    public void Vehicle_and_trailer_weigh_the_same_hitched_as_apart() =>
        Gen.Select(Any.Mass, Any.Tenths(400, 3500))
            .Sample(
                (ball, trailer) =>
                {
                    var hitched = (Plan(0) with { BallKg = ball, TrailerAloneKg = trailer }).Hitched();
                    return hitched.TotalKg == 2800 + trailer && hitched.VehicleAxles!.TotalKg == hitched.VehicleKg;
                }
            );

    private static TowingPlan Plan(int ball) =>
        new()
        {
            UnhitchedAxles = new AxleMasses(1400, 1400),
            TrailerAloneKg = 3000,
            BallKg = ball,
            WheelbaseMm = 2850,
            BallBehindRearAxleMm = 1200,
        };

    private static LoadCheck Named(CombinationCheck check, string what) => check.Checks.Single(record => record.What == what);
}
