namespace RuleBook.Tests.Jobs.Reading;

/// <summary>
/// What is wrong in a job is told with its place, and nothing of it is guessed. Derived: what no vehicle and no job can have.
/// </summary>
public sealed class WrongJobTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ }""", "missing-key ", "missing-key ")]
    [InlineData("""{ "on": "2026-11-25" }""", "missing-key ")]
    [InlineData("""{ "registered-in": "xc", "on": "2026-11-25" }""", "unknown-jurisdiction registered-in")]
    [InlineData("""{ "registered-in": "xa", "on": "25 November" }""", "not-a-date on")]
    [InlineData("""{ "registered-in": "xa", "on": "2026-11-25", "dates": { "work": "2026-11-25" } }""", "contradiction dates")]
    [InlineData("""{ "registered-in": "xa", "dates": { "work": "2026-11-25", "certification": "2026-11-24" } }""", "contradiction dates")]
    [InlineData("""{ "registered-in": "xa", "dates": { "werk": "2026-11-25" } }""", "unknown-key dates.werk")]
    [InlineData("""{ "registered-in": "xa", "on": "2026-11-25", "colour": "white" }""", "unknown-key colour")]
    public void A_job_says_where_it_is_registered_and_one_day_or_days_in_their_order(string job, params string[] wrong) =>
        JobBook.WrongWhole(job).ShouldBe(wrong);

    [Fact]
    [Trait("Basis", "derived")]
    public void Certification_on_the_day_of_the_work_is_no_contradiction() =>
        RuleBook
            .Jobs.Reading.JobReader.Read(
                Nodes.Of("""{ "registered-in": "xa", "dates": { "work": "2026-11-25", "certification": "2026-11-25" } }"""),
                JobBook.Book
            )
            .Dates.Latest.ShouldBe(new DateOnly(2026, 11, 25));

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "vehicle": "wagon" """, "wrong-shape vehicle")]
    [InlineData(""" "vehicle": { "category": "MD" } """, "not-a-word vehicle.category")]
    [InlineData(""" "vehicle": { "stability-control": "perhaps" } """, "not-a-word vehicle.stability-control")]
    [InlineData(""" "vehicle": { "first-registered": "in 2021" } """, "not-a-date vehicle.first-registered")]
    [InlineData(""" "vehicle": { "built": "long ago" } """, "not-a-date vehicle.built")]
    [InlineData(""" "vehicle": { "seats": "0" } """, "not-a-number vehicle.seats")]
    [InlineData(""" "vehicle": { "seats": "five" } """, "not-a-number vehicle.seats")]
    [InlineData(""" "vehicle": { "tyres": [ "265/65R17", "huge" ] } """, "not-a-tyre-size vehicle.tyres[1]")]
    [InlineData(""" "vehicle": { "tyres": [ "" ] } """, "wrong-shape vehicle.tyres[0]")]
    [InlineData(""" "vehicle": { "wheelbase": "0 mm" } """, "negative vehicle.wheelbase")]
    [InlineData(""" "vehicle": { "wheelbase": "2850" } """, "not-a-quantity vehicle.wheelbase")]
    [InlineData(""" "vehicle": { "wheelbase": "2850 kg" } """, "wrong-unit vehicle.wheelbase")]
    [InlineData(""" "vehicle": { "ball-behind-rear-axle": "-1 mm" } """, "negative vehicle.ball-behind-rear-axle")]
    [InlineData(""" "vehicle": { "tare": "-1 kg" } """, "negative vehicle.tare")]
    [InlineData(
        """ "vehicle": { "tare": "2600 kg", "tare-axles": { "front": "1350 kg", "rear": "1200 kg" } } """,
        "contradiction vehicle.tare-axles"
    )]
    [InlineData(""" "vehicle": { "ratings": { "gvm": "-3000 kg" } } """, "negative vehicle.ratings.gvm")]
    [InlineData(""" "vehicle": { "ratings": { "gmc": "3000 kg" } } """, "unknown-key vehicle.ratings.gmc")]
    [InlineData(""" "vehicle": { "tanks": [ { "capacity": "0 L" } ] } """, "negative vehicle.tanks[0].capacity")]
    [InlineData(""" "vehicle": { "tanks": [ { "fuel": "diessel" } ] } """, "unknown-fuel vehicle.tanks[0].fuel")]
    [InlineData(""" "vehicle": { "tanks": [ { "colour": "red" } ] } """, "unknown-key vehicle.tanks[0].colour")]
    [InlineData(""" "vehicle": { "down-rating": [ { "less": "100 kg" } ] } """, "missing-key vehicle.down-rating[0]")]
    [InlineData(""" "vehicle": { "down-rating": [ { "ball-up-to": "100 kg" } ] } """, "missing-key vehicle.down-rating[0]")]
    [InlineData(
        """ "vehicle": { "down-rating": [ { "ball-up-to": "1 kg", "less": "1 kg", "more": "1 kg" } ] } """,
        "unknown-key vehicle.down-rating[0].more"
    )]
    [InlineData(
        """ "vehicle": { "speedometer": { "indicated": "0 km/h", "true": "95 km/h" } } """,
        "negative vehicle.speedometer.indicated"
    )]
    [InlineData(""" "vehicle": { "towbar": { "maas": "3000 kg" } } """, "unknown-key vehicle.towbar.maas")]
    [InlineData(""" "vehicle": { "trim-height": { "front-left": "0 mm" } } """, "negative vehicle.trim-height.front-left")]
    [InlineData(""" "vehicle": { "colour": "white" } """, "unknown-key vehicle.colour")]
    public void Of_the_vehicle_each_mistake_is_told_at_its_place(string more, params string[] wrong) => JobBook.Wrong(more).ShouldBe(wrong);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "modification": { "body-lift": "-1 mm" } """, "negative modification.body-lift")]
    [InlineData(""" "modification": { "body-lift": "10 kg" } """, "wrong-unit modification.body-lift")]
    [InlineData(""" "modification": { "tyre-diameter-growth-percent": "7 %" } """, "unknown-key modification.tyre-diameter-growth-percent")]
    [InlineData(""" "modification": { "accessories": [ { "maas": "1 kg" } ] } """, "unknown-key modification.accessories[0].maas")]
    [InlineData(""" "modification": { "springs": { "middle": { } } } """, "unknown-key modification.springs.middle")]
    [InlineData(
        """ "modification": { "springs": { "rear": { "wheel-rate": "0 N/mm" } } } """,
        "negative modification.springs.rear.wheel-rate"
    )]
    [InlineData(""" "modification": { "springs": { "rear": { "colour": "blue" } } } """, "unknown-key modification.springs.rear.colour")]
    [InlineData(
        """ "modification": { "springs": { "rear": { "at-axle-load": "1350 kg", "unsprung-mass": "150 kg" } } } """,
        "contradiction modification.springs.rear"
    )]
    [InlineData(""" "modification": { "lift": "50 mm" } """, "unknown-key modification.lift")]
    [InlineData(""" "load": { "occupants": [ { "mass": "-80 kg" } ] } """, "negative load.occupants[0].mass")]
    [InlineData(""" "load": { "passengers": [ ] } """, "unknown-key load.passengers")]
    [InlineData(
        """ "vehicle": { "seats": 1 }, "load": { "occupants": [ { "mass": "80 kg" }, { "mass": "70 kg" } ] } """,
        "contradiction load"
    )]
    [InlineData(""" "trailer": { "mass": "2890 kg", "axles": "2650 kg", "ball-load": "200 kg" } """, "contradiction trailer")]
    [InlineData(""" "trailer": { "brakes": "yes" } """, "unknown-key trailer.brakes")]
    [InlineData(""" "trailer": { "ratings": { "amt": "3000 kg" } } """, "unknown-key trailer.ratings.amt")]
    [InlineData(""" "measured": { "after": { "front-left": "500 mm" } } """, "missing-key measured.after")]
    [InlineData(""" "measured": { "after": { "mass-state": "empty" } } """, "not-a-word measured.after.mass-state")]
    [InlineData(""" "measured": { "weighbridge": { "front": "1400 kg" } } """, "unknown-key measured.weighbridge.front")]
    [InlineData(""" "measured": { "weighbridge": { "trailer-axles": "-1 kg" } } """, "negative measured.weighbridge.trailer-axles")]
    [InlineData(
        """ "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg","""
            + """ "rear-hitched": "1790 kg", "trailer-axles": "2650 kg", "trailer-alone": "2951 kg" } } """,
        "contradiction measured.weighbridge"
    )]
    [InlineData(
        """ "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "mass": "2860 kg", "mass-state":"""
            + """ "tare" } } """,
        "contradiction measured.weighbridge"
    )]
    [InlineData(""" "measured": { "uncertainty": { "suspension-lft": "5 mm" } } """, "unknown-key measured.uncertainty.suspension-lft")]
    [InlineData(""" "measured": { "uncertainty": { "suspension-lift": "-5 mm" } } """, "negative measured.uncertainty.suspension-lift")]
    [InlineData(""" "measured": { "axle-load-difference": { "left": "5 kg" } } """, "unknown-key measured.axle-load-difference.left")]
    [InlineData(""" "measured": { "height": "5 mm" } """, "unknown-key measured.height")]
    [InlineData(""" "certifier": { "licence": "1" } """, "unknown-key certifier.licence")]
    [InlineData(""" "travels-through": [ "xb", "xc" ] """, "unknown-jurisdiction travels-through[1]")]
    [InlineData(""" "shown": { "lane-change": "yes" } """, "unknown-condition shown.lane-change")]
    [InlineData(""" "shown": { "lane-change-test": "maybe" } """, "not-a-word shown.lane-change-test")]
    public void Of_the_work_the_load_the_trailer_and_what_was_measured_each_mistake_is_told_at_its_place(
        string more,
        params string[] wrong
    ) => JobBook.Wrong(more).ShouldBe(wrong);

    [Fact]
    [Trait("Basis", "derived")]
    public void Sixty_kilograms_are_within_six_readings_of_ten() =>
        JobBook
            .Read(
                """
                "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg",
                "rear-hitched": "1790 kg", "trailer-axles": "2650 kg", "trailer-alone": "2950 kg" } }
                """
            )
            .Plan.WeighedToleranceKg.ShouldBe((Fractions.Fraction)60);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("28 mm", true)] // handbook: 804 - 776 mm
    [InlineData("26.5 mm", true)] // nominal, not rounded: 2 x (185.5 - 172.25) mm
    [InlineData("27 mm", false)]
    public void A_growth_that_is_stated_agrees_with_the_sizes_on_some_basis(string growth, bool agrees)
    {
        var more =
            $$""" "vehicle": { "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17", "tyre-diameter-growth":"""
            + $$""" "{{growth}}" } """;
        if (agrees)
            JobBook.Read(more).Measures.ShouldHaveSingleItem();
        else
            JobBook.Wrong(more).ShouldBe(["contradiction modification.tyre-diameter-growth"]);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("50 mm", true)]
    [InlineData("45 mm", false)]
    public void A_lift_that_is_stated_agrees_with_the_corners_that_were_measured(string lift, bool agrees)
    {
        const string Corners = """ "front-left": "480 mm", "front-right": "480 mm", "rear-left": "520 mm", "rear-right": "520 mm" """;
        const string After = """ "front-left": "520 mm", "front-right": "520 mm", "rear-left": "570 mm", "rear-right": "570 mm" """;
        var more =
            $$""" "modification": { "suspension-lift": "{{lift}}" }, "measured": { "before": { "mass-state": "unladen", {{Corners}}"""
            + $$""" }, "after": { "mass-state": "unladen", {{After}} } } """;
        if (agrees)
            JobBook.Read(more).Plan.TellsLift.ShouldBeTrue();
        else
            JobBook.Wrong(more).ShouldBe(["contradiction modification.suspension-lift"]);
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("yes", "yes")]
    [InlineData("no", null)]
    public void A_condition_that_the_load_indices_decide_cannot_be_said_otherwise(string said, string? holds)
    {
        // UN Regulation 54, Annex 4, by the charts that agree: 115 = 1215 kg carries more than 112 = 1120 kg.
        var more =
            $$""" "vehicle": { "tyres": [ "265/65R17 112S" ] }, "modification": { "tyres": "265/70R17 115S" }, "shown": {"""
            + $$""" "tyre-load-rating-kept": "{{said}}" } """;
        if (holds is not null)
            JobBook.Read(more).Shown["tyre-load-rating-kept"].ShouldBeTrue();
        else
            JobBook.Wrong(more).ShouldBe(["contradiction shown.tyre-load-rating-kept"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void All_mistakes_are_told_at_once_in_the_order_of_their_places() =>
        JobBook
            .Wrong(""" "vehicle": { "wheelbase": "0 mm", "seats": "x" }, "colour": "white" """)
            .ShouldBe(["unknown-key colour", "not-a-number vehicle.seats", "negative vehicle.wheelbase"]);
}
