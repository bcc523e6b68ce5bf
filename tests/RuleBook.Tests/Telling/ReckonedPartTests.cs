using RuleBook.Figures;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Physics.Tyres;
using RuleBook.Telling;
using RuleBook.Units;
using static RuleBook.Tests.Telling.ReckonedByHand;

namespace RuleBook.Tests.Telling;

/// <summary>
/// The parts of an answer that are reckoned, whole: records made by hand in which each figure is another one, and beside them the page that
/// a person is to read, written by hand.
/// </summary>
[Trait("Basis", "derived")]
public sealed class ReckonedPartTests
{
    [Fact]
    public void A_budget_is_told_line_by_line_and_a_loaded_one_from_where_it_parts_from_the_unladen_one() =>
        Page(
                Light with
                {
                    Unladen = Light.Unladen with { Left = [Gvm, NewGvm, Front, Rear] },
                    Loaded = new MassBudget(
                        MassState.Loaded,
                        [Tare, Bars, Crate],
                        [new LoadCheck("gvm", "vehicle", 1990, 2000, "g") { GuardKg = 20 }],
                        []
                    ),
                    Missing = [Wheelbase],
                }
            )
            .ShouldBe([
                "OVERLOADED: limits that are passed (no matter of the pathway, but of driving it at all):",
                "x  unladen: front axle: at least 1100 of 1050 kg, at least 50 kg too much",
                "Mass budget, unladen (fixed accessories, every tank full):",
                Columns,
                "tare|2000|1100|900|2000",
                "bars (2 x 30 kg)|60|0 to 60|0 to 60|2060",
                "in all|2060|1100 to 1160|900 to 960|2060",
                "!  vehicle against its GVM: 2060 of 2050 kg, 10 kg too much unless re-rated",
                "ok vehicle against its re-rated GVM: 2060 of 2200 kg, 140 kg left",
                "x  front axle: at least 1100 of 1050 kg, at least 50 kg too much",
                "ok rear axle: at most 960 of 1000 kg, at least 40 kg left",
                "Mass budget, loaded:",
                Columns,
                "unladen|2060|1100 to 1160|900 to 960|2060",
                "crate|80 or more|20 or less|?|2140 or more",
                "in all|2140 or more|1100 to 1180|900 or more|2140 or more",
                "ok vehicle: 1990 of 2000 kg, 10 kg left; too close to call, weighed to within 20 kg",
                "?  vehicle.wheelbase would give: the mass on each axle",
            ]);

    [Fact]
    public void A_loaded_budget_that_begins_otherwise_is_told_from_its_first_line() =>
        Page(Light with { Loaded = new MassBudget(MassState.Loaded, [Tare, Crate], [], []) })
            .SkipWhile(line => line != "Mass budget, loaded:")
            .Skip(1)
            .ShouldBe([
                Columns,
                "tare|2000|1100|900|2000",
                "crate|80 or more|20 or less|?|2140 or more",
                "in all|2140 or more|1100 to 1180|900 or more|2140 or more",
            ]);

    /// <summary>2200 kg asked for are 10 kg more than 2190.</summary>
    [Theory]
    [InlineData(
        2200,
        false,
        "x  axles and tyres carry 2190 kg together (front axle, rear axle); asked for 2200 kg, 10 kg more than they carry"
    )]
    [InlineData(2190, false, "ok axles and tyres carry 2190 kg together (front axle, rear axle); asked for 2190 kg")]
    [InlineData(2100, true, "?  axles and tyres carry 2190 kg together (front axle, rear axle); asked for 2100 kg")]
    public void What_is_asked_for_stands_beside_what_axles_and_tyres_carry(int asked, bool lacks, string told) =>
        Page(
                Light with
                {
                    Weighed = new VehicleWeighed(Range(2050, 1120, 930), [Rear]),
                    Rerating = new ReratingCeiling(2190, ["front axle", "rear axle"], asked, lacks ? [Wheelbase] : []),
                }
            )
            .SkipWhile(line => !line.StartsWith("in all", StringComparison.Ordinal))
            .Skip(1)
            .ShouldBe([
                "The vehicle alone as weighed, whatever was aboard:",
                "- 2050 kg, front 1120 kg, rear 930 kg",
                "ok rear axle: at most 960 of 1000 kg, at least 40 kg left",
                told,
                "the braking rule for the vehicle's category must still be met at the new mass; the GCM does not rise with the GVM",
                .. lacks ? ["?  vehicle.wheelbase would give: the mass on each axle"] : (string[])[],
            ]);

    [Fact]
    public void A_combination_is_told_as_planned_and_as_weighed_with_what_the_ball_and_the_ratings_leave() =>
        Page(Combined)
            .SkipWhile(line => line != "The combination as planned:")
            .ShouldBe([
                "The combination as planned:",
                "- vehicle 2240 kg with 100 kg on the ball, trailer alone 1500 kg, trailer axles 1400 kg, in all 3640 kg",
                "ok all of it: 3640 of 3700 kg, 60 kg left", // what the loaded budget has told stands there once
                "The combination as weighed:",
                "- vehicle 2250 kg with 110 kg on the ball, trailer alone 1520 kg, trailer axles 1410 kg, in all 3660 kg",
                "ok rear axle: at most 960 of 1000 kg, at least 40 kg left",
                "- ball load both ways: 110 kg leave the trailer, 105 kg come onto the vehicle (5 kg apart; the greater counts)",
                "- the gain of the rear axle would fit a ball 1230 mm behind it",
                "- cargo left in the vehicle: 60 kg by GVM, 40 kg by GCM; the lower governs",
                "- rated towing capacity: 3000 kg (the maker's figure)",
                "!  the maker advises 50 kg less in the vehicle at this ball load",
                "!  vehicle, so advised: 2240 of 2150 kg, 90 kg too much",
                "the vehicle maker's advice, not a limit of the law, which looks at the stated masses and ratings",
                "What the trailer's axles may carry at each mass of the vehicle:",
                "- vehicle 2240 kg: 1400 kg left (GCM and tow rating)",
                "- vehicle 2000 kg: 1500 kg left",
                "The same after the re-rating:",
                "- vehicle 2300 kg: 1300 kg left (GCM)",
                TradeOff.WhyGcmStays,
                "What may still stand over the rear axle at each ball load:",
                "- ball load 0 kg: 300 kg left (rear axle)",
            ]);

    [Fact]
    public void A_trailer_that_lifts_the_vehicle_a_capacity_without_the_makers_figure_and_a_table_that_ends_are_told_as_such()
    {
        var told = Page(
            Light with
            {
                Towing = Towing with
                {
                    WeighedCombination = new Combination(2000, null, 1500, 1460, -40),
                    Capacity = new TowRating(900, false, "t"),
                    DownRating = new DownRating(null, new LoadCheck("gvm", "vehicle, so advised", 2100, 2150, "g")),
                },
            }
        );
        told[0]
            .ShouldBe("BALL LOAD BELOW ZERO: the trailer lifts the back of the vehicle by 40 kg; load it further forward and weigh again:");
        told.SkipWhile(line => !line.StartsWith("in all", StringComparison.Ordinal))
            .Skip(1)
            .ShouldBe([
                "- rated towing capacity: 900 kg (no maker's figure; the lesser of towbar and GCM less GVM)",
                "!  the maker's table ends before this ball load",
                "ok vehicle, so advised: 2100 of 2150 kg, 50 kg left",
                "the vehicle maker's advice, not a limit of the law, which looks at the stated masses and ratings",
            ]);
    }

    /// <summary>(50 + 49) / 2 mm less 2 of correction and 20 of block are 27.5; (60 + 30) / 2 are 45.</summary>
    [Fact]
    public void Heights_are_told_corner_by_corner_and_what_springs_give_with_its_doubt()
    {
        var page = new Told();
        new HeightText(page).Write(Heights);
        page.Lines.ShouldBe([
            "THE SPRINGS DO NOT GIVE THE LIFT STATED: 70 mm stated, 78 to 82 mm predicted:",
            "REAR LEFT AND RIGHT STAND 31 mm APART: measure again before relying on the lift:",
            "Lift as measured, wheel centre to guard edge:",
            "x  refused: no",
            "!  mind it",
            "- front: left 50 mm, right 49 mm, corrected by -2 mm, body block 20 mm taken out: suspension lift 27.5 mm",
            "- rear: left 60 mm, right 30 mm: suspension lift 45 mm",
            "!  left and right stand 30 mm apart: find out why before measuring again",
            "uncertainty counted at the limits: 5 mm",
            "Lift to expect from the front springs, unladen:",
            "- 60 mm, give or take 2 mm, with 1100 kg on the axle; each 10 kg more lowers it by 1 mm",
            "!  allowed without a certificate, at most 50 mm: needs 100 kg more of fixed mass over the front axle, or 200 kg midway "
                + "between the axles, or 150 kg at the tow ball",
            "!  allowed with a certificate, at most 55 mm: needs 50 kg more of fixed mass over the front axle",
            "ok allowed with the authority's approval first, at most 75 mm: kept",
            "lift by mass added to the axle: +0 kg 60 mm, +50 kg 55 mm",
            "Lift to expect from the rear springs, unladen:",
            "taken for granted: the wheel rate is constant over the range in question (no bump stop, no second-stage leaf, no change of "
                + "rate) and the same left and right",
            "- each axle was judged by itself: the rear axle decides",
            "?  vehicle.wheelbase would give: the mass on each axle",
        ]);
    }

    [Theory]
    [InlineData(78, null, "78 or more")]
    [InlineData(null, 82, "82 or less")]
    [InlineData(null, null, "?")]
    public void A_prediction_with_an_open_end_is_told_by_the_other(int? low, int? high, string told)
    {
        var page = new Told();
        var predicted = new Interval(low, high);
        new HeightText(page).Write(new HeightAnswer(null, null, null, null, []) { Denied = new DeniedLift(70, predicted, "") });
        page.Lines.ShouldBe([$"THE SPRINGS DO NOT GIVE THE LIFT STATED: 70 mm stated, {told} mm predicted:"]);
    }

    [Fact]
    public void Tyres_are_told_by_growth_load_speed_speedometer_and_clearance()
    {
        var answer = Tyres;
        Page(answer)
            .ShouldBe([
                "Tyres and clearance on the road:",
                "- growth: 28 mm = 804 - 776",
                "- width: 100 % = 265 / 265",
                "x  front axle: at least 1100 of 1050 kg, at least 50 kg too much",
                "ok rear axle: at most 960 of 1000 kg, at least 40 kg left",
                $"ok speed symbol S (180 km/h): {Least}",
                $"x  speed symbol M (130 km/h): {Least}",
                $"?  speed symbol H (210 km/h): {Least}",
                "- at 100 km/h shown: true 103.6 km/h, if the speedometer was exact before",
                "ok one: within the tolerance; 5 % left of 8 % over the placard's diameter",
                "!  two: would read low, which the rule does not allow: have it checked and corrected; 1 % more than the 2 % over the "
                    + "placard's diameter that it bears",
                "!  three: would read too high; up to 4 % over the placard's diameter",
                "ok four: asks for no accuracy at this speed; 0 % left of 6 % over the placard's diameter",
                "?  five: not known; up to 7 % over the placard's diameter",
                "- no accuracy was asked for when the vehicle may have been made",
                "x  clearance midway between the axles: at least 95 mm (loaded); measured 90 mm",
                "ok running clearance: at least 100 mm (unladen); measured 110 mm",
                "- static stability factor 1.11, after the change not below 1",
                StaticStability.Caution,
                "?  vehicle.wheelbase would give: the mass on each axle",
            ]);

        var checkedBefore = answer.Speedometer! with { Assumed = false, Periods = answer.Speedometer.Periods[..1] };
        var told = Page(
            answer with
            {
                Growth = null,
                Loads = [],
                Speedometer = checkedBefore,
                Road = answer.Road with { Midway = null, Running = null, StabilityAfter = null },
            }
        );
        told.ShouldNotContain(line => line.StartsWith("- growth", StringComparison.Ordinal));
        told.ShouldContain("- front axle rating 1650 kg: load index 101 or more");
        told.ShouldContain("- rear axle rating 9000 kg: load index beyond the table or more");
        told.ShouldContain("- at 100 km/h shown: true 103.6 km/h");
        told.ShouldContain(line => line.StartsWith("x  two: would read low", StringComparison.Ordinal));
        told.ShouldContain("- no accuracy was asked for when the vehicle was made");
        told.ShouldContain("- clearance midway between the axles: at least 95 mm (loaded)");
        told.ShouldContain("- static stability factor 1.11; after the change not known");
        told.ShouldNotContain(line => line.Contains("running clearance", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_tyres_that_stay_nothing_is_told_where_nothing_is_known_of_the_road()
    {
        var stay = new TyreAnswer(null, null, new TyreCapacity(Figure("a"), Figure("b"), ""), [], [], []);
        Page(stay).ShouldBeEmpty();
        Page(stay with { Missing = [Wheelbase] }).Count.ShouldBe(2); // a clearance was measured, and what it was to be is not known
        Page(stay with { Loads = [Rear] }).Count.ShouldBe(2);
        Page(stay with { Fitted = TyreSize.Parse("265/70R17") }).ShouldBe(["Tyres and clearance on the road:"]);
    }

    private const string Columns = "item|kg|front|rear|total";

    private static List<string> Page(MassAnswer masses)
    {
        var page = new Told();
        new MassText(page).Write(masses);
        return page.Lines;
    }

    private static List<string> Page(TyreAnswer tyres)
    {
        var page = new Told();
        new TyreText(page).Write(tyres);
        return page.Lines;
    }
}
