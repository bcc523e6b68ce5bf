using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Figures.Reckoned;

namespace RuleBook.Tests.Figures;

/// <summary>
/// Tyres of a job on an axle, on the road and at speed. Load indices by UN Regulation 54, Annex 4 (charts that agree): 112 = 1120 kg,
/// 115 = 1215 kg, 116 = 1250 kg. Handbook diameters: 265/65R17 776 mm, 265/70R17 804 mm. The rest is derived.
/// </summary>
public sealed class TyreReckoningTests
{
    private const string Larger = """ "modification": { "tyres": "265/70R17 115S" } """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_without_tyres_gets_no_answer_on_them_and_one_with_a_placard_alone_no_growth()
    {
        Assess(""" "vehicle": { "wheelbase": "2850 mm" } """).Tyres.ShouldBeNull();
        var placard = TyresOf(""" "vehicle": { "tyres": [ "265/65R17 112S" ] } """);
        placard.Growth.ShouldBeNull();
        placard.Speedometer.ShouldBeNull();
        placard.Capacity.ShouldBe(TyreCapacity.Of(Read(""" "vehicle": { "tyres": [ "265/65R17 112S" ] } """)));
        placard.Capacity.Front.Amount.ShouldBe((Fraction)2240);
        placard.Capacity.Fact.ShouldBe("vehicle.tyres");
        placard.Missing.Select(missing => missing.Fact).ShouldBe(["vehicle.ratings.front-axle", "vehicle.ratings.rear-axle"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_several_placard_sizes_the_one_that_carries_least_counts_and_an_unmarked_one_leaves_it_open()
    {
        TyresOf(""" "vehicle": { "tyres": [ "265/65R17 115S", "245/75R16 112S" ] } """).Capacity.Front.Amount.ShouldBe((Fraction)2240);
        TyresOf(""" "vehicle": { "tyres": [ "265/65R17 115S", "245/75R16" ] } """).Capacity.Front.Amount.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_rated_axles_are_held_against_what_two_tyres_carry_and_the_index_that_they_need_is_named()
    {
        var tyres = TyresOf($$""" "vehicle": { {{Wagon}}, "tyres": [ "265/65R17 112S" ] }, {{Larger}} """);
        tyres
            .Loads.Select(load => (load.ValueKg, load.LimitKg, load.LimitFact))
            .ShouldBe([(1650, 2430, "modification.tyres"), (2100, 2430, "modification.tyres")]);
        tyres.Needs.ShouldBe([
            new LoadIndexNeed(Axle.Front, 1650, 2, new LoadIndex(101)), // 825 kg a tyre: 101 = 825 kg
            new LoadIndexNeed(Axle.Rear, 2100, 2, new LoadIndex(110)), // 1050 kg a tyre: 110 = 1060 kg
        ]);
        tyres.Missing.Select(missing => missing.Fact).ShouldBe(["vehicle.built", "vehicle.speedometer"]);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void Dual_rear_wheels_are_four_tyres_at_the_second_index()
    {
        var tyres = TyresOf(
            $$""" "vehicle": { {{Wagon}}, "dual-rear-wheels": "yes" }, "modification": { "tyres": "LT285/75R16 126/123Q" } """
        );
        tyres.Capacity.Front.Amount.ShouldBe((Fraction)(2 * 1700)); // 126 = 1700 kg
        tyres.Capacity.Rear.Amount.ShouldBe((Fraction)(4 * 1550)); // 123 = 1550 kg
        tyres.Needs[1].ShouldBe(new LoadIndexNeed(Axle.Rear, 2100, 4, new LoadIndex(86))); // 525 kg a tyre: 86 = 530 kg, 85 = 515
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void New_tyres_without_a_placard_or_an_index_name_what_lacks() =>
        TyresOf(""" "modification": { "tyres": "265/70R17" } """)
            .Missing.Select(missing => missing.Fact)
            .ShouldBe([
                "vehicle.tyres",
                "modification.tyres",
                "vehicle.ratings.front-axle",
                "vehicle.ratings.rear-axle",
                "vehicle.built",
                "vehicle.speedometer",
            ]);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("MC", true)] // S = 180 km/h, at least 140
    [InlineData("NA", true)]
    public void A_speed_symbol_is_held_against_the_speed_for_the_category(string category, bool enough)
    {
        var check = TyresOf($$""" "vehicle": { "category": "{{category}}" }, {{Larger}} """).Speeds.ShouldHaveSingleItem();
        check.LeastKmH.ShouldBe((Fraction)(category == "MC" ? 140 : 120));
        check.Enough.ShouldBe(enough);
        check.Symbol.Symbol.ShouldBe("S");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_slow_tyre_is_not_enough_and_without_symbol_or_category_nothing_is_said()
    {
        TyresOf(""" "vehicle": { "category": "MC" }, "modification": { "tyres": "265/70R17 115M" } """)
            .Speeds.ShouldHaveSingleItem()
            .Enough.ShouldBe(false); // M = 130 km/h
        TyresOf(""" "vehicle": { "category": "MC" }, "modification": { "tyres": "265/70R17" } """).Speeds.ShouldBeEmpty();
        TyresOf(Larger).Speeds.ShouldBeEmpty();
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2006-06-30", "old", SpeedometerFinding.Within)] // 100 shown, 103.6 true, at least 90 % of it
    [InlineData("2006-07-01", "new", SpeedometerFinding.ReadsLow)] // never below the true speed
    public void The_speedometer_falls_under_the_rule_of_the_day_on_which_the_vehicle_was_built(
        string built,
        string rule,
        SpeedometerFinding finding
    )
    {
        var answer = TyresOf($$""" "vehicle": { "built": "{{built}}", "tyres": [ "265/65R17" ] }, {{Larger}} """).Speedometer!;
        answer.Assumed.ShouldBeTrue();
        (answer.Indicated, answer.TrueBefore).ShouldBe((100, 100));
        answer.TrueAfter.Amount.ShouldBe(new Fraction(80400, 776));
        var check = answer.Findings.ShouldHaveSingleItem();
        check.Rule.Name.ShouldBe(rule);
        check.Finding.ShouldBe(finding);
        check.LargestGrowthPercent.ShouldBe(rule == "new" ? Fraction.Zero : new Fraction(100, 9)); // 100 / 0.9 - 100
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_speedometer_that_was_read_starts_from_its_reading_and_one_of_unknown_age_falls_under_no_rule()
    {
        // Shown 100, true 95 km/h before; 95 x 804 / 776 = 98.43 km/h after: still not below what is shown.
        var answer = TyresOf(
            $$""" "vehicle": { "built": "2020", "tyres": [ "265/65R17" ], "speedometer": { "indicated": "100 km/h", "true": "95"""
                + $$""" km/h" } }, {{Larger}} """
        );
        answer.Speedometer!.Assumed.ShouldBeFalse();
        answer.Speedometer.TrueAfter.Amount.ShouldRead("98.43");
        answer.Speedometer.Findings.ShouldHaveSingleItem().Finding.ShouldBe(SpeedometerFinding.Within);
        answer.Missing.ShouldNotContain(missing => missing.Fact == "vehicle.speedometer" || missing.Fact == "vehicle.built");
        TyresOf($$""" "vehicle": { "tyres": [ "265/65R17" ] }, {{Larger}} """).Speedometer!.Findings.ShouldBeEmpty();
        TyresOf(Larger).Speedometer.ShouldBeNull(); // no placard to compare with
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Clearance_midway_is_a_share_of_the_wheelbase_and_running_clearance_a_figure()
    {
        var road = TyresOf(
            """ "vehicle": { "wheelbase": "3000 mm" }, "measured": { "clearance-midway": "99 mm" }, "modification": { "tyres":"""
                + """ "265/70R17" } """
        ).Road;
        road.LeastMidwayMm.ShouldBe((Fraction)100);
        road.Midway!.Holds.ShouldBeFalse();
        road.Midway.MarginMm.ShouldBe((Fraction)(-1));
        road.Running.ShouldBeNull();
        TyresOf(""" "measured": { "clearance-midway": "99 mm" }, "modification": { "tyres": "265/70R17" } """)
            .Road.ShouldSatisfyAllConditions(each => each.LeastMidwayMm.ShouldBeNull(), each => each.Midway.ShouldBeNull());
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_static_stability_factor_falls_by_what_suspension_tyre_and_body_raise_and_rises_with_the_track()
    {
        // SSF = T / 2h (NHTSA): 1600 / 1440; with 40 + 14 + 26 = 80 mm more height and 40 mm more track 1640 / 1600.
        const string Vehicle = """ "vehicle": { "track": "1600 mm", "centre-of-mass": "720 mm", "tyres": [ "265/65R17" ] }""";
        var road = TyresOf(
            $$""" {{Vehicle}}, "modification": { "tyres": "265/70R17", "suspension-lift": "40 mm", "body-lift": "26 mm","""
                + $$""" "track-increase": "40 mm" } """
        ).Road;
        road.StabilityBefore.ShouldBe(new Fraction(1600, 1440));
        road.StabilityAfter.ShouldBe(new Fraction(1640, 1600));

        TyresOf($$""" {{Vehicle}}, "modification": { "tyre-diameter-growth": "20 mm" } """)
            .Road.StabilityAfter.ShouldBe(new Fraction(1600, 1460));
        TyresOf($$""" {{Vehicle}} """).Road.StabilityAfter.ShouldBe(new Fraction(1600, 1440));
        TyresOf($$""" {{Vehicle}}, "modification": { "springs": {""" + $$""" "front": { }""" + $$""" } } """)
            .Road.StabilityAfter.ShouldBeNull(); // how far it rises is not known
        TyresOf(""" "vehicle": { "track": "1600 mm", "tyres": [ "265/65R17" ] } """).Road.StabilityBefore.ShouldBeNull();
    }

    [Theory]
    [InlineData("\"suspension-lift\": \"unknown\"")]
    [InlineData("\"body-lift\": \"unknown\"")]
    [InlineData("\"tyre-diameter-growth\": \"unknown\"")]
    [InlineData("\"track-increase\": \"unknown\"")]
    [Trait("Basis", "derived")]
    public void What_raises_or_widens_by_an_amount_that_is_not_known_leaves_the_static_stability_factor_open(string change) =>
        TyresOf($$""" "vehicle": { "track": "1600 mm", "centre-of-mass": "720 mm" }, "modification": { {{change}} } """)
            .Road.StabilityAfter.ShouldBeNull();
}
