using CsCheck;
using Fractions;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Heights;

public sealed class PredictedLiftTests
{
    // 50 mm where the front axle carries 1350 kg, 30 N/mm at each wheel: springs for a bull bar and winch.
    private static readonly AxleSprings Heavy = new("modification.springs.front", Axle.Front, 30, new SpringHeight.Gain(50, 1350));

    [Fact]
    [Trait("Basis", "common practice")]
    public void Springs_for_constant_load_raise_a_standard_vehicle_beyond_the_limit_until_that_mass_is_on_it()
    {
        // Common practice, no source: about 75 mm where 50 mm was meant. Invented vehicle with 1197 kg on its front axle.
        var standard = PredictedLift.Of(Heavy, 1197, "vehicle.tare-axles");
        ((double)standard.LiftMm!.Value).ShouldBe(75, 0.5);
        PredictedLift.Of(Heavy, 1350, "vehicle.tare-axles").LiftMm.ShouldBe((Fraction)50);
        standard.MassToComeDownTo(50).ShouldBe((Fraction)153);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void The_accessories_that_the_springs_are_rated_for_bring_the_vehicle_down_once_they_are_fixed_to_it()
    {
        // Common practice, no source: the lift counts at unladen mass, with what is permanently attached. Invented wagon.
        var bare = MassBudget.For(Invented.Wagon(), MassStateDefinition.Unladen);
        var fitted = MassBudget.For(
            Invented.Wagon(
                Invented.Item("bull bar", ItemKind.FixedAccessory, 60, -900),
                Invented.Item("winch", ItemKind.FixedAccessory, 40, -950),
                Invented.Item("driver", ItemKind.Occupant, 85, 1500)
            ),
            MassStateDefinition.Unladen
        );
        var springs = Heavy with { Height = new SpringHeight.Gain(50, fitted.Axles!.FrontKg) };
        var without = PredictedLift.Of(springs, bare.Axles!.FrontKg, "vehicle.tare-axles");
        without.LiftMm!.Value.ShouldBeGreaterThan((Fraction)70);
        PredictedLift.Of(springs, fitted.Axles.FrontKg, "vehicle.tare-axles").LiftMm.ShouldBe((Fraction)50);
        without.MassToComeDownTo(50).ShouldBe(fitted.Axles.FrontKg - bare.Axles.FrontKg);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void UnitsNet_agrees_on_how_far_a_mass_presses_two_springs_down()
    {
        // derived: force over twice the wheel rate; standard gravity 9.80665 m/s2, 3rd CGPM 1901.
        var lift = PredictedLift.Of(Heavy, 1350, "vehicle.tare-axles");
        var pressed =
            UnitsNet.Force.FromKilogramsForce(100).Newtons
            / (2 * UnitsNet.ForcePerLength.FromNewtonsPerMillimeter(30).NewtonsPerMillimeter);
        ((double)(lift.LiftMm - lift.LiftWith(100))!.Value).ShouldBe(pressed, 1e-9);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Mass_ahead_of_the_front_axle_counts_for_more_than_itself_and_mass_behind_the_rear_for_nothing()
    {
        var lift = PredictedLift.Of(Heavy, 1197, "vehicle.tare-axles");
        var atBumper = lift.MassToComeDownTo(50, -900, 2850).ShouldNotBeNull();
        atBumper.ShouldBeLessThan((Fraction)153);
        Moments.OnAxles(atBumper, -900, 2850).FrontKg.ShouldBe((Fraction)153);
        lift.MassToComeDownTo(50, 2850, 2850).ShouldBeNull();
        lift.MassToComeDownTo(50, 3750, 2850).ShouldBeNull();
        lift.MassToComeDownTo(90, 3750, 2850).ShouldBe(Fraction.Zero);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_free_height_gives_the_same_line_once_the_unsprung_mass_is_taken_off()
    {
        // derived: trim 480 mm; 50 mm gained at 1350 kg of which 150 kg unsprung, so the free height lies 1200 g / 60 N/mm above 530 mm.
        var free = 530 + (1200 * Of(9.80665m) / 60);
        var springs = Heavy with { Height = new SpringHeight.Free(free, 480, 150) };
        PredictedLift.Of(springs, 1280, "vehicle.tare-axles").LiftMm.ShouldBe(PredictedLift.Of(Heavy, 1280, "vehicle.tare-axles").LiftMm);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_small_table_shows_the_lift_against_mass_added()
    {
        var table = PredictedLift.Of(Heavy, 1197, "vehicle.tare-axles").Table(51, 3);
        table.Select(step => step.AddedKg).ShouldBe([0, 51, 102, 153]);
        table[^1].LiftMm.ShouldBe((Fraction)50);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_not_known_of_the_springs_is_named_and_nothing_is_guessed()
    {
        var unknown = new AxleSprings("modification.springs.rear", Axle.Rear, null, new SpringHeight.Free(600, null, null));
        var lift = PredictedLift.Of(unknown, null, "vehicle.tare-axles");
        lift.LiftMm.ShouldBeNull();
        lift.MassToComeDownTo(50).ShouldBeNull();
        lift.Table(50, 4).ShouldBeEmpty();
        lift.Missing.Select(missing => missing.Fact)
            .ShouldBe([
                "modification.springs.rear.wheel-rate",
                "vehicle.tare-axles",
                "modification.springs.rear.unsprung-mass",
                "vehicle.trim-height",
            ]);
    }

    [Fact]
    [Trait("Basis", "property")]
    public void More_mass_never_raises_the_predicted_height() =>
        Gen.Select(Any.Rate, Any.Tenths(600, 2000), Any.Mass, Any.Mass)
            .Sample(
                (rate, load, one, other) =>
                {
                    var lift = PredictedLift.Of(Heavy with { WheelRateNPerMm = rate }, load, "vehicle.tare-axles");
                    return lift.LiftWith(one + other) <= lift.LiftWith(one);
                }
            );

    [Fact]
    [Trait("Basis", "property")]
    public void The_mass_still_needed_brings_the_vehicle_down_to_the_limit_exactly() =>
        Gen.Select(Any.Rate, Any.Tenths(600, 1350), Any.Tenths(0, 50))
            .Sample(
                (rate, load, limit) =>
                {
                    var lift = PredictedLift.Of(Heavy with { WheelRateNPerMm = rate }, load, "vehicle.tare-axles");
                    return lift.LiftWith(lift.MassToComeDownTo(limit)!.Value) == limit;
                }
            );

    [Fact]
    [Trait("Basis", "property")]
    public void A_spring_without_stiffness_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => PredictedLift.Of(Heavy with { WheelRateNPerMm = 0 }, 1300, "vehicle.tare-axles"));
}
