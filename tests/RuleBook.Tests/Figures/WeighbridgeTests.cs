using Fractions;
using RuleBook.Physics.Towing;
using static RuleBook.Tests.Figures.Reckoned;

namespace RuleBook.Tests.Figures;

/// <summary>What a weighbridge read is held against the ratings as it was read.</summary>
public sealed class WeighbridgeTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "front-alone": "1600 kg", "rear-alone": "2000 kg" """, "vehicle against its GVM")] // 3600 of 3500 kg
    [InlineData(""" "mass": "3600 kg" """, "vehicle against its GVM")]
    [InlineData(""" "rear-alone": "2150 kg" """, "rear axle against its rating")] // of 2100 kg
    [InlineData(""" "front-alone": "1700 kg" """, "front axle against its rating")] // of 1650 kg
    [InlineData(""" "mass": "3400 kg", "front-alone": "1250 kg" """, "rear axle against its rating")] // 3400 - 1250 = 2150 kg
    public void Readings_of_the_vehicle_alone_are_judged_as_travelled_without_a_mass_state(string readings, string fails)
    {
        // With its tare, and without.
        foreach (var vehicle in new[] { Wagon, Wagon[Wagon.IndexOf("\"wheelbase", StringComparison.Ordinal)..] })
        {
            var failing = MassesOf($$""" "vehicle": { {{vehicle}} }, "measured": { "weighbridge": { {{readings}} } } """).Failing.ToArray();
            failing.ShouldContain(each => each.Check.What == fails);
            failing.Select(each => each.State).ShouldContain("weighed-alone");
        }
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_weighed_vehicle_without_a_tare_carries_the_planned_ball_load() => // 3400 + 240 kg, over 3500
        MassesOf(
            $$"""
            "vehicle": { {{Wagon[
                Wagon.IndexOf("\"wheelbase", StringComparison.Ordinal)..
            ]}} }, "trailer": { "mass": "2890 kg", "ball-load": "240 kg", "braked": "yes" },
            "measured": { "weighbridge": { "mass": "3400 kg" } }
            """
        )
            .Failing.Single(each => each.Check.LimitFact == "vehicle.ratings.gvm")
            .ShouldSatisfyAllConditions(each => each.State.ShouldBe("planned"), each => each.Check.ValueKg.ShouldBe((Fraction)3640));

    [Fact]
    [Trait("Basis", "derived")]
    public void One_axle_weighed_while_hitched_is_judged_by_itself() =>
        MassesOf(
            $$""" "vehicle": { {{Wagon}} }, "measured": { "weighbridge": { "rear-hitched": "2150 kg", "trailer-axles": "2000 kg" } } """
        )
            .Failing.Single()
            .Check.What.ShouldBe("rear axle against its rating");

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(3470, false)]
    [InlineData(3481, true)]
    [InlineData(3520, true)] // 20 kg over is still inside the band
    [InlineData(3530, false)]
    public void A_weighed_mass_nearer_to_its_limit_than_the_guard_band_is_too_close_to_call(int kg, bool close)
    {
        // Guard band by JCGM 106:2012 (clause not opened): two axles of 20 kg each, times the factor of one half of this reference: 20 kg.
        var answer = MassesOf(
            $$"""
            "vehicle": { {{Wagon}} }, "measured": { "uncertainty": { "weighbridge": "20 kg" }, "weighbridge": { "mass": "{{kg}} kg" } }
            """
        );
        var check = answer.Weighed!.Checks.Single(each => each.LimitFact == "vehicle.ratings.gvm");
        check.GuardKg.ShouldBe((Fraction)20);
        check.TooClose.ShouldBe(close);
        answer.TooClose.Any().ShouldBe(close);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_ball_load_below_zero_is_an_alarm_and_no_light_ball_load()
    {
        // 2000 kg alone and 2040 kg on the axles: the trailer lifts 40 kg off the vehicle.
        var planned = MassesOf($$""" "vehicle": { {{Wagon}} }, "trailer": { "mass": "2000 kg", "axles": "2040 kg", "braked": "yes" } """);
        planned.Towing!.LiftsBallKg.ShouldBe((Fraction)40);
        planned.Towing.Planned!.Checks.ShouldNotContain(check => check.What.StartsWith("ball load", StringComparison.Ordinal));
        var weighed = MassesOf(
            $$""" "vehicle": { {{Wagon}} }, "measured": { "weighbridge": { "trailer-alone": "2000 kg", "trailer-axles": "2040 kg" } } """
        );
        weighed.Towing!.LiftsBallKg.ShouldBe((Fraction)40);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void Rated_towing_capacity_is_the_makers_figure_and_only_without_one_the_lesser_of_towbar_and_gcm_less_gvm()
    {
        // Design rule definitions as reproduced by trade pages: the lesser of the tow equipment's rating and GCM less GVM.
        const string Towing = """ "towbar": { "mass": "3600 kg" } """;
        var trailer = """ "trailer": { "mass": "2000 kg", "ball-load": "200 kg", "braked": "yes" } """;
        MassesOf($$""" "vehicle": { {{Wagon}}, {{Towing}} }, {{trailer}} """)
            .Towing!.Capacity.ShouldBe(new TowRating(3500, true, "vehicle.ratings.braked-tow"));
        var without = Wagon
            .Replace("\"braked-tow\": \"3500 kg\", ", "", StringComparison.Ordinal)
            .Replace("7000 kg", "6900 kg", StringComparison.Ordinal);
        MassesOf($$""" "vehicle": { {{without}}, {{Towing}} }, {{trailer}} """)
            .Towing!.Capacity.ShouldBe(new TowRating(3400, false, "vehicle.towbar.mass"));
    }

    [Fact]
    [Trait("Basis", "published")]
    public void What_a_trailers_axles_may_carry_ends_at_its_own_gtm()
    {
        // GTM: most on the trailer's axles (design rule definitions, as reproduced by trade pages): 2500 kg, whatever the vehicle leaves.
        var points = MassesOf(
            $$"""
            "vehicle": { {{Wagon}} }, "trailer": { "mass": "2000 kg", "ball-load": "200 kg", "braked": "yes",
              "ratings": { "atm": "2800 kg", "gtm": "2500 kg" } }
            """
        ).TradeOff;
        points.ShouldAllBe(point => point.LeftKg <= 2500);
        points[0].Binding.ShouldBe(["GTM"]);
    }
}
