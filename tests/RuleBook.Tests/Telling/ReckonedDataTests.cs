using System.Text.Json;
using System.Text.Json.Nodes;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Telling;
using RuleBook.Text;
using static RuleBook.Tests.Telling.ReckonedByHand;

namespace RuleBook.Tests.Telling;

/// <summary>The same parts as data: every key, written by hand.</summary>
[Trait("Basis", "derived")]
public sealed class ReckonedDataTests
{
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
}
