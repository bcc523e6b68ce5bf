using System.Text.Json;
using RuleBook.Evaluation;
using RuleBook.Tests.Reckoning;
using static RuleBook.Tests.Evaluation.Scenario;

namespace RuleBook.Tests.Evaluation;

/// <summary>
/// The JSON says what the answer says, in the units of the data: each figure worked out by hand beside it (derived, on a scenario of our own).
/// </summary>
public sealed class JsonAnswerTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void A_verdict_its_findings_and_who_certifies()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", """ "adopts": { "rule": "au/ride-height/raise", "as-of": "2015-01-01" }, "note": "so" """)),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", $$"""
                {{Since("2011-06-01", """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } }, { "pathway": "certificate", "codes": [ "LS9" ], "provided": [ "travel-kept", "lane-change-test" ], "within": { "suspension-lift": "75 mm", "total-lift": "none", "body-lift": "not-established" }, "sources": [ { "cite": "account" } ] } ], "beyond": "prohibited" """)}}, {{Since("2030", Tiers)}}
                """))),
            ("jurisdictions/au-a/certification", """
                { "topic": "certification", "schemes": [ { "scheme": "e", "title": "Engineers", "versions": [ { "from": "2013", "certifier": "engineer", "appointed-by": "Office A", "decides": "certifier",
                  "issued": [ { "pathway": "certificate", "papers": [ "plate" ] } ], "steps": [ { "text": "first", "before-work": "yes", "pathways": "certificate" }, { "text": "then", "pathways": "certificate" } ],
                  "reregistering": "again", "not-established": [ "the fee" ], "sources": [ { "cite": "law", "clause": "7" } ] } ] } ] }
                """));
        var answer = Json(AssessmentJson.Write(Assess(book, """
            "job": "W-1", "modification": { "suspension-lift": "60 mm" }, "measured": { "uncertainty": { "suspension-lift": "20 mm" } }, "shown": { "travel-kept": "yes" }, "certifier": { "appointed-in": [ "au-b" ] }
            """)));
        Told(answer, """
            job = W-1
            verdict = undecided
            between.0 = certificate
            between.1 = prohibited
            jurisdiction = au-a
            on = 2026-11-25
            book = made
            measures.1.measure = suspension-lift
            measures.1.value = 60
            measures.1.unit = mm
            measures.1.derivation = 60 mm (stated)
            findings.0.rule = au-a/ride-height/raise
            findings.0.title = raise
            findings.0.from = 2012-01-01
            findings.0.until = null
            findings.0.in-force-is-certain = true
            findings.0.adopted.0.rule = au/ride-height/raise
            findings.0.adopted.0.as-of = 2015-01-01
            findings.0.adopted.0.kind = fixed
            findings.0.pathway = null
            findings.0.between.1 = prohibited
            findings.0.tier = certificate
            findings.0.codes.0 = LS9
            findings.0.limits.0.tier = certificate
            findings.0.limits.0.measure = suspension-lift
            findings.0.limits.0.value = 60
            findings.0.limits.0.kind = limit
            findings.0.limits.0.limit = 75
            findings.0.limits.0.bound = at-most
            findings.0.limits.0.unit = mm
            findings.0.limits.0.margin = 15
            findings.0.limits.0.guard-band = 20
            findings.0.limits.0.measurement = too-close-to-call
            findings.0.limits.0.holds = yes
            findings.0.limits.1.kind = none
            findings.0.limits.1.limit = null
            findings.0.limits.1.bound = null
            findings.0.limits.2.kind = not-established
            findings.0.limits.2.holds = unknown
            findings.0.exceeded.0.bound = under
            findings.0.exceeded.0.margin = -10
            findings.0.exceeded.0.holds = no
            findings.0.conditions.0.condition = travel-kept
            findings.0.conditions.0.state = met
            findings.0.conditions.1.state = to-show
            findings.0.indication = null
            findings.0.sources.0.cite = au-a/law
            findings.0.sources.0.read-as = primary
            findings.0.sources.0.checked = 2025-11-25
            findings.0.sources.1.cite = au/law
            findings.0.sources.2.cite = au/account
            findings.0.sources.2.read-as = secondary
            findings.0.notes.0 = so
            not-established.0.rule = au-a/ride-height/raise
            not-established.0.ask = Office A
            not-established.0.open = https://example.org/a
            masses = null
            heights = null
            tyres = null
            certification.scheme = Engineers
            certification.certifier = engineer
            certification.appointed-by = Office A
            certification.decides = certifier
            certification.issued.0 = plate
            certification.before-work.0 = first
            certification.before-work.1 = null
            certification.steps.1 = then
            certification.may-certify = no
            certification.reregistering = again
            certification.not-established.0 = the fee
            certification.sources.0.clause = 7
            cautions.0 = not legal advice
            """);
        At(answer, "certification.why")!.ShouldContain("not established");
        At(answer, "not-established.0.what")!.ShouldContain("body-lift");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_open_with_what_each_answer_gives_and_what_a_guideline_would()
    {
        var open = Json(AssessmentJson.Write(Assess(Stating(Tiers), Lift("unknown"))));
        Told(open, """
            verdict = undecided
            undecided.0.fact = modification.suspension-lift
            undecided.0.kind = measure
            undecided.0.gives.at most 50 mm = no-certificate
            undecided.0.gives.over 50 mm up to 75 mm = certificate
            undecided.0.gives.over 75 mm = prohibited
            certification = null
            """);
        var indicated = Book(
            Rule("raise", Since("2012-01-01", """ "not-established": { "ask": "Office A", "indication": "au/ride-height/raise" } """)),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers)))));
        Told(Json(AssessmentJson.Write([Assess(indicated, Lift("60 mm"))])), """
            0.findings.0.indication.rule = au/ride-height/raise
            0.findings.0.indication.between.0 = certificate
            0.findings.0.indication.between.1 = certificate
            0.findings.0.tier = null
            """);
        Told(Json(AssessmentJson.Write(Assess(Stating(""" "tiers": [ { "pathway": "no-certificate", "within": { "frame-height": { "over": "500 mm" } } } ], "beyond": "prohibited" """), """ "measured": { "frame-height": "600 mm" } """))), """
            verdict = no-certificate
            findings.0.limits.0.bound = over
            findings.0.limits.0.margin = 100
            """);
        Told(Json(AssessmentJson.Write(Assess(Stating(""" "tiers": [ { "pathway": "no-certificate", "within": { "frame-height": { "at-least": "500 mm" } } } ], "beyond": "prohibited" """), """ "measured": { "frame-height": "600 mm" } """))), "findings.0.limits.0.bound = at-least");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measure_known_only_on_one_side_is_told_by_its_ends() =>
        Told(Json(AssessmentJson.Write(Reckoned.Assess(""" "modification": { "tyre-diameter-growth": "28 mm" } """))), "measures.0 = null");

    [Fact]
    [Trait("Basis", "derived")]
    public void Masses_of_a_vehicle_and_its_trailer()
    {
        // 2650 kg and 100 L of diesel at 0.835 kg/L: 2733.5 kg; 240 kg on the ball: 2973.5 kg; with the trailer's axles 5623.5 kg.
        var masses = Json(AssessmentJson.Write(Reckoned.Assess($$"""
            "vehicle": { {{Reckoned.Wagon}}, "towbar": { "mass": "3300 kg" }, "down-rating": [ { "ball-up-to": "350 kg", "less": "100 kg" } ] },
            "modification": { "ratings": { "gvm": "3800 kg" } },
            "trailer": { "mass": "2890 kg", "ball-load": "240 kg", "braked": "yes" },
            "measured": { "weighbridge": { "front-alone": "1400 kg", "rear-alone": "1450 kg", "front-hitched": "1300 kg", "rear-hitched": "2190 kg", "trailer-axles": "2650 kg", "trailer-alone": "3290 kg" } }
            """))).GetProperty("masses");
        Told(masses, """
            unladen.total = 2733.5
            unladen.known = 2733.5
            unladen.lines.0.item = tare
            unladen.lines.0.mass = 2650
            unladen.lines.0.front = 1400
            unladen.lines.0.rear = 1250
            unladen.lines.1.mass = 83.5
            unladen.lines.1.total = 2733.5
            unladen.lines.1.derivation = 100 L x 0.835 kg/L
            unladen.left.0.what = vehicle against its GVM
            unladen.left.0.value = 2733.5
            unladen.left.0.limit = 3500
            unladen.left.0.margin = 766.5
            unladen.left.0.holds = true
            unladen.left.0.limit-fact = vehicle.ratings.gvm
            loaded.total = 2973.5
            re-rating.highest-gvm = 3750
            re-rating.binding.0 = sum of the axle ratings
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
            towing.rated-towing-capacity = 3200
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
            """);
        foreach (var key in new[] { "unladen.front", "unladen.rear", "re-rating.condition", "re-rating.why-gcm-stays", "re-rating.missing", "towing.planned.front", "towing.planned.rear", "towing.down-rating.advisory", "towing.down-rating.checks", "missing.0.fact", "missing.0.adds" })
            At(masses, key).ShouldNotBeNull(key);
        var alone = Json(AssessmentJson.Write(Reckoned.Assess($$""" "vehicle": { {{Reckoned.Wagon}} } """))).GetProperty("masses");
        Told(alone, """
            loaded = null
            re-rating = null
            towing = null
            """);
        var planned = Json(AssessmentJson.Write(Reckoned.Assess($$""" "vehicle": { {{Reckoned.Wagon}}, "down-rating": [ { "ball-up-to": "350 kg", "less": "100 kg" } ] }, "trailer": { "mass": "2890 kg", "ball-load": "240 kg" } """))).GetProperty("masses");
        Told(planned, """
            towing.weighed = null
            towing.down-rating.less = 100
            towing.down-rating.checks.0.limit = 3400
            """);
        Told(Json(AssessmentJson.Write(Reckoned.Assess(""" "trailer": { "mass": "2890 kg" } """))).GetProperty("masses"), "towing.down-rating = null");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Heights_measured_and_expected()
    {
        var heights = Json(AssessmentJson.Write(Reckoned.Assess("""
            "modification": { "body-lift": "20 mm" }, "measured": { "before": { "mass-state": "unladen", "front-left": "480 mm", "front-right": "482 mm", "rear-left": "520 mm" },
            "after": { "mass-state": "unladen", "front-left": "530 mm", "front-right": "531 mm", "rear-left": "560 mm" } }
            """))).GetProperty("heights");
        Told(heights, """
            suspension-lift = null
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
            note = null
            """);
        At(heights, "missing.0.fact").ShouldNotBeNull();
        var book = Stating(Tiers);
        var springs = Json(AssessmentJson.Write(Assess(book, """
            "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm", "ball-behind-rear-axle": "1200 mm" },
            "measured": { "weighbridge": { "front-alone": "1190 kg", "rear-alone": "1050 kg", "mass-state": "unladen" } },
            "modification": { "suspension-lift": "70 mm", "springs": { "rear": { "wheel-rate": "98.0665 N/mm", "height-gained": "80 mm", "at-axle-load": "1050 kg" } } }
            """))).GetProperty("heights");
        Told(springs, """
            suspension-lift = 80
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
            """); // 2 x 98.0665 N/mm carries 20 kg a mm: 30 mm are 600 kg on the axle, twice that midway, 600 x 2800 / 4000 at the ball
        foreach (var key in new[] { "derivation", "note", "assumption" }) At(springs, key).ShouldNotBeNull(key);
        Told(Json(AssessmentJson.Write(Assess(book, """ "modification": { "springs": { "front": { "wheel-rate": "30 N/mm" } } } """))).GetProperty("heights"), "predicted.0.axle = front");
        Told(Json(AssessmentJson.Write(Reckoned.Assess(""" "measured": { "before": { "mass-state": "tare", "front-left": "480 mm", "front-right": "480 mm" }, "after": { "mass-state": "tare", "front-left": "500 mm", "front-right": "530 mm" } } """))).GetProperty("heights"), "measured.front.uneven = true");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Tyres_speeds_and_the_road()
    {
        var tyres = Json(AssessmentJson.Write(Reckoned.Assess($$"""
            "vehicle": { {{Reckoned.Wagon}}, "category": "MC", "built": "2020", "tyres": [ "265/65R17 112S" ], "track": "1600 mm", "centre-of-mass": "720 mm" },
            "modification": { "tyres": "265/70R17 115S" }, "measured": { "clearance-midway": "90 mm" }
            """))).GetProperty("tyres");
        Told(tyres, """
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
            """);
        foreach (var key in new[] { "growth.derivation", "road.stability-caution", "road.sources", "speeds.0.sources", "speedometer.sources" }) At(tyres, key).ShouldNotBeNull(key);
        Told(Json(AssessmentJson.Write(Reckoned.Assess(""" "vehicle": { "tyres": [ "265/65R17 112S" ] } """))).GetProperty("tyres"), """
            fitted = null
            growth = null
            speedometer = null
            road.stability-factor-before = null
            road.stability-caution = null
            """);
        Enough("115M").ShouldBe("no"); // 130 km/h
        Enough("115H").ShouldBe("yes");

        static string? Enough(string marks) =>
            At(Json(AssessmentJson.Write(Reckoned.Assess($$""" "vehicle": { "category": "MC", "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17 {{marks}}" } """))), "tyres.speeds.0.enough");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Margins_and_the_sizes_that_fit()
    {
        var book = Stating(Tiers);
        book = book with { Reference = book.Reference with { TyreSizes = [Size("265/70R17")] } };
        var answer = Json(MarginJson.Write(MarginFinder.Find(book, Read(book, """
            "job": "W-2", "vehicle": { "tyres": [ "265/65R17 112S" ], "tare": "2000 kg", "ratings": { "gvm": "3000 kg", "gcm": "6000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg" } }, "modification": { "suspension-lift": "30 mm" },
            "measured": { "weighbridge": { "mass": "2100 kg", "mass-state": "unladen" } }
            """))));
        Told(answer, """
            job = W-2
            jurisdiction = au-a
            on = 2026-11-25
            book = made
            margins.0.measure = suspension-lift
            margins.0.unit = mm
            margins.0.now = 30
            margins.0.within.0.pathway = no-certificate
            margins.0.within.0.certain.kind = at-most
            margins.0.within.0.certain.value = 50
            margins.0.within.0.possible.kind = at-most
            payload.0.margin = 900
            trailer.0.limit = GCM less the vehicle as loaded
            trailer.0.alone = 3900
            sizes-tried = 1
            sizes.0.size = 265/70R17
            sizes.0.between.0 = no-certificate
            sizes.0.same-rim = true
            sizes.0.growth.value = 28
            sizes.0.growth-percent.value = 3.608247
            sizes.0.indicated = 100
            sizes.0.true-speed.value = 103.608247
            sizes.0.loads.0.axle = front
            sizes.0.loads.0.rating = 1450
            sizes.0.loads.0.load-index-needed = 97
            sizes.0.loads.0.load-index = 97
            sizes.0.loads.0.margin = 10
            sizes.0.loads.1.axle = rear
            cautions.0 = not legal advice
            """);
        foreach (var key in new[] { "size-sources", "missing.0.fact", "sizes.0.speedometer" }) At(answer, key).ShouldNotBeNull(key);
        var odd = Stating(""" "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } } ], "beyond": "prohibited" """);
        Told(Json(MarginJson.Write(MarginFinder.Find(odd, Read(odd, Lift("60 mm"))))), """
            margins.0.within.0.certain.kind = under
            margins.1.within.0.certain.kind = none
            margins.1.within.0.certain.value = null
            """);
        var free = Stating(""" "not-regulated": "no rule" """);
        Told(Json(MarginJson.Write(MarginFinder.Find(free, Read(free, Lift("60 mm"))))), "margins.0.within.0.certain.kind = no-limit");
    }

    private static RuleBook.Tyres.TyreSize Size(string size) => RuleBook.Tyres.TyreSize.Parse(size);

    private static JsonElement Json(string text)
    {
        text.ShouldEndWith("\n");
        return JsonDocument.Parse(text).RootElement;
    }

    private static void Told(JsonElement json, string lines)
    {
        foreach (var line in lines.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            var (path, value) = (line[..line.IndexOf(" = ", StringComparison.Ordinal)], line[(line.IndexOf(" = ", StringComparison.Ordinal) + 3)..]);
            At(json, path).ShouldBe(value == "null" ? null : value, path);
        }
    }

    /// <summary>The text at a path of keys and numbers of items; null where it is null or where a list ends before.</summary>
    private static string? At(JsonElement json, string path)
    {
        foreach (var key in path.Split('.'))
        {
            if (json.ValueKind == JsonValueKind.Array)
            {
                var index = int.Parse(key, System.Globalization.CultureInfo.InvariantCulture);
                if (index >= json.GetArrayLength()) return null;
                json = json[index];
            }
            else
            {
                json = json.GetProperty(key);
            }
        }

        return json.ValueKind switch
        {
            JsonValueKind.Null => null,
            JsonValueKind.String => json.GetString(),
            _ => json.GetRawText(),
        };
    }
}
