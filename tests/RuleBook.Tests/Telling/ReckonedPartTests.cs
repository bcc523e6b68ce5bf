using System.Text.Json;
using System.Text.Json.Nodes;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Physics.Tyres;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Tests.Telling;

/// <summary>
/// The parts of an answer that are reckoned, whole: records made by hand in which each figure is another one, and beside them the page that
/// a person is to read, written by hand.
/// </summary>
[Trait("Basis", "derived")]
public sealed class ReckonedPartTests
{
    private const string Least = "at least 140 km/h where tyres are rated by the kind of vehicle, unless the vehicle is slower";

    private static readonly MissingFact Wheelbase = new("vehicle.wheelbase", "the mass on each axle");

    private static readonly LoadCheck Gvm = new("gvm", "vehicle against its GVM", 2060, 2050, "vehicle.ratings.gvm");
    private static readonly LoadCheck NewGvm = new("gvm", "vehicle against its re-rated GVM", 2060, 2200, "modification.ratings.gvm");
    private static readonly LoadCheck Front = new("front-axle", "front axle", 1100, 1050, "f") { Known = Known.AtLeast };
    private static readonly LoadCheck Rear = new("rear-axle", "rear axle", 960, 1000, "r") { Known = Known.AtMost };

    private static readonly BudgetLine Tare = Line("tare", null, Range(2000, 1100, 900), Range(2000, 1100, 900));

    private static readonly BudgetLine Bars = Line(
        "bars",
        "2 x 30 kg",
        new MassRange(Interval.Of(60), new Interval(0, 60), new Interval(0, 60)),
        new MassRange(Interval.Of(2060), new Interval(1100, 1160), new Interval(900, 960))
    );

    private static readonly BudgetLine Crate = Line(
        "crate",
        null,
        new MassRange(new Interval(80, null), new Interval(null, 20), new Interval(0, null)),
        new MassRange(new Interval(2140, null), new Interval(1100, 1180), new Interval(900, null))
    );

    private static readonly MassAnswer Light = Masses(new MassBudget(MassState.Unladen, [Tare, Bars], [], []));

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
        new HeightText(page).Write(new HeightAnswer(null, [], null, null, null, new DeniedLift(70, predicted, ""), [], []));
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
        told.ShouldContain("- static stability factor 1.11");
        told.ShouldNotContain(line => line.Contains("running clearance", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_tyres_that_stay_nothing_is_told_where_nothing_is_known_of_the_road()
    {
        var stay = new TyreAnswer(
            null,
            null,
            new TyreCapacity(Figure("a"), Figure("b"), ""),
            [],
            [],
            [],
            null,
            new RoadAnswer(null, null, null, null, null, null),
            []
        );
        Page(stay).ShouldBeEmpty();
        Page(stay with { Missing = [Wheelbase] }).Count.ShouldBe(2); // a clearance was measured, and what it was to be is not known
        Page(stay with { Loads = [Rear] }).Count.ShouldBe(2);
        Page(stay with { Fitted = TyreSize.Parse("265/70R17") }).ShouldBe(["Tyres and clearance on the road:"]);
    }

    [Fact]
    public void Heights_are_in_the_data_under_a_key_each() =>
        Json(json => HeightJson.Write(json, Heights))
            .ShouldBe(
                Plain(
                    $$"""
                    { "suspension-lift": null, "suspension-lift-at-least": 28, "suspension-lift-at-most": 45, "deciding-axle": "rear",
                      "derivation": "so", "uncertainty": 5,
                      "denied": { "stated": 70, "at-least": 78, "at-most": 82, "derivation": "thus" },
                      "uneven": [ { "axle": "rear", "left": 530, "right": 561, "apart": 31, "most": 10 } ],
                      "measured": { "refusal": "no", "correction": "mind it",
                        "front": { "left": 50, "right": 49, "correction": -2, "body-block": 20, "suspension": 27.5, "left-right": 1,
                          "uneven": false },
                        "rear": { "left": 60, "right": 30, "correction": 0, "body-block": 0, "suspension": 45, "left-right": 30,
                          "uneven": true } },
                      "predicted": [
                        { "axle": "front", "lift": 60, "uncertainty": 2, "at-least": 58, "at-most": 62, "axle-load": 1100,
                          "table": [ { "added": 0, "lift": 60 }, { "added": 50, "lift": 55 } ],
                          "mass-needed": [
                            { "pathway": "no-certificate", "limit": 50, "on-axle": 100, "midway": 200, "at-ball": 150 },
                            { "pathway": "certificate", "limit": 55, "on-axle": 50, "midway": null, "at-ball": null },
                            { "pathway": "approval", "limit": 75, "on-axle": 0, "midway": 1, "at-ball": 1 } ] },
                        { "axle": "rear", "lift": null, "uncertainty": 0, "at-least": null, "at-most": null, "axle-load": null,
                          "table": [], "mass-needed": [] } ],
                      "assumption": "{{PredictedLift.Assumption}}", {{Missing}} }
                    """
                )
            );

    [Fact]
    public void Tyres_are_in_the_data_under_a_key_each() =>
        Json(json => TyreJson.Write(json, Tyres))
            .ShouldBe(
                Plain(
                    $$"""
                    { "fitted": "265/70R17", "growth": {{Of("28 mm = 804 - 776", "mm")}}, "growth-percent": {{Of("percent", "%")}},
                      "tyre-lift": {{Of("lift", "mm")}}, "width-percent": {{Of("100 % = 265 / 265", "%")}},
                      "front-capacity": {{Of("a", "kg")}}, "rear-capacity": {{Of("b", "kg")}}, "loads": [ {{FrontData}}, {{RearData}} ],
                      "load-index-needed": [ { "axle": "front", "rating": 1650, "tyres": 2, "load-index": "101" },
                        { "axle": "rear", "rating": 9000, "tyres": 2, "load-index": null } ], "not-compared": [ "load index" ],
                      "speeds": [
                        { "condition": "kept", "symbol": "S", "good-for": 180, "least": 140, "enough": "yes", "sources": [] },
                        { "condition": "kept", "symbol": "M", "good-for": 130, "least": 140, "enough": "no", "sources": [] },
                        { "condition": "kept", "symbol": "H", "good-for": 210, "least": 140, "enough": "ask-the-maker", "sources": [] } ],
                      "speedometer": { "indicated": 100, "true-before": 100, "assumed-exact-before": true,
                        "true-after": {{Of("103.6 km/h", "km/h")}}, "rules": [
                          { "rule": "one", "finding": "within", "largest-growth-percent": 8, "growth-left-percent": 5 },
                          { "rule": "two", "finding": "reads-low", "largest-growth-percent": 2, "growth-left-percent": -1 },
                          { "rule": "three", "finding": "reads-high", "largest-growth-percent": 4, "growth-left-percent": null },
                          { "rule": "four", "finding": "not-covered", "largest-growth-percent": 6, "growth-left-percent": 0 },
                          { "rule": "five", "finding": null, "largest-growth-percent": 7, "growth-left-percent": null } ], "sources": [] },
                      "road": { "least-clearance-midway": 95, "clearance-midway": { "value": 90, "least": 95, "holds": false },
                        "running-clearance": { "value": 110, "least": 100, "holds": true }, "stability-factor-before": 1.111111,
                        "stability-factor-after": 1, "stability-caution": "{{StaticStability.Caution}}", "sources": [] }, {{Missing}} }
                    """
                )
            );

    [Fact]
    public void Masses_are_in_the_data_under_a_key_each()
    {
        var masses = Combined with
        {
            Weighed = new VehicleWeighed(Range(2050, 1120, 930), [Rear]),
            Rerating = new ReratingCeiling(2190, ["front axle"], 2200, [Wheelbase]),
            Missing = [Wheelbase],
        };
        var lines = $$"""
            "lines": [
              { "item": "tare", "mass": 2000, "front": null, "rear": null, "total": 2000,
                "possible": {{Possible(2000, 2000, 1100, 1100, 900, 900)}}, "derivation": null },
              { "item": "bars", "mass": 60, "front": null, "rear": null, "total": 2060,
                "possible": {{Possible(60, 60, 0, 60, 0, 60)}}, "derivation": "2 x 30 kg" } ]
            """;
        var budget = $$"""
            "total": 2060, "front": null, "rear": null, "known": 2060, "possible": {{Possible(2060, 2060, 1100, 1160, 900, 960)}}, {{lines}}
            """;
        Json(json => MassJson.Write(json, masses))
            .ShouldBe(
                Plain(
                    $$"""
                    { "unladen": { {{budget}}, "left": [] }, "loaded": { {{budget}}, "left": [ {{RearData}} ] },
                      "weighed-alone": { "possible": {{Possible(2050, 2050, 1120, 1120, 930, 930)}}, "checks": [ {{RearData}} ] },
                      "re-rating": { "asked": 2200, "highest-gvm": 2190, "binding": [ "front axle" ], "carries": "no",
                        "condition": "{{ReratingCeiling.Condition}}", "why-gcm-stays": "{{TradeOff.WhyGcmStays}}", {{Missing}} },
                      "towing": {
                        "planned": { "vehicle": 2240, "front": null, "rear": null, "trailer-axles": 1400, "trailer-alone": 1500,
                          "ball": 100, "combination": 3640, "checks": [ {{RearData}}, {{Data("gcm", "all of it", 3640, 3700, "g")}} ] },
                        "weighed": { "vehicle": 2250, "front": null, "rear": null, "trailer-axles": 1410, "trailer-alone": 1520,
                          "ball": 110, "combination": 3660, "checks": [ {{RearData}} ] },
                        "ball-by-trailer": 110, "ball-by-vehicle": 105, "ball-disagreement": 5, "implied-overhang-mm": 1230,
                        "lifts-ball": null, "rated-towing-capacity": 3000, "rated-towing-capacity-by": "maker",
                        "cargo-left-by-gvm": 60, "cargo-left-by-gcm": 40,
                        "down-rating": { "less": 50, "advisory": "{{DownRating.Advisory}}",
                          "checks": [ {{Data("gvm", "vehicle, so advised", 2240, 2150, "g")}} ] } },
                      "trailer-against-vehicle": [ { "given": 2240, "left": 1400, "binding": [ "GCM", "tow rating" ] },
                        { "given": 2000, "left": 1500, "binding": [] } ],
                      "trailer-against-vehicle-re-rated": [ { "given": 2300, "left": 1300, "binding": [ "GCM" ] } ],
                      "rear-load-against-ball": [ { "given": 0, "left": 300, "binding": [ "rear axle" ] } ],
                      "failing": [], "too-close": [], {{Missing}} }
                    """
                )
            );
    }

    private const string Columns = "item|kg|front|rear|total";
    private const string Missing = """ "missing": [ { "fact": "vehicle.wheelbase", "adds": "the mass on each axle" } ] """;

    private static readonly string FrontData = Data("front-axle", "front axle", 1100, 1050, "f", "at-least");
    private static readonly string RearData = Data("rear-axle", "rear axle", 960, 1000, "r", "at-most");

    private static string Data(string subject, string what, int value, int limit, string fact, string known = "exactly") =>
        $$"""
            { "subject": "{{subject}}", "what": "{{what}}", "value": {{value}}, "known": "{{known}}", "limit": {{limit}},
              "margin": {{limit - value}}, "holds": {{(value > limit ? "false" : "true")}}, "guard-band": 0, "too-close": false,
              "limit-fact": "{{fact}}" }
            """;

    private static string Of(string derivation, string unit) => $$"""{ "value": 1, "unit": "{{unit}}", "derivation": "{{derivation}}" }""";

    private static string Possible(int low, int high, int frontLow, int frontHigh, int rearLow, int rearHigh) =>
        $$"""
            { "total": { "at-least": {{low}}, "at-most": {{high}} }, "front": { "at-least": {{frontLow}}, "at-most": {{frontHigh}} },
              "rear": { "at-least": {{rearLow}}, "at-most": {{rearHigh}} } }
            """;

    private static string Json(Action<Utf8JsonWriter> write) => Plain(JsonText.Write(write));

    private static string Plain(string json) => JsonNode.Parse(json)!.ToJsonString();

    private static MassAnswer Combined =>
        Light with
        {
            Loaded = Light.Unladen with { Left = [Rear] },
            Towing = Towing with
            {
                PlannedCombination = new Combination(2240, null, 1400, 1500, 100),
                Planned = new CombinationCheck([Rear, new LoadCheck("gcm", "all of it", 3640, 3700, "g")], []),
                WeighedCombination = new Combination(2250, null, 1410, 1520, 110),
                Weighed = new CombinationCheck([Rear], []),
                BallByTrailerKg = 110,
                BallByVehicleKg = 105,
                BallDisagreementKg = 5,
                ImpliedArmMm = 1230,
                CargoLeft = new CargoLeft(60, 40),
                Capacity = new TowRating(3000, true, "t"),
                DownRating = new DownRating(50, new LoadCheck("gvm", "vehicle, so advised", 2240, 2150, "g")),
            },
            TradeOff = [new TradeOffPoint(2240, 1400, ["GCM", "tow rating"]), new TradeOffPoint(2000, 1500, [])],
            ReratedTradeOff = [new TradeOffPoint(2300, 1300, ["GCM"])],
            RearLoadAgainstBall = [new TradeOffPoint(0, 300, ["rear axle"])],
        };

    private static HeightAnswer Heights =>
        new HeightAnswer(
            new MeasuredLift(new AxleLift(50, 49, -2, 20, 1, false), new AxleLift(60, 30, 0, 0, 30, true), "no", "mind it", []),
            [
                new PredictedAxle(
                    new PredictedLift(Axle.Front, 60, 10, []),
                    new Interval(58, 62),
                    2,
                    1100,
                    [new LiftStep(0, 60), new LiftStep(50, 55)],
                    [
                        new MassNeeded(Pathway.NoCertificate, 50, 100, 200, 150),
                        new MassNeeded(Pathway.Certificate, 55, 50, null, null),
                        new MassNeeded(Pathway.Approval, 75, 0, 1, 1),
                    ]
                ),
                new PredictedAxle(new PredictedLift(Axle.Rear, null, null, []), Interval.Anything, 0, null, [], []),
            ],
            new Interval(28, 45),
            "so",
            5,
            new DeniedLift(70, new Interval(78, 82), "thus"),
            [new UnevenAxle(Axle.Rear, 530, 561, 10)],
            [Wheelbase]
        )
        {
            DecidingAxle = Axle.Rear,
        };

    private static TyreAnswer Tyres
    {
        get
        {
            var rule = new SpeedometerRule(0, 10, 4);
            SpeedometerCheck Check(string name, SpeedometerFinding? finding, int largest, int? left) =>
                new(new NamedSpeedometerRule(name, rule), finding, largest, left);
            return new TyreAnswer(
                TyreSize.Parse("265/70R17"),
                Growth,
                new TyreCapacity(Figure("a"), Figure("b"), ""),
                [Front, Rear],
                [new LoadIndexNeed(Axle.Front, 1650, 2, new LoadIndex(101)), new LoadIndexNeed(Axle.Rear, 9000, 2, null)],
                [Speed("S", true), Speed("M", false), Speed("H", null)],
                new SpeedometerAnswer(
                    100,
                    100,
                    true,
                    Figure("103.6 km/h"),
                    [
                        Check("one", SpeedometerFinding.Within, 8, 5),
                        Check("two", SpeedometerFinding.ReadsLow, 2, -1),
                        Check("three", SpeedometerFinding.ReadsHigh, 4, null),
                        Check("four", SpeedometerFinding.NotCovered, 6, 0),
                        Check("five", null, 7, null),
                    ],
                    [new SpeedometerPeriod("xa", null, null, [], []), new SpeedometerPeriod("xa", null, null, [], [])]
                ),
                new RoadAnswer(
                    95,
                    new LengthCheck(90, 95),
                    new LengthCheck(110, 100),
                    new Fractions.Fraction(10, 9),
                    1,
                    new ClearanceRule("xa", 1, 100, "loaded", "unladen", [])
                ),
                [Wheelbase]
            )
            {
                NotCompared = ["load index"],
            };
        }
    }

    private static TowingAnswer Towing => new(null, null, null, null, null, null, null, null, null, null, null);

    private static TyreGrowth Growth =>
        TyreGrowth.Of(TyreSize.Parse("265/70R17"), [TyreSize.Parse("265/65R17")], DiameterBasis.Handbook) with
        {
            Growth = Figure("28 mm = 804 - 776"),
            WidthPercent = Figure("100 % = 265 / 265"),
            GrowthPercent = Figure("percent"),
            TyreLift = Figure("lift"),
        };

    private static TyreSpeedCheck Speed(string symbol, bool? enough) =>
        new("kept", SpeedSymbol.Find(symbol)!, 140, enough, new TyreSpeedRule(null, "kept", [], []));

    private static DerivedFigure Figure(string derivation) => new(1, derivation);

    private static MassRange Range(int total, int front, int rear) => new(Interval.Of(total), Interval.Of(front), Interval.Of(rear));

    private static BudgetLine Line(string item, string? derivation, MassRange own, MassRange running) =>
        new(item, own.Total.Exact, null, running.Total.Exact, null, derivation) { Possible = own, RunningPossible = running };

    private static MassAnswer Masses(MassBudget unladen) => new(unladen, null, null, null, null, [], [], [], []);

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
