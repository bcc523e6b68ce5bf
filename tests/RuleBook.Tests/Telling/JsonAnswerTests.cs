using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Telling;
using RuleBook.Tests.Figures;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>
/// The JSON says what the answer says, in the units of the data: each figure worked out by hand beside it (derived, on a scenario of our
/// own).
/// </summary>
public sealed partial class JsonAnswerTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void A_verdict_its_findings_and_who_certifies()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", """ "adopts": { "rule": "au/ride-height/raise", "as-of": "2015-01-01" }, "note": "so" """)),
            (
                "jurisdictions/au/ride-height",
                Topic(
                    "ride-height",
                    Rule(
                        "raise",
                        $$"""
                        {{Since(
                            "2011-06-01",
                            """
                            "tiers": [
                              { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } },
                              {
                                "pathway": "certificate", "codes": [ "LS9" ], "provided": [ "travel-kept", "lane-change-test" ],
                                "within": { "suspension-lift": "75 mm", "total-lift": "none", "body-lift": "not-established" },
                                "sources": [ { "cite": "account" } ]
                              }
                            ],
                            "beyond": "prohibited"
                            """
                        )}}, {{Since("2030", Tiers)}}
                        """
                    )
                )
            ),
            (
                "jurisdictions/au-a/certification",
                """
                { "topic": "certification", "schemes": [ { "scheme": "e", "title": "Engineers", "versions": [ { "from": "2013",
                  "certifier": "engineer", "appointed-by": "Office A", "decides": "certifier",
                  "issued": [ { "pathway": "certificate", "papers": [ "plate" ] } ], "steps": [ { "text": "first", "before-work": "yes",
                    "pathways": "certificate" }, { "text": "then", "pathways": "certificate" } ],
                  "reregistering": "again", "not-established": [ "the fee" ], "sources": [ { "cite": "law", "clause": "7" } ] } ] } ] }
                """
            )
        );
        var answer = Json(
            AssessmentJson.Write(
                Assess(
                    book,
                    """
                    "job": "W-1", "modification": { "suspension-lift": "60 mm" },
                    "measured": { "uncertainty": { "suspension-lift": "20 mm" } },
                    "shown": { "travel-kept": "yes" }, "certifier": { "appointed-in": [ "au-b" ] }
                    """
                )
            )
        );
        Told(
            answer,
            """
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
            certification.may-certify = not-established
            certification.reregistering = again
            certification.not-established.0 = the fee
            certification.sources.0.clause = 7
            cautions.0 = not legal advice
            """
        );
        At(answer, "certification.why")!.ShouldContain("not established");
        At(answer, "not-established.0.what")!.ShouldContain("body-lift");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_open_with_what_each_answer_gives_and_what_a_guideline_would()
    {
        var open = Json(AssessmentJson.Write(Assess(Stating(Tiers), Lift("unknown"))));
        Told(
            open,
            """
            verdict = undecided
            undecided.0.fact = modification.suspension-lift
            undecided.0.kind = measure
            undecided.0.gives.at most 50 mm = no-certificate
            undecided.0.gives.over 50 mm up to 75 mm = certificate
            undecided.0.gives.over 75 mm = prohibited
            certification = null
            """
        );
        var indicated = Book(
            Rule("raise", Since("2012-01-01", """ "not-established": { "ask": "Office A", "indication": "au/ride-height/raise" } """)),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers))))
        );
        Told(
            Json(AssessmentJson.Write([Assess(indicated, Lift("60 mm"))], "au-a")),
            """
            answers.0.findings.0.indication.rule = au/ride-height/raise
            answers.0.findings.0.indication.between.0 = certificate
            answers.0.findings.0.indication.between.1 = certificate
            answers.0.findings.0.tier = null
            """
        );
        Told(
            Json(
                AssessmentJson.Write(
                    Assess(
                        Stating(
                            """ "tiers": [ { "pathway": "no-certificate", "within": { "frame-height": { "over": "500 mm" } } } ],"""
                                + """ "beyond": "prohibited" """
                        ),
                        """ "measured": { "frame-height": "600 mm" } """
                    )
                )
            ),
            """
            verdict = no-certificate
            findings.0.limits.0.bound = over
            findings.0.limits.0.margin = 100
            """
        );
        Told(
            Json(
                AssessmentJson.Write(
                    Assess(
                        Stating(
                            """ "tiers": [ { "pathway": "no-certificate", "within": { "frame-height": { "at-least": "500 mm" } } }"""
                                + """ ], "beyond": "prohibited" """
                        ),
                        """ "measured": { "frame-height": "600 mm" } """
                    )
                )
            ),
            "findings.0.limits.0.bound = at-least"
        );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measure_known_only_on_one_side_is_told_by_its_ends() =>
        Told(Json(AssessmentJson.Write(Reckoned.Assess(""" "modification": { "tyre-diameter-growth": "28 mm" } """))), "measures.0 = null");

    [Fact]
    [Trait("Basis", "derived")]
    public void Margins_and_the_sizes_that_fit()
    {
        var book = Stating(Tiers);
        book = book with { Reference = book.Reference with { TyreSizes = [Size("265/70R17")] } };
        var answer = Json(
            MarginJson.Write(
                MarginFinder.Find(
                    book,
                    Read(
                        book,
                        """
                        "job": "W-2", "vehicle": { "tyres": [ "265/65R17 112S" ], "tare": "2000 kg", "ratings": { "gvm": "3000 kg",
                        "gcm": "6000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg" } },
                        "modification": { "suspension-lift": "30 mm" },
                        "measured": { "weighbridge": { "mass": "2100 kg", "mass-state": "unladen" } }
                        """
                    )
                )
            )
        );
        Told(
            answer,
            """
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
            """
        );
        foreach (var key in new[] { "size-sources", "missing.0.fact", "sizes.0.speedometer" })
            At(answer, key).ShouldNotBeNull(key);
        var odd = Stating(
            """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } } ], "beyond":"""
                + """ "prohibited" """
        );
        Told(
            Json(MarginJson.Write(MarginFinder.Find(odd, Read(odd, Lift("60 mm"))))),
            """
            margins.0.within.0.certain.kind = under
            margins.1.within.0.certain.kind = none
            margins.1.within.0.certain.value = null
            """
        );
        var free = Stating(""" "not-regulated": "no rule" """);
        Told(Json(MarginJson.Write(MarginFinder.Find(free, Read(free, Lift("60 mm"))))), "margins.0.within.0.certain.kind = no-limit");
    }

    private static RuleBook.Physics.Tyres.TyreSize Size(string size) => RuleBook.Physics.Tyres.TyreSize.Parse(size);

    private static JsonElement Json(string text)
    {
        text.ShouldEndWith("\n");
        return JsonDocument.Parse(text).RootElement;
    }

    private static void Told(JsonElement json, string lines)
    {
        foreach (var line in lines.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            var (path, value) = (
                line[..line.IndexOf(" = ", StringComparison.Ordinal)],
                line[(line.IndexOf(" = ", StringComparison.Ordinal) + 3)..]
            );
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
                if (index >= json.GetArrayLength())
                    return null;
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
