using RuleBook.Authoring.Tests.Books;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>What a job says of masses, carried into its answer. The vehicles are invented.</summary>
public sealed class MassScenarioTests
{
    [Fact]
    public void A_gvm_re_rated_to_four_tonnes_under_a_gcm_of_seven_leaves_three_for_the_trailer()
    {
        // Common practice, no source: vehicle 3.5 t and trailer 3.5 t under a GCM of 7.0 t; loaded to 4.0 t it leaves 3.0 t.
        var masses = Masses(
            "tare: 3000 kg, ratings: { gvm: 3500 kg, gcm: 7000 kg, braked-tow: 3500 kg }, tanks: [ { capacity: 10 L, fuel: diesel } ]",
            modification: "ratings: { gvm: 4000 kg }"
        );
        masses.TradeOff[^1].ShouldSatisfyAllConditions(end => end.GivenKg.ShouldBe(3500), end => end.LeftKg.ShouldBe(3500));
        masses.ReratedTradeOff[^1].ShouldSatisfyAllConditions(end => end.GivenKg.ShouldBe(4000), end => end.LeftKg.ShouldBe(3000));
        masses.ReratedTradeOff[^1].Binding.ShouldBe([TradeOff.Gcm, TradeOff.Gvm]);
    }

    [Fact]
    public void Hitched_axles_that_read_the_gvm_are_within_it_and_the_ball_load_counts_once()
    {
        // Common practice, no source: GVM 3.5 t, 300 kg on the ball, the vehicle's own axles read 3.5 t while hitched.
        var towing = Masses(
            "ratings: { gvm: 3500 kg, gcm: 6700 kg, braked-tow: 3500 kg, ball: 300 kg }",
            trailer: "{ braked: yes, ratings: { atm: 3500 kg, gtm: 3200 kg } }",
            measured: "weighbridge: { front-alone: 1550 kg, rear-alone: 1650 kg, front-hitched: 1450 kg, rear-hitched: 2050 kg, "
                + "trailer-axles: 3200 kg, trailer-alone: 3500 kg }"
        )
            .Towing.ShouldNotBeNull();
        var weighed = towing.Weighed.ShouldNotBeNull();
        weighed.Holds.ShouldBeTrue();
        Named(weighed, "vehicle against its GVM").MarginKg.IsZero.ShouldBeTrue();
        Named(weighed, "vehicle and trailer axles against GCM").ValueKg.ShouldBe(6700);
        Named(weighed, "ball load against the vehicle maker's limit").ValueKg.ShouldBe(300);
        Named(weighed, "trailer alone against the tow rating").ValueKg.ShouldBe(3500);
    }

    [Theory]
    [InlineData(250, 0)]
    [InlineData(300, 100)]
    [InlineData(350, 200)]
    public void A_makers_down_rating_is_advice_beside_the_verdict(int ball, int less)
    {
        // Common practice, no source: beyond 250 kg on the ball each further 50 kg takes 100 kg out of the vehicle.
        var answer = RealBook.Assess(
            $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle:
              category: MC
              tare: 2900 kg
              ratings: { gvm: 3500 kg }
              tanks: [ { capacity: 10 L, fuel: diesel } ]
              down-rating: [ { ball-up-to: 250 kg, less: 0 kg }, { ball-up-to: 300 kg, less: 100 kg }, { ball-up-to: 350 kg,
                less: 200 kg } ]
            trailer: { mass: 3000 kg, ball-load: {{ball}} kg }
            """
        );
        answer.Masses!.Towing!.DownRating.ShouldNotBeNull().LessKg.ShouldBe(less);
        answer.Masses.Towing.Planned!.Checks.ShouldAllBe(check => check.LimitFact != "vehicle.down-rating");
        answer.Verdict.ShouldBeNull(); // nothing is changed on the vehicle: no pathway is told
    }

    [Fact]
    public void Fifty_kilograms_on_the_ball_put_more_than_fifty_on_the_rear_axle_because_the_ball_stands_behind_it()
    {
        // Common practice, no source, for the sign; derived: 50 (1 + 1200 / 3000) = 70 kg, and 20 kg off the front.
        var loaded = Masses(
            "tare: 2000 kg, tare-axles: { front: 1100 kg, rear: 900 kg }, wheelbase: 3000 mm, ball-behind-rear-axle: 1200 mm, "
                + "tanks: [ { capacity: 10 L, fuel: diesel } ]",
            trailer: "{ mass: 700 kg, ball-load: 50 kg }"
        )
            .Loaded.ShouldNotBeNull();
        var ball = loaded.Lines.Single(line => line.Item == "ball load").Axles.ShouldNotBeNull();
        ball.RearKg.ShouldBe(70);
        ball.FrontKg.ShouldBe(-20);
    }

    [Fact]
    public void A_wagon_with_the_usual_touring_accessories_reaches_its_gvm_before_its_occupants_are_counted()
    {
        // Common practice, no source: a large wagon of 3.5 t GVM.
        var answer = RealBook.Assess(File.ReadAllText(Path.Combine(RealBook.Root, "examples", "wagon-touring.yaml")));
        var masses = answer.Masses.ShouldNotBeNull();
        masses.Unladen.Left.Single(check => check.What == "vehicle against its GVM").Holds.ShouldBeFalse();
        masses.Failing.First().State.ShouldBe("unladen");
        answer.Verdict.ShouldBe(Pathway.NoCertificate); // a load changes no pathway
    }

    [Fact]
    public void The_axles_of_the_worked_example_follow_from_the_places_of_its_accessories()
    {
        // Derived, by the moment balance of truck makers' body-builder manuals: F 1319.74, R 1775.26 kg, 3095 kg in all.
        var loaded = Masses(
            "wheelbase: 2850 mm, tare: 2600 kg, tare-axles: { front: 1350 kg, rear: 1250 kg }, tanks: [ { capacity: 10 L, fuel: "
                + "diesel } ], ball-behind-rear-axle: 1200 mm",
            modification: """
            accessories: [ { name: bull bar, mass: 60 kg, behind-front-axle: -900 mm }, { name: rear bar, mass: 90 kg,
              behind-front-axle: 3750 mm },
              { name: roof rack, mass: 75 kg, behind-front-axle: 1600 mm } ]
            """,
            trailer: "{ ball-load: 270 kg }"
        )
            .Loaded.ShouldNotBeNull();
        loaded.TotalKg.ShouldBe(3095);
        Units.Numbers.Show(loaded.Axles!.FrontKg, 2).ShouldBe("1319.74");
        Units.Numbers.Show(loaded.Axles.RearKg, 2).ShouldBe("1775.26");
    }

    [Fact]
    public void Where_the_maker_gives_no_figure_South_Australia_allows_one_and_a_half_times_the_unloaded_mass()
    {
        // Road Traffic (Mass and Loading Requirements) Regulations 1999 (South Australia), Schedule 2, clause 2.
        const string Vehicle = "tare: 2000 kg, tanks: [ { capacity: 10 L, fuel: diesel } ]";
        Tow(Masses(Vehicle, trailer: "{ mass: 3000 kg, ball-load: 200 kg, braked: yes }", place: "au-sa"))
            .ShouldSatisfyAllConditions(check => check.LimitKg.ShouldBe(3000), check => check.Holds.ShouldBeTrue());
        Tow(Masses(Vehicle, trailer: "{ mass: 2001 kg, ball-load: 200 kg, braked: no }", place: "au-sa"))
            .ShouldSatisfyAllConditions(check => check.LimitKg.ShouldBe(2000), check => check.Holds.ShouldBeFalse());

        static LoadCheck Tow(MassAnswer masses) =>
            Named(masses.Towing!.Planned!, "trailer alone against the default by the vehicle's own mass");
    }

    [Fact]
    public void A_budget_may_start_from_the_weighbridge_instead_of_tare()
    {
        // Derived: weighed loaded at 3100 kg, less a driver of 80 kg, is 3020 kg unladen.
        var masses = RealBook
            .Assess(
                """
                registered-in: au-qld
                on: 2026-11-20
                vehicle: { category: MC, tare: 2000 kg }
                load: { occupants: [ { name: driver, mass: 80 kg } ] }
                measured: { weighbridge: { mass-state: loaded, front-alone: 1500 kg, rear-alone: 1600 kg } }
                """
            )
            .Masses.ShouldNotBeNull();
        masses.Unladen.TotalKg.ShouldBe(3020);
        masses.Loaded!.TotalKg.ShouldBe(3100);
    }

    private static LoadCheck Named(CombinationCheck check, string what) => check.Checks.Single(each => each.What == what);

    private static MassAnswer Masses(
        string vehicle,
        string modification = "",
        string trailer = "",
        string measured = "",
        string place = "au-qld"
    ) =>
        RealBook
            .Assess(
                $$"""
                registered-in: {{place}}
                on: 2026-11-20
                vehicle: { category: MC, {{vehicle}} }
                modification: { {{modification}} }
                measured: { {{measured}} }
                {{(trailer.Length > 0 ? $"trailer: {trailer}" : "")}}
                """
            )
            .Masses.ShouldNotBeNull();
}
