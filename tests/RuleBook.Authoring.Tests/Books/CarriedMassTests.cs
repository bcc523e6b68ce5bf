using Fractions;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// The trade's own scenarios carried by a job, on invented vehicles. Where nothing else is said: common practice, no source.
/// </summary>
public sealed class CarriedMassTests
{
    private const string DualCab = """
        registered-in: au-qld
        on: 2026-11-20
        vehicle:
          category: NA
          four-wheel-drive: yes
          wheelbase: 3000 mm
          ball-behind-rear-axle: 1500 mm
          tare: 2100 kg
          tare-axles: { front: 1200 kg, rear: 900 kg }
          ratings: { gvm: 3500 kg, gcm: 7000 kg, front-axle: 1700 kg, rear-axle: 2300 kg, braked-tow: 3500 kg, ball: 350 kg }
          tanks: [ { name: main, capacity: 80 L, fuel: diesel, behind-front-axle: 1500 mm } ]
          down-rating: [ { ball-up-to: 250 kg, less: 0 kg }, { ball-up-to: 300 kg, less: 100 kg }, { ball-up-to: 350 kg, less: 200 kg } ]
        """;

    [Fact]
    public void Constant_load_springs_on_a_vehicle_of_standard_mass_raise_it_beyond_the_limit()
    {
        // Springs meant to give 50 mm with 350 kg of constant load, measured without it: about 75 mm.
        var answer = RealBook.Assess(
            DualCab
                + """

                modification:
                  springs: { rear: { wheel-rate: 68.64655 N/mm, height-gained: 50 mm, at-axle-load: 1279.225 kg } }
                """
        );
        var rear = answer.Heights.ShouldNotBeNull().Predicted.ShouldHaveSingleItem();
        rear.Lift.LiftMm.ShouldBe(new Fraction(75)); // derived: 14 kg/mm, and 350 kg less than the springs are rated for
        rear.Needs.First(need => need.Pathway == Pathway.NoCertificate).OnAxleKg.ShouldBe(new Fraction(350));

        // 75 mm of suspension is the certified limit in Queensland since 26 October 2018: predicted within 10 mm it is beyond the free 50
        // mm, and only measuring tells whether it can be certified.
        answer.Between.Best.ShouldBe(Pathway.Certificate);
        answer.Verdict.ShouldBeNull();
        answer.Undecided.ShouldContain(effect => effect.Opening.Name == "measured.after");
    }

    [Fact]
    public void A_re_rated_gvm_takes_from_the_trailer_what_it_gives_to_the_vehicle()
    {
        var masses = Loaded("ratings: { gvm: 4000 kg }", "1000 kg").Masses.ShouldNotBeNull();
        masses.ReratedTradeOff[^1].GivenKg.ShouldBe(new Fraction(4000));
        masses.ReratedTradeOff[^1].LeftKg.ShouldBe(new Fraction(3000)); // 7.0 t less 4.0 t
        masses.TradeOff[^1].LeftKg.ShouldBe(new Fraction(3200)); // 3.5 t by GCM, less where the tow rating counts the ball load of 300 kg
    }

    [Fact]
    public void The_ball_load_counts_once_in_the_vehicle_and_not_again_in_the_combination()
    {
        var planned = Loaded("suspension-lift: 0 mm", "1000 kg")
            .Masses.ShouldNotBeNull()
            .Towing.ShouldNotBeNull()
            .PlannedCombination.ShouldNotBeNull();
        planned.TotalKg.ShouldBe(planned.VehicleKg + planned.TrailerAxlesKg);
        (planned.TrailerAxlesKg + planned.BallKg).ShouldBe(planned.TrailerAloneKg);
    }

    [Theory]
    [InlineData("250 kg", 0)]
    [InlineData("300 kg", 100)]
    [InlineData("350 kg", 200)]
    public void A_maker_s_table_takes_mass_out_of_the_vehicle_as_the_ball_load_grows(string ball, int less) =>
        RealBook
            .Assess(
                $$"""
                {{DualCab}}
                trailer: { mass: 3000 kg, ball-load: {{ball}}, braked: yes }
                """
            )
            .Masses.ShouldNotBeNull()
            .Towing.ShouldNotBeNull()
            .DownRating.ShouldNotBeNull()
            .LessKg.ShouldBe(new Fraction(less));

    [Fact]
    public void Three_hundred_kilograms_on_the_ball_put_450_on_the_rear_axle_and_take_150_off_the_front()
    {
        // A four-wheel-drive site's rule of thumb, exact where the ball stands half a wheelbase behind the axle (derived).
        var loaded = Loaded("suspension-lift: 0 mm", "0 kg").Masses.ShouldNotBeNull().Loaded.ShouldNotBeNull();
        var ball = loaded.Lines.Single(line => line.Item == "ball load").Axles.ShouldNotBeNull();
        ball.RearKg.ShouldBe(new Fraction(450));
        ball.FrontKg.ShouldBe(new Fraction(-150));
    }

    [Fact]
    public void A_large_wagon_with_touring_accessories_reaches_its_gvm_before_its_occupants_are_counted()
    {
        var wagon = RealBook
            .Assess(File.ReadAllText(Path.Combine(RealBook.Root, "examples", "wagon-touring.yaml")))
            .Masses.ShouldNotBeNull();
        wagon.Failing.ShouldContain(each => each.State == "unladen" && each.Check.What.Contains("GVM", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("          wheelbase: 3000 mm\n", "vehicle.wheelbase")]
    [InlineData("          tare: 2100 kg\n          tare-axles: { front: 1200 kg, rear: 900 kg }\n", "vehicle.tare")]
    [InlineData("gvm: 3500 kg, ", "vehicle.ratings.gvm")]
    public void A_missing_fact_leaves_the_rest_answered_and_is_named(string left, string fact)
    {
        var text = DualCab.ReplaceLineEndings("\n");
        var shorter = text.Replace(left.Replace("          ", "  ", StringComparison.Ordinal), "", StringComparison.Ordinal);
        shorter.Length.ShouldBeLessThan(text.Length);
        var answer = RealBook.Assess(
            shorter
                + "\nmodification: { suspension-lift: 45 mm, accessories: [ { name: bull bar, mass: 60 kg, behind-front-axle: -900 "
                + "mm } ] }\n"
        );
        answer.Verdict.ShouldBe(Pathway.NoCertificate);
        answer.Masses.ShouldNotBeNull().Missing.ShouldContain(missing => missing.Fact == fact && missing.Adds.Length > 0);
    }

    private static Assessment Loaded(string modification, string goods) =>
        RealBook.Assess(
            $$"""
            {{DualCab}}
            modification: { {{modification}} }
            load: { goods: [ { name: load, mass: {{goods}}, behind-front-axle: 2000 mm } ] }
            trailer: { mass: 3000 kg, ball-load: 300 kg, braked: yes }
            """
        );
}
