using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>
/// Source of the published examples: a truck maker's body-builder manual, appendix on weight distribution, pp. 77, 81, 82.
/// </summary>
public sealed class MomentsTests
{
    [Fact]
    [Trait("Basis", "published")]
    public void A_uniform_load_ahead_of_the_rear_axle_is_shared_as_the_manual_prints()
    {
        // Manual, example A: 14,500 lb with its centre 156 in behind the front axle, wheelbase 214 in; printed 10,570 and 3,929.9 lb.
        var load = Moments.OnAxles(14500, 156, 214);
        ((double)load.RearKg).ShouldBe(10570, 0.5);
        ((double)load.FrontKg).ShouldBe(3929.9, 0.5);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_manual_prints_the_same_example_in_kilograms_and_UnitsNet_agrees()
    {
        // Manual, example A: printed 4794.5 kg and 1782.5 kg.
        var load = Moments.OnAxles(14500, 156, 214);
        UnitsNet.Mass.FromPounds((double)load.RearKg).Kilograms.ShouldBe(4794.5, 0.5);
        UnitsNet.Mass.FromPounds((double)load.FrontKg).Kilograms.ShouldBe(1782.5, 0.5);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_rear_figure_of_the_manuals_second_example_holds_and_its_front_figure_is_a_misprint()
    {
        // Manual, example B: 100 lb, 133 in behind the front axle, wheelbase 214 in; printed rear 62.14 lb, front 38.86 lb.
        var load = Moments.OnAxles(100, 133, 214);
        ((double)load.RearKg).ShouldBe(62.14, 0.02);

        // The invariant that catches it: front + rear = the load. 38.86 + 62.14 = 101, not 100.
        (Of(38.86m) + Of(62.14m)).ShouldNotBe((Fraction)100);
        load.TotalKg.ShouldBe((Fraction)100);
        load.FrontKg.ShouldRead("37.85"); // derived
        Math.Abs((double)load.FrontKg - 38.86).ShouldBeGreaterThan(1);
    }

    [Theory] // derived from the moment balance, wheelbase 2850 mm; no published source
    [Trait("Basis", "derived")]
    [InlineData(60, -900, "78.95", "-18.95")] // bull bar
    [InlineData(90, 3750, "-28.42", "118.42")] // wheel carrier
    [InlineData(75, 1600, "32.89", "42.11")] // roof rack and load
    [InlineData(270, 4050, "-113.68", "383.68")] // tow ball
    public void An_accessory_outside_the_wheelbase_lightens_the_far_axle(int mass, int place, string front, string rear)
    {
        var load = Moments.OnAxles(mass, place, 2850);
        load.FrontKg.ShouldRead(front);
        load.RearKg.ShouldRead(rear);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_touring_four_wheel_drive_ends_with_a_lighter_front_axle_than_it_started_with()
    {
        // derived: front 1350 kg and rear 1250 kg, then the four accessories above; 1319.74 and 1775.26 kg, together 3095.00 kg.
        (int Mass, int Place)[] items = [(60, -900), (90, 3750), (75, 1600), (270, 4050)];
        var axles = items.Aggregate(new AxleMasses(1350, 1250), (sum, item) => sum + Moments.OnAxles(item.Mass, item.Place, 2850));
        axles.FrontKg.ShouldRead("1319.74");
        axles.RearKg.ShouldRead("1775.26");
        axles.TotalKg.ShouldBe((Fraction)3095);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void Bags_over_the_trailers_axle_leave_the_ball_load_as_it_was_and_bags_behind_it_lower_it()
    {
        // Magazine, measured with 66 kg of bags: ball 175 kg empty, 175 over the axle, 150 on the rear bumper, above 225 on the drawbar.
        // The trailer stands on its ball (front) and its axle (rear), here 4000 mm apart (invented).
        Moments.OnAxles(66, 4000, 4000).FrontKg.ShouldBe(Fraction.Zero);
        Moments.OnAxles(66, 5500, 4000).FrontKg.ShouldBeLessThan(Fraction.Zero);
        Moments.OnAxles(66, 500, 4000).FrontKg.ShouldBeGreaterThan((Fraction)50);
    }

    [Fact]
    [Trait("Basis", "property")]
    public void Front_and_rear_together_are_the_mass_wherever_it_stands() =>
        Gen.Select(Any.Mass, Any.Place, Any.Wheelbase)
            .Sample((mass, place, wheelbase) => Moments.OnAxles(mass, place, wheelbase).TotalKg == mass);

    [Fact]
    [Trait("Basis", "property")]
    public void A_vehicle_without_a_wheelbase_is_refused() => Should.Throw<ArgumentOutOfRangeException>(() => Moments.OnAxles(100, 500, 0));
}
