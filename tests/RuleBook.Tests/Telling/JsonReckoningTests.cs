using RuleBook.Telling;
using RuleBook.Tests.Figures;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>What an answer reckons: masses, heights, tyres and the road.</summary>
public sealed partial class JsonAnswerTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void Masses_of_a_vehicle_and_its_trailer()
    {
        // 2650 kg and 100 L of diesel at 0.835 kg/L: 2733.5 kg; 240 kg on the ball: 2973.5 kg; with the trailer's axles 5623.5 kg.
        var masses = Json(
                AssessmentJson.Write(
                    Reckoned.Assess(
                        $$"""
                        "vehicle": { {{Reckoned.Wagon}}, "towbar": { "mass": "3300 kg" }, "down-rating": [ { "ball-up-to": "350 kg",
                          "less": "100 kg" } ] },
                        "modification": { "ratings": { "gvm": "3800 kg" } },
                        "trailer": { "mass": "2890 kg", "ball-load": "240 kg", "braked": "yes" },
                        "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg",
                        "rear-hitched": "2190 kg", "trailer-axles": "2650 kg", "trailer-alone": "3290 kg" } }
                        """
                    )
                )
            )
            .GetProperty("masses");
        Told(
            masses,
            """
            unladen.total = 2733.5
            unladen.known = 2733.5
            unladen.lines.0.item = tare
            unladen.lines.0.mass = 2650
            unladen.lines.0.front = 1400
            unladen.lines.0.rear = 1250
            unladen.lines.1.mass = 83.5
            unladen.lines.1.total = 2733.5
            unladen.lines.1.derivation = 110 L less 10 L in tare, x 0.835 kg/L
            unladen.left.0.what = vehicle against its GVM
            unladen.left.0.value = 2733.5
            unladen.left.0.limit = 3500
            unladen.left.0.margin = 766.5
            unladen.left.0.holds = true
            unladen.left.0.limit-fact = vehicle.ratings.gvm
            loaded.total = 2973.5
            re-rating.highest-gvm = 3750
            re-rating.binding.0 = front axle
            towing.planned.vehicle = 2973.5
            towing.planned.trailer-axles = 2650
            towing.planned.trailer-alone = 2890
            towing.planned.ball = 240
            towing.planned.combination = 5623.5
            towing.planned.checks.0.what = vehicle against its GVM
            towing.weighed.vehicle = 3490
            towing.weighed.front = 1300
            towing.weighed.rear = 2190
            towing.weighed.trailer-alone = 3290
            towing.weighed.ball = 640
            towing.ball-by-trailer = 640
            towing.ball-by-vehicle = 640
            towing.ball-disagreement = 0
            towing.implied-overhang-mm = 445.3125
            towing.rated-towing-capacity = 3500
            towing.rated-towing-capacity-by = maker
            towing.cargo-left-by-gvm = 310
            towing.cargo-left-by-gcm = 860
            towing.down-rating.less = null
            trailer-against-vehicle.0.given = 2973.5
            trailer-against-vehicle.0.left = 3260
            trailer-against-vehicle.0.binding.0 = tow rating
            trailer-against-vehicle-re-rated.2.given = 3800
            rear-load-against-ball.0.given = 0
            failing.0.state = weighed
            failing.0.what = rear axle against its rating
            """
        );
        foreach (
            var key in new[]
            {
                "unladen.front",
                "unladen.rear",
                "re-rating.condition",
                "re-rating.why-gcm-stays",
                "re-rating.missing",
                "towing.planned.front",
                "towing.planned.rear",
                "towing.down-rating.advisory",
                "towing.down-rating.checks",
                "missing.0.fact",
                "missing.0.adds",
            }
        )
            At(masses, key).ShouldNotBeNull(key);
        var alone = Json(AssessmentJson.Write(Reckoned.Assess($$""" "vehicle": { {{Reckoned.Wagon}} } """))).GetProperty("masses");
        Told(
            alone,
            """
            loaded = null
            re-rating = null
            towing = null
            """
        );
        var planned = Json(
                AssessmentJson.Write(
                    Reckoned.Assess(
                        $$""" "vehicle": { {{Reckoned.Wagon}}, "down-rating": [ { "ball-up-to": "350 kg", "less": "100 kg" } ] },"""
                            + $$""" "trailer": { "mass": "2890 kg", "ball-load": "240 kg" } """
                    )
                )
            )
            .GetProperty("masses");
        Told(
            planned,
            """
            towing.weighed = null
            towing.down-rating.less = 100
            towing.down-rating.checks.0.limit = 3400
            """
        );
        Told(
            Json(AssessmentJson.Write(Reckoned.Assess(""" "trailer": { "mass": "2890 kg" } """))).GetProperty("masses"),
            "towing.down-rating = null"
        );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Heights_measured_and_expected()
    {
        var heights = Json(
                AssessmentJson.Write(
                    Reckoned.Assess(
                        """
                        "modification": { "body-lift": "20 mm" }, "measured": { "before": { "mass-state": "unladen", "front-left": "480 mm",
                        "front-right": "482 mm", "rear-left": "520 mm" },
                        "after": { "mass-state": "unladen", "front-left": "530 mm", "front-right": "531 mm", "rear-left": "560 mm" } }
                        """
                    )
                )
            )
            .GetProperty("heights");
        Told(
            heights,
            """
            suspension-lift = null
            suspension-lift-at-least = 29.5
            suspension-lift-at-most = null
            uncertainty = 5
            measured.refusal = null
            measured.correction = null
            measured.front.left = 50
            measured.front.right = 49
            measured.front.correction = 0
            measured.front.body-block = 20
            measured.front.suspension = 29.5
            measured.front.left-right = 1
            measured.front.uneven = false
            measured.rear = null
            assumption = null
            denied = null
            """
        );
        At(heights, "missing.0.fact").ShouldNotBeNull();
        var book = Stating(Tiers);
        var springs = Json(
                AssessmentJson.Write(
                    Assess(
                        book,
                        """
                        "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm",
                        "ball-behind-rear-axle": "1200 mm" },
                        "measured": { "weighbridge": { "front-alone": "1190 kg", "rear-alone": "1050 kg", "mass-state": "unladen" } },
                        "modification": { "suspension-lift": "70 mm", "springs": { "rear": { "wheel-rate": "98.0665 N/mm",
                        "height-gained": "80 mm", "at-axle-load": "1050 kg" } } }
                        """
                    )
                )
            )
            .GetProperty("heights");
        Told(
            springs,
            """
            suspension-lift-at-least = 80
            suspension-lift-at-most = 80
            denied.stated = 70
            denied.at-least = 80
            measured = null
            predicted.0.axle = rear
            predicted.0.lift = 80
            predicted.0.axle-load = 1050
            predicted.0.table.1.added = 50
            predicted.0.table.1.lift = 77.5
            predicted.0.mass-needed.0.pathway = no-certificate
            predicted.0.mass-needed.0.limit = 50
            predicted.0.mass-needed.0.on-axle = 600
            predicted.0.mass-needed.0.midway = 1200
            predicted.0.mass-needed.0.at-ball = 420
            """
        ); // 2 x 98.0665 N/mm carries 20 kg a mm: 30 mm are 600 kg on the axle, twice that midway, 600 x 2800 / 4000 at the ball
        foreach (var key in new[] { "derivation", "assumption" })
            At(springs, key).ShouldNotBeNull(key);
        Told(
            Json(AssessmentJson.Write(Assess(book, """ "modification": { "springs": { "front": { "wheel-rate": "30 N/mm" } } } """)))
                .GetProperty("heights"),
            "predicted.0.axle = front"
        );
        Told(
            Json(
                    AssessmentJson.Write(
                        Reckoned.Assess(
                            """ "measured": { "before": { "mass-state": "tare", "front-left": "480 mm", "front-right": "480 mm" },"""
                                + """ "after": { "mass-state": "tare", "front-left": "500 mm", "front-right": "530 mm" } } """
                        )
                    )
                )
                .GetProperty("heights"),
            """
            measured.front.uneven = true
            uneven.0.axle = front
            uneven.0.apart = 30
            """
        );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Tyres_speeds_and_the_road()
    {
        var tyres = Json(
                AssessmentJson.Write(
                    Reckoned.Assess(
                        $$"""
                        "vehicle": { {{Reckoned.Wagon}}, "category": "MC", "built": "2020", "tyres": [ "265/65R17 112S" ],
                          "track": "1600 mm", "centre-of-mass": "720 mm" },
                        "modification": { "tyres": "265/70R17 115S" }, "measured": { "clearance-midway": "90 mm" }
                        """
                    )
                )
            )
            .GetProperty("tyres");
        Told(
            tyres,
            """
            fitted = 265/70R17 115S
            growth.value = 28
            growth.unit = mm
            growth-percent.value = 3.608247
            growth-percent.unit = %
            tyre-lift.value = 14
            width-percent.value = 100
            front-capacity.value = 2430
            rear-capacity.value = 2430
            loads.0.value = 1650
            loads.0.limit = 2430
            load-index-needed.0.axle = front
            load-index-needed.0.rating = 1650
            load-index-needed.0.tyres = 2
            load-index-needed.0.load-index = 101
            load-index-needed.1.axle = rear
            speeds.0.condition = tyre-speed-kept
            speeds.0.symbol = S
            speeds.0.good-for = 180
            speeds.0.least = 140
            speeds.0.enough = yes
            speedometer.indicated = 100
            speedometer.true-before = 100
            speedometer.assumed-exact-before = true
            speedometer.true-after.value = 103.608247
            speedometer.rules.0.rule = new
            speedometer.rules.0.finding = reads-low
            speedometer.rules.0.largest-growth-percent = 0
            road.least-clearance-midway = 95
            road.clearance-midway.value = 90
            road.clearance-midway.least = 95
            road.clearance-midway.holds = false
            road.running-clearance = null
            road.stability-factor-before = 1.111111
            road.stability-factor-after = 1.089918
            missing.0.fact = vehicle.speedometer
            """
        );
        foreach (
            var key in new[] { "growth.derivation", "road.stability-caution", "road.sources", "speeds.0.sources", "speedometer.sources" }
        )
            At(tyres, key).ShouldNotBeNull(key);
        Told(
            Json(AssessmentJson.Write(Reckoned.Assess(""" "vehicle": { "tyres": [ "265/65R17 112S" ] } """))).GetProperty("tyres"),
            """
            fitted = null
            growth = null
            speedometer = null
            road.stability-factor-before = null
            road.stability-caution = null
            """
        );
        Enough("115M").ShouldBe("no"); // 130 km/h
        Enough("115H").ShouldBe("yes");

        static string? Enough(string marks) =>
            At(
                Json(
                    AssessmentJson.Write(
                        Reckoned.Assess(
                            $$""" "vehicle": { "category": "MC", "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17"""
                                + $$""" {{marks}}" } """
                        )
                    )
                ),
                "tyres.speeds.0.enough"
            );
    }
}
