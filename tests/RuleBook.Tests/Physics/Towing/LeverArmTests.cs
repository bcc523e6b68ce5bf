using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Towing;

public sealed class LeverArmTests
{
    [Theory] // derived from the moment balance
    [Trait("Basis", "derived")]
    [InlineData(350, 1200, 2850, "-147.37", "497.37")]
    [InlineData(350, 1270, 3085, "-144.08", "494.08")]
    [InlineData(250, 1200, 2850, "-105.26", "355.26")]
    [InlineData(300, 1500, 3000, "-150", "450")]
    public void A_ball_load_lightens_the_front_axle_and_adds_that_to_the_rear(int ball, int arm, int wheelbase, string front, string rear)
    {
        var change = LeverArm.OnAxles(ball, arm, wheelbase);
        change.FrontKg.ShouldRead(front);
        change.RearKg.ShouldRead(rear);
        change.TotalKg.ShouldBe((Fraction)ball);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void With_the_ball_half_a_wheelbase_behind_the_rear_axle_gains_half_as_much_again()
    {
        // Rule of thumb for dual-cab utilities on a four-wheel-drive site: 300 kg on the ball is nearly 450 kg on the rear axle,
        // 150 kg off the front. Exact where arm / wheelbase = 0.5.
        LeverArm.OnAxles(300, 1500, 3000).ShouldBe(new AxleMasses(-150, 450));
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Fifty_kilograms_on_the_ball_put_more_than_fifty_on_the_rear_axle() => // common practice, no source; invented arm
        LeverArm.OnAxles(50, 1200, 2850).RearKg.ShouldBeGreaterThan((Fraction)50);

    [Fact]
    [Trait("Basis", "published")]
    public void The_measured_gain_of_a_rear_axle_is_more_than_the_naive_sum()
    {
        // Magazine, measured on a large wagon: rear axle 1233 kg, ball load 270 kg, naive sum 1503 kg, hitched 1650 kg.
        Fraction gain = 1650 - 1233;
        gain.ShouldBe((Fraction)417);
        gain.ShouldBeGreaterThan((Fraction)270);
        (gain / 270).ShouldRead("1.544");
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_measured_gain_needs_a_longer_arm_than_a_wagon_has_and_is_no_exact_check()
    {
        // The same measurement, 417 / 270. The invariant that catches it: gain = ball x (1 + arm / wheelbase). At 2850 mm of wheelbase
        // (memory) it takes an arm of 1551.67 mm (derived), where 1200 to 1300 mm is usual: scale error, hitch extension or a
        // weight-distribution hitch.
        var arm = LeverArm.ImpliedMm(270, 417, 2850);
        arm.ShouldRead("1551.67");
        arm.ShouldBeGreaterThan((Fraction)1300);
        LeverArm.OnAxles(270, 1300, 2850).RearKg.ShouldBeLessThan((Fraction)417);
    }

    [Fact]
    [Trait("Basis", "property")]
    public void The_ball_load_that_goes_in_comes_out_on_the_axles_and_its_arm_can_be_found_again() =>
        Gen.Select(Any.Tenths(1, 400), Any.Tenths(0, 2000), Any.Wheelbase)
            .Sample(
                (ball, arm, wheelbase) =>
                {
                    var change = LeverArm.OnAxles(ball, arm, wheelbase);
                    return change.TotalKg == ball && LeverArm.ImpliedMm(ball, change.RearKg, wheelbase) == arm;
                }
            );
}
