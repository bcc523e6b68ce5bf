using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;

namespace RuleBook.Tests.Physics.Towing;

public sealed class TradeOffTests
{
    [Fact]
    [Trait("Basis", "published")]
    public void At_the_full_tow_rating_the_vehicle_may_weigh_2870_and_at_its_full_GVM_the_trailer_2380()
    {
        // Forum that works the figures GVM 2990, GCM 5370, tow rating 2500 kg; 5370 - 2500 = 2870.
        var points = TradeOff.TrailerAgainstVehicle(2200, 2990, 5370, 2500, 0);
        points.Select(point => (point.GivenKg, point.LeftKg)).ShouldBe([(2200, 2500), (2870, 2500), (2990, 2380)]);
        points.Select(point => string.Join(" + ", point.Binding)).ShouldBe(["tow rating", "GCM + tow rating", "GCM + GVM"]);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_forums_trailer_of_2370_is_a_slip_because_vehicle_and_trailer_must_make_up_the_GCM()
    {
        // The same forum prints 2370. The invariant that catches it: where the GCM binds, vehicle + trailer axles = GCM.
        (2990 + 2370).ShouldNotBe(5370);
        var end = TradeOff.TrailerAgainstVehicle(2200, 2990, 5370, 2500, 0)[^1];
        (end.GivenKg + end.LeftKg).ShouldBe((Fraction)5370);
        end.LeftKg.ShouldNotBe((Fraction)2370);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Re_rating_the_GVM_leaves_the_GCM_so_that_a_heavier_vehicle_leaves_less_for_the_trailer()
    {
        // Common practice, no source: 3.5 t and 3.5 t under 7.0 t; re-rated and loaded to 4.0 t leaves 3.0 t.
        TradeOff.TrailerAgainstVehicle(2500, 3500, 7000, 3500, 0)[^1].LeftKg.ShouldBe((Fraction)3500);
        var rerated = TradeOff.TrailerAgainstVehicle(2500, 4000, 7000, 3500, 0);
        rerated.Select(point => (point.GivenKg, point.LeftKg)).ShouldBe([(2500, 3500), (3500, 3500), (4000, 3000)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void With_a_ball_load_the_tow_rating_binds_the_trailer_alone_and_the_GCM_its_axles()
    {
        var points = TradeOff.TrailerAgainstVehicle(2500, 4000, 7000, 3500, 300);
        points.Select(point => (point.GivenKg, point.LeftKg)).ShouldBe([(2500, 3200), (3800, 3200), (4000, 3000)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_rear_axle_takes_over_from_the_GVM_as_the_ball_load_grows()
    {
        // derived: GVM leaves 3000 - 2500 = 500, the rear axle 1750 - 1200 = 550; arm / wheelbase 0.5, so they meet at 100 kg of ball load.
        var points = TradeOff.RearLoadAgainstBall(new AxleMasses(1300, 1200), 3000, 1750, 300, 1400, 2800);
        points.Select(point => (point.GivenKg, point.LeftKg)).ShouldBe([(0, 500), (100, 400), (300, 100)]);
        points.Select(point => string.Join(" + ", point.Binding)).ShouldBe(["GVM", "GVM + rear axle", "ball load + rear axle"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_line_ends_where_nothing_is_left()
    {
        var points = TradeOff.RearLoadAgainstBall(new AxleMasses(1300, 1600), 3500, 1750, 300, 1400, 2800);
        points.Select(point => (point.GivenKg, point.LeftKg)).ShouldBe([(0, 150), (100, 0)]);
        TradeOff.RearLoadAgainstBall(new AxleMasses(1300, 1800), 3500, 1750, 300, 1400, 2800).ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "property")]
    public void No_corner_of_the_line_breaks_a_limit_and_each_lies_on_one() =>
        Gen.Select(Any.Tenths(2900, 4200), Any.Tenths(4500, 8000), Any.Tenths(1000, 3500), Any.Mass)
            .Sample(
                (gvm, gcm, tow, ball) =>
                    TradeOff
                        .TrailerAgainstVehicle(2500, gvm, gcm, tow, ball)
                        .All(point =>
                            point.GivenKg + point.LeftKg <= gcm
                            && point.LeftKg + ball <= tow
                            && point.GivenKg <= gvm
                            && (point.GivenKg + point.LeftKg == gcm || point.LeftKg + ball == tow)
                            && point.Binding.Length > 0
                        )
            );

    [Theory]
    [Trait("Basis", "published")]
    [InlineData(3000, 6000, 2200, 450, 300, 300)] // magazine: GVM - kerb - 350, GCM - kerb - 3500; masses invented
    [InlineData(3000, 5500, 2200, 450, -200, -200)]
    public void Cargo_left_is_the_lower_of_two_figures_and_the_ball_load_is_not_taken_off_the_GCM_again(
        int gvm,
        int gcm,
        int kerb,
        int byGvm,
        int byGcm,
        int governs
    )
    {
        var left = CargoLeft.Of(kerb, 3500, 350, gvm, gcm);
        left.ShouldBe(new CargoLeft(byGvm, byGcm));
        left.Kg.ShouldBe((Fraction)governs);
    }
}
