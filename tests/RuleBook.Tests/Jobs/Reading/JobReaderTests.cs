using Fractions;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Tests.Jobs.Reading;

/// <summary>A job is read as it is written: every figure in its place, in base units. Derived: what the keys say.</summary>
public sealed class JobReaderTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_needs_a_place_and_a_day_and_nothing_more()
    {
        var job = JobBook.Read();
        job.RegisteredIn.ShouldBe("xa");
        job.Dates.ShouldBe(JobDates.On(new DateOnly(2026, 11, 25)));
        job.Name.ShouldBeNull();
        job.Measures.ShouldBeEmpty();
        job.Words.ShouldBeEmpty();
        job.PlacardTyres.ShouldBeEmpty();
        job.NotYetRegistered.ShouldBeFalse();
        job.CertifierAppointedIn.ShouldBeNull();
        job.Plan.TellsLift.ShouldBeFalse();
        job.Plan.Trailer.ShouldBeNull();
        job.Plan.Weighed.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_said_of_the_vehicle_is_read()
    {
        var job = JobBook.Read(
            """
            "job": "W-1", "vehicle": { "category": "MC", "stability-control": true, "first-registered": "2021-03-15", "built": "2019-03",
            "seats": "5",
            "tyres": [ "265/65R17 112S", "245/75R16" ], "wheelbase": "2.8 m", "ball-behind-rear-axle": "1200 mm", "track": "1600 mm",
            "centre-of-mass": "720 mm",
            "dual-rear-wheels": "yes", "speedometer": { "indicated": "100 km/h", "true": "95 km/h" },
            "down-rating": [ { "ball-up-to": "135 kg", "less": "0 kg" }, { "ball-up-to": "300 kg", "less": "100 kg" } ] }
            """
        );
        job.Name.ShouldBe("W-1");
        job.Words.OrderBy(pair => pair.Key).Select(pair => $"{pair.Key} {pair.Value}").ShouldBe(["category MC", "stability-control yes"]);
        job.FirstRegistered.ShouldBe(PartialDate.Of(new DateOnly(2021, 3, 15)));
        // Known to the month: some day of it.
        job.Built.ShouldBe(new PartialDate("2019-03", new DateOnly(2019, 3, 1), new DateOnly(2019, 3, 31)));
        job.PlacardTyres.Select(size => size.Designation).ShouldBe(["265/65R17", "245/75R16"]);
        job.Plan.Seats.ShouldBe(5);
        job.Plan.WheelbaseMm.ShouldBe((Fraction)2800);
        job.Plan.BallBehindRearAxleMm.ShouldBe((Fraction)1200);
        job.Plan.TrackMm.ShouldBe((Fraction)1600);
        job.Plan.CentreOfMassMm.ShouldBe((Fraction)720);
        job.Plan.DualRearWheels.ShouldBeTrue();
        job.Plan.Speedometer.ShouldBe(new SpeedometerReading(100, 95));
        job.Plan.DownRating.ShouldBe([new DownRatingRow(135, 0), new DownRatingRow(300, 100)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Masses_start_from_tare_with_its_fuel_and_ratings_before_and_after_are_kept_apart()
    {
        var plan = JobBook
            .Read(
                """
                "vehicle": { "tare": "2.24 t", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" },
                  "ratings": { "gvm": "3000 kg", "gcm": "6000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg", "braked-tow": "3000 kg",
                  "unbraked-tow": "750 kg", "ball": "300 kg" },
                  "tanks": [ { "capacity": "80 L", "fuel": "diesel", "behind-front-axle": "1700 mm" } ] },
                "modification": { "ratings": { "gvm": "3500 kg" }, "tanks": { "capacity": "45 L", "fuel": "petrol" },
                  "accessories": [ { "name": "bar", "mass": "60 kg", "behind-front-axle": "-900 mm" }, { "mass": "-20 kg" } ] },
                "load": { "occupants": [ { "mass": "80 kg" } ], "luggage": { "name": "bags", "mass": "30 kg" },
                "goods": [ { "mass": "unknown" } ] }
                """
            )
            .Plan;
        plan.TareKg.ShouldBe((Fraction)2240);
        plan.Start.ShouldBe(StartingMass.Tare(2240, 1190, 1050, 10));
        plan.Ratings.ShouldBe(
            new Ratings
            {
                GvmKg = 3000,
                GcmKg = 6000,
                FrontAxleKg = 1450,
                RearAxleKg = 1750,
                BrakedTowKg = 3000,
                UnbrakedTowKg = 750,
                BallKg = 300,
            }
        );
        plan.Rerated.ShouldBe(new Ratings { GvmKg = 3500 });
        var empty = new MassItem("modification.tanks[0]", "added tank 1, empty", ItemKind.FixedAccessory, null, null);
        plan.Tanks.ShouldBe([
            new FuelTank("vehicle.tanks[0]", "tank 1", 80, new Fraction(835, 1000), 1700),
            new FuelTank("modification.tanks[0]", "added tank 1", 45, new Fraction(745, 1000), null, true) { Itself = empty },
        ]);
        plan.Items.ShouldBe([
            new MassItem("modification.accessories[0]", "bar", ItemKind.FixedAccessory, 60, -900),
            new MassItem("modification.accessories[1]", "accessories 2", ItemKind.FixedAccessory, -20, null), // what was taken off
            empty,
            new MassItem("load.occupants[0]", "occupants 1", ItemKind.Occupant, 80, null),
            new MassItem("load.luggage[0]", "bags", ItemKind.Luggage, 30, null),
            new MassItem("load.goods[0]", "goods 1", ItemKind.Load, null, null),
        ]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_trailer_its_coupling_and_the_towbar_are_read()
    {
        var trailer = JobBook
            .Read(
                """
                "vehicle": { "towbar": { "mass": "3000 kg", "ball": "300 kg" } },
                "trailer": { "mass": "2890 kg", "axles": "2650 kg", "ball-load": "240 kg", "braked": "yes", "ratings": { "atm": "3000 kg",
                "gtm": "2750 kg" },
                  "coupling": { "mass": "3500 kg", "ball": "350 kg" } }
                """
            )
            .Plan.Trailer;
        trailer.ShouldBe(
            new TrailerPlan(
                2890,
                2650,
                240,
                new TrailerLimits
                {
                    Braked = true,
                    AtmKg = 3000,
                    GtmKg = 2750,
                    TowbarKg = 3000,
                    TowbarBallKg = 300,
                    CouplingKg = 3500,
                    CouplingBallKg = 350,
                }
            )
        );
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("unladen", false)]
    [InlineData("tare", true)]
    public void A_weighbridge_reading_in_a_stated_state_is_where_the_masses_start(string state, bool tare)
    {
        var plan = JobBook
            .Read(
                $$"""
                "vehicle": { "tare": "2000 kg" },
                "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg",
                "rear-hitched": "1790 kg",
                  "trailer-axles": "2650 kg", "trailer-alone": "2890 kg", "mass-state": "{{state}}" } }
                """
            )
            .Plan;
        plan.Weighed.ShouldBe(new WeighbridgeReadings(1400, 1450, 1300, 1790, 2650, 2890));
        plan.Start.ShouldBe(
            StartingMass.Weighed(tare ? MassStateDefinition.Tare(10) : MassStateDefinition.Unladen, 1400, 1450) with
            {
                ReadingGuardKg = 5,
            }
        );
        plan.WeighedToleranceKg.ShouldBe((Fraction)60); // six readings of 10 kg
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "rear-alone": "1450 kg", "mass-state": "loaded" }""", true)]
    [InlineData("""{ "mass": "2850 kg", "mass-state": "loaded" }""", true)]
    [InlineData("""{ "front-alone": "1400 kg" }""", false)] // in which state is not said
    [InlineData("""{ "front-hitched": "1300 kg", "mass-state": "loaded" }""", false)] // not of the vehicle alone
    public void Without_its_state_or_the_vehicle_alone_a_reading_starts_nothing(string weighbridge, bool starts)
    {
        var plan = JobBook.Read($$""" "measured": { "uncertainty": { "weighbridge": "5 kg" }, "weighbridge": {{weighbridge}} }""").Plan;
        plan.Start.Name.ShouldBe(starts ? "weighbridge" : "tare");
        if (starts)
            plan.Start.State.ShouldBe(MassStateDefinition.LoadedUnhitched);
        plan.WeighedToleranceKg.ShouldBe((Fraction)30);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Heights_are_read_corner_by_corner_in_their_state_with_the_springs_that_were_fitted()
    {
        var job = JobBook.Read(
            """
            "vehicle": { "trim-height": { "front-left": "480 mm", "front-right": "482 mm", "rear-left": "520 mm",
            "rear-right": "522 mm" } },
            "modification": { "springs": { "front": { "wheel-rate": "30 N/mm", "height-gained": "50 mm", "at-axle-load": "1350 kg" },
              "rear": { "wheel-rate": "40 N/mm", "free-height": "700 mm", "unsprung-mass": "150 kg" } } },
            "measured": { "before": { "mass-state": "tare", "front-left": "470 mm" }, "after": { "mass-state": "loaded",
            "rear-right": "560 mm" },
              "axle-load-difference": { "front": "-10 kg", "rear": "20 kg" }, "clearance-midway": "220 mm",
              "uncertainty": { "suspension-lift": "4 mm" } }
            """
        );
        var heights = job.Plan.Heights;
        heights.MakersTrim.ShouldBe(new HeightReading(MassState.Unladen, new AxleHeights(480, 482), new AxleHeights(520, 522)));
        heights.Before.ShouldBe(new HeightReading(MassState.Tare, new AxleHeights(470, null), new AxleHeights(null, null)));
        heights.After.ShouldBe(new HeightReading(MassState.Loaded, new AxleHeights(null, null), new AxleHeights(null, 560)));
        (heights.FrontWheelRateNPerMm, heights.RearWheelRateNPerMm).ShouldBe((30, 40));
        heights.LoadDifferenceKg.ShouldBe(new AxleMasses(-10, 20));
        heights.LeftRightWarningMm.ShouldBe((Fraction)20);
        job.Plan.FrontSprings.ShouldBe(new AxleSprings("modification.springs.front", Axle.Front, 30, new SpringHeight.Gain(50, 1350)));
        job.Plan.RearSprings.ShouldBe(new AxleSprings("modification.springs.rear", Axle.Rear, 40, new SpringHeight.Free(700, 521, 150)));
        job.Plan.ClearanceMidwayMm.ShouldBe((Fraction)220);
        job.Plan.Uncertainties["suspension-lift"].ShouldBe((Fraction)4);
        job.Plan.TellsLift.ShouldBeTrue();
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "front": { "free-height": "700 mm" } }""", true)]
    [InlineData("""{ "rear": { "at-axle-load": "1350 kg" } }""", true)]
    [InlineData("""{ "rear": { "wheel-rate": "40 N/mm" } }""", false)] // how much it raises is not said
    public void Springs_say_how_high_they_stand_by_what_they_gain_or_by_their_free_height(string springs, bool says)
    {
        var plan = JobBook.Read($$""" "modification": { "springs": {{springs}} }""").Plan;
        (plan.FrontSprings ?? plan.RearSprings)!.Height.ShouldBe(
            !says ? null
            : plan.FrontSprings is null ? new SpringHeight.Gain(null, 1350)
            : new SpringHeight.Free(700, null, null)
        );
        plan.TellsLift.ShouldBeTrue();
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("\"not-yet\"", true)]
    [InlineData("\"unknown\"", false)]
    public void A_vehicle_may_not_yet_be_registered_or_it_may_be_unknown_since_when(string first, bool notYet)
    {
        var job = JobBook.Read($$""" "vehicle": { "first-registered": {{first}} }""");
        job.NotYetRegistered.ShouldBe(notYet);
        job.FirstRegistered.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_written_as_unknown_is_as_good_as_left_out_but_is_not_taken_for_unchanged()
    {
        var job = JobBook.Read(
            """
            "vehicle": { "category": "unknown", "tare": "unknown", "seats": "unknown", "tanks": [ { "fuel": "unknown" } ] },
            "modification": { "suspension-lift": "unknown" }
            """
        );
        job.Words.ShouldBeEmpty();
        job.Unknown.ShouldBe(["suspension-lift"]);
        job.Plan.TareKg.ShouldBeNull();
        job.Plan.Seats.ShouldBeNull();
        job.Plan.Tanks.ShouldHaveSingleItem().DensityKgPerL.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Who_certifies_where_the_trip_goes_what_was_shown_and_the_measures_are_read()
    {
        var job = JobBook.Read(
            """
            "certifier": { "name": "somebody", "appointed-in": [ "xb" ] }, "travels-through": [ "xb", "former-xa" ],
            "shown": { "lane-change-test": "no" },
            "modification": { "suspension-lift": "-2 in", "tyres": "265/70R17 115S" }, "measured": { "frame-height": "700 mm" }
            """
        );
        job.CertifierAppointedIn!.Value.ShouldBe(["xb"]);
        job.TravelsThrough.ShouldBe(["xb", "xa"]);
        job.Shown.ShouldHaveSingleItem().ShouldBe(KeyValuePair.Create("lane-change-test", false));
        job.Measures["suspension-lift"].ShouldBe(Quantity.Parse("-2 in"));
        job.Measures["frame-height"].ShouldBe(Quantity.Parse("700 mm"));
        job.FittedTyre.ShouldBe(TyreSize.Parse("265/70R17 115S"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_days_of_a_job_are_those_that_a_rule_may_go_by()
    {
        var dates = JobReader
            .Read(Nodes.Of("""{ "registered-in": "xa", "dates": { "work": "2026-01-10", "certification": "2026-02-10" } }"""), JobBook.Book)
            .Dates;
        dates.Latest.ShouldBe(new DateOnly(2026, 2, 10));
        dates.For("work").ShouldBe([new DateOnly(2026, 1, 10)]);
        dates.For("certification").ShouldBe([new DateOnly(2026, 2, 10)]);
        dates.For("inspection").ShouldBe([new DateOnly(2026, 1, 10), new DateOnly(2026, 2, 10)]); // not stated: any of them may count
        dates.For(null).ShouldBe([new DateOnly(2026, 1, 10), new DateOnly(2026, 2, 10)]);
        (dates with { Inspection = new DateOnly(2026, 3, 1) }).For("inspection").ShouldBe([new DateOnly(2026, 3, 1)]);
    }
}
