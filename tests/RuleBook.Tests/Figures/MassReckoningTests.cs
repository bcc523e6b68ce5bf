using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Figures.Reckoned;

namespace RuleBook.Tests.Figures;

/// <summary>Masses of a job and what they leave. Derived: sums, differences and moments of invented figures.</summary>
public sealed class MassReckoningTests
{
    private const string Trailer = """ "trailer": { "mass": "2890 kg", "ball-load": "240 kg", "braked": "yes" } """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_that_says_nothing_of_masses_gets_no_answer_on_them()
    {
        MassReckoning.Of(Read(""" "vehicle": { "wheelbase": "2850 mm" } """), "xa").ShouldBeNull();
        MassReckoning.Of(Read(""" "vehicle": { "tare-axles": { "front": "1400 kg" } } """), "xa").ShouldBeNull();
        foreach (
            var said in new[]
            {
                """ "vehicle": { "tare": "2650 kg" } """,
                """ "vehicle": { "tanks": [ { "capacity": "80 L" } ] } """,
                """ "load": { "goods": [ { "mass": "10 kg" } ] } """,
                Trailer,
                """ "measured": { "weighbridge": { "trailer-axles": "2650 kg" } } """,
            }
        )
            MassReckoning.Of(Read(said), "xa").ShouldNotBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Unladen_is_tare_with_full_tanks_and_what_is_fixed_and_loaded_is_counted_where_something_travels()
    {
        // 100 L more diesel at 0.835 kg/L: 83.5 kg. A bar of 60 kg is fixed, the driver of 80 kg travels.
        var fixedOnly = Reckoned.MassesOf(
            $$""" "vehicle": { {{Wagon}} }, "modification": { "accessories": [ { "mass": "60 kg", "behind-front-axle": "-900 mm" } ] } """
        );
        fixedOnly.Unladen.TotalKg.ShouldBeExactly(2793.5m);
        fixedOnly.Loaded.ShouldBeNull();
        fixedOnly.Towing.ShouldBeNull();
        fixedOnly.TradeOff.ShouldBeEmpty();

        var driven = Reckoned.MassesOf(
            $$""" "vehicle": { {{Wagon}} }, "load": { "occupants": [ { "mass": "80 kg", "behind-front-axle": "1425 mm" } ] } """
        );
        driven.Unladen.TotalKg.ShouldBeExactly(2733.5m);
        driven.Loaded!.TotalKg.ShouldBeExactly(2813.5m);
        driven.Failing.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void The_ball_load_counts_in_the_loaded_vehicle_and_stands_behind_the_rear_axle() // common practice, no source
    {
        // 240 kg x (2850 + 1200) / 2850 = 341.05 kg on the rear, 101.05 kg off the front.
        var answer = Reckoned.MassesOf($$""" "vehicle": { {{Wagon}} }, {{Trailer}} """);
        answer.Loaded!.TotalKg.ShouldBeExactly(2973.5m);
        (answer.Loaded.Axles! - answer.Unladen.Axles!).RearKg.ShouldRead("341.05");
        (answer.Loaded.Axles! - answer.Unladen.Axles!).FrontKg.ShouldRead("-101.05");
        answer.Towing!.PlannedCombination.ShouldBe(new Combination(answer.Loaded.TotalKg, answer.Loaded.Axles, 2650, 2890, 240));
        answer.Towing.CargoLeft.ShouldBe(new CargoLeft(new Fraction(7665 - 2400, 10), new Fraction(42665 - 28900, 10)));
        answer.Towing.Weighed.ShouldBeNull();
        answer.Towing.ImpliedArmMm.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_ball_load_that_is_not_stated_is_what_the_trailers_axles_do_not_carry() =>
        Reckoned
            .MassesOf($$""" "vehicle": { {{Wagon}} }, "trailer": { "mass": "2890 kg", "axles": "2650 kg" } """)
            .Loaded!.TotalKg.ShouldBeExactly(2973.5m);

    [Fact]
    [Trait("Basis", "common practice")]
    public void A_higher_gvm_takes_from_the_trailer_what_it_gives_to_the_vehicle_because_the_gcm_stays() // common practice, no source
    {
        var answer = Reckoned.MassesOf(
            $$""" "vehicle": { {{Wagon}} }, {{Trailer}}, "modification": { "ratings": { "gvm": "3800 kg" } } """
        );
        answer
            .TradeOff[^1]
            .ShouldSatisfyAllConditions(point => point.GivenKg.ShouldBe((Fraction)3500), point => point.LeftKg.ShouldBe((Fraction)3260));
        answer
            .ReratedTradeOff[^1]
            .ShouldSatisfyAllConditions(point => point.GivenKg.ShouldBe((Fraction)3800), point => point.LeftKg.ShouldBe((Fraction)3200));
        answer.TradeOff[0].GivenKg.ShouldBeExactly(2973.5m);
        answer.Rerating!.Kg.ShouldBe((Fraction)3750); // 1650 + 2100 kg, less than the 3800 kg asked for
        answer
            .RearLoadAgainstBall[0]
            .ShouldSatisfyAllConditions(point => point.GivenKg.ShouldBe(Fraction.Zero), point => point.LeftKg.ShouldRead("791.4"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_trade_off_is_drawn_for_a_trailer_or_a_re_rating_and_only_where_the_vehicle_is_within_its_gvm()
    {
        Reckoned
            .MassesOf($$""" "vehicle": { {{Wagon}} }, "modification": { "ratings": { "gcm": "7200 kg" } } """)
            .ShouldSatisfyAllConditions(
                answer => answer.TradeOff.ShouldNotBeEmpty(),
                answer => answer.ReratedTradeOff.ShouldNotBeEmpty(),
                answer => answer.Rerating.ShouldBeNull()
            );
        Reckoned.MassesOf($$""" "vehicle": { {{Wagon}} }, {{Trailer}} """).ReratedTradeOff.ShouldBeEmpty();
        Reckoned
            .MassesOf($$""" "vehicle": { {{Wagon.Replace("\"gvm\": \"3500 kg\"", "\"gvm\": \"2900 kg\"")}} }, {{Trailer}} """)
            .TradeOff.ShouldBeEmpty();
        Reckoned.MassesOf($$""" "vehicle": { {{Wagon}} } """).RearLoadAgainstBall.ShouldBeEmpty();
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("350 kg", "300 kg", 300)]
    [InlineData("250 kg", "300 kg", 250)]
    public void The_ball_carries_the_least_of_what_the_maker_the_towbar_and_the_coupling_allow(string towbar, string coupling, int ends)
    {
        var answer = Reckoned.MassesOf(
            $$""" "vehicle": { {{Wagon}}, "towbar": { "mass": "3300 kg", "ball": "{{towbar}}" } }, "trailer": { "mass": "2890 kg","""
                + $$""" "ball-load": "240 kg", "coupling": { "ball": "{{coupling}}" } } """
        );
        answer.RearLoadAgainstBall[^1].GivenKg.ShouldBe((Fraction)ends);
        answer.Towing!.Capacity.ShouldBe(new TowRating(3500, true, "vehicle.ratings.braked-tow")); // the maker's figure, stated
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("yes", "xa", "3975")] // one and a half times 2650 kg
    [InlineData("no", "xa", "2650")]
    [InlineData("yes", "xb", "2650")]
    [InlineData("no", "xb", "1325")]
    public void Without_a_makers_figure_the_default_of_the_state_counts_by_the_trailers_brakes(string braked, string place, string limit)
    {
        // South Australia's mass and loading regulations of 1999 speak of the unloaded mass, weighed unconnected: 2566.5 kg and 83.5 kg of
        // fuel.
        var check = Reckoned
            .MassesOf(
                $$""" "vehicle": { "tare": "2566.5 kg", "tanks": [ { "capacity": "110 L", "fuel": "diesel" } ] }, "trailer": {"""
                    + $$""" "mass": "1000 kg", "braked": "{{braked}}" } """,
                place
            )
            .Towing!.Planned!.Checks.Single(each => each.What.Contains("default"));
        check.LimitKg.ShouldRead(limit);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_a_state_that_has_a_default_or_without_knowing_the_brakes_none_counts()
    {
        Checks("""{ "mass": "1000 kg", "braked": "yes" }""", "xc").ShouldBeEmpty();
        Checks("""{ "mass": "1000 kg" }""", "xa").ShouldBeEmpty();

        static IEnumerable<string> Checks(string trailer, string place) =>
            Reckoned
                .MassesOf($$""" "vehicle": { "tare": "2650 kg" }, "trailer": {{trailer}} """, place)
                .Towing!.Planned!.Checks.Select(each => each.What)
                .Where(what => what.Contains("default"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_weighed_combination_counts_before_a_planned_one_and_shows_the_arm_that_would_explain_it()
    {
        // Front 1400 to 1300, rear 1450 to 1790 kg: 240 kg on the ball, 340 kg more on the rear: (340 - 240) x 2850 / 240 = 1187.5 mm.
        const string Weighed = """
            "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg",
            "rear-hitched": "1790 kg", "trailer-axles": "2650 kg", "trailer-alone": "2890 kg" } }
            """;
        var towing = Reckoned
            .MassesOf(
                $$""" "vehicle": { {{Wagon}}, "down-rating": [ { "ball-up-to": "200 kg", "less": "0 kg" }, { "ball-up-to": "350 kg","""
                    + $$""" "less": "100 kg" } ] }, {{Trailer}}, {{Weighed}} """
            )
            .Towing!;
        towing.WeighedCombination.ShouldBe(new Combination(3090, new AxleMasses(1300, 1790), 2650, 2890, 240));
        towing.Planned.ShouldNotBeNull();
        towing.ImpliedArmMm.ShouldBeExactly(1187.5m);
        (towing.BallByTrailerKg, towing.BallByVehicleKg, towing.BallDisagreementKg).ShouldBe((240, 240, 0));
        towing.CargoLeft.ShouldBe(new CargoLeft(3500 - 2850 - 240, 7000 - 2850 - 2890));
        towing.DownRating.ShouldNotBeNull();
        Reckoned.MassesOf($$""" "vehicle": { {{Wagon}} }, {{Weighed}} """).Towing!.Planned.ShouldBeNull();
        Reckoned.MassesOf($$""" "vehicle": { {{Wagon}} }, {{Weighed}} """).Towing!.DownRating.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicle_weighed_alone_is_no_combination() =>
        Reckoned
            .MassesOf(
                $$""" "vehicle": { {{Wagon}} }, "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg" } } """
            )
            .Towing.ShouldBeNull();

    [Fact]
    [Trait("Basis", "derived")]
    public void What_fails_is_told_once_and_against_the_new_rating_where_there_is_one()
    {
        // 2733.5 kg unladen and 900 kg of goods midway: 3633.5 kg, over 3500 and within 3800 kg.
        const string Goods = """ "load": { "goods": [ { "mass": "900 kg", "behind-front-axle": "1425 mm" } ] } """;
        Reckoned
            .MassesOf($$""" "vehicle": { {{Wagon}} }, {{Goods}} """)
            .Failing.Select(each => (each.State, each.Check.What))
            .ShouldBe([("loaded", "vehicle against its GVM"), ("loaded", "front axle against its rating")]);
        Reckoned
            .MassesOf($$""" "vehicle": { {{Wagon}} }, {{Goods}}, "modification": { "ratings": { "gvm": "3800 kg" } } """)
            .Failing.Select(each => each.Check.What)
            .ShouldBe(["front axle against its rating"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_lacks_is_asked_for_once_with_all_that_it_would_add()
    {
        var missing = Reckoned.MassesOf(""" "vehicle": { "tare": "2650 kg" }, "trailer": { "mass": "2890 kg" } """).Missing;
        missing.Select(each => each.Fact).ShouldBeUnique();
        missing.Single(each => each.Fact == "trailer.ball-load").Adds.ShouldContain(";");
        missing.ShouldContain(each => each.Fact == "vehicle.tanks");
        missing.ShouldContain(each => each.Fact == "trailer.braked");
    }
}
