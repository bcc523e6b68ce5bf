using System.Text.Json.Nodes;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Telling;
using RuleBook.Tests.Answers;
using RuleBook.Text;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>Whole answers as a person reads them, written by hand beside jobs of our own; each figure is worked beside it.</summary>
[Trait("Basis", "derived")]
public sealed class WholeAnswerTests
{
    private const string Scheme = """
        { "topic": "certification", "schemes": [ { "scheme": "e", "title": "Engineers", "versions": [ { "from": "2013",
          "certifier": "engineer", "appointed-by": "Office A", "reregistering": "Inspect it.",
          "issued": [ { "pathway": "certificate", "papers": [ "report", "plate" ] } ], "steps": [ { "text": "inspect",
            "pathways": "certificate" }, { "text": "ask", "before-work": "yes", "pathways": "certificate" } ],
          "sources": [ { "cite": "law", "clause": "7" } ] } ] } ] }
        """;

    private static readonly Assessment Free = Assess(Stating(Tiers), Lift("40 mm"));

    /// <summary>60 mm are 10 mm over 50 mm and 15 mm under 75 mm, nearer to both than the 20 mm to which they were measured.</summary>
    [Fact]
    public void An_answer_tells_what_stands_in_the_way_what_holds_what_is_to_do_and_what_it_rests_on()
    {
        var book = Book(
            Rule("raise", $$"""{ "from": "2012-01-01", "sources": [ { "cite": "law", "clause": "4" } ], "note": "so ", {{Tiers}} }"""),
            ("jurisdictions/au-a/certification", Scheme)
        );
        All(
                Assess(
                    book,
                    """
                    "job": "W-1", "modification": { "suspension-lift": "60 mm", "guard-flare": "30 mm" },
                    "measured": { "uncertainty": { "suspension-lift": "20 mm" } }, "shown": { "travel-kept": "yes" }
                    """
                )
            )
            .ShouldBe([
                "NOT AS PLANNED: not judged, no rule in the book speaks of it: guard-flare.",
                "The modification itself: allowed with a certificate, but too close to call: suspension-lift 60 mm, limit 75 mm: 15 mm "
                    + "left, measured to within 20 mm. State A, 25 November 2026.",
                "Job W-1. Judged by the rules of State A (au-a) as on 25 November 2026.",
                "What stands in the way, whatever the pathway:",
                "x  not judged: no rule in the book speaks of the guard-flare",
                "- ask: Office A",
                "raise: allowed with a certificate:",
                " allowed with a certificate:",
                "ok suspension-lift 60 mm, limit 75 mm: 15 mm left",
                "ok total-lift 60 mm, limit 150 mm: 90 mm left",
                " why not allowed without a certificate:",
                "x  suspension-lift 60 mm, limit 50 mm: 10 mm too much",
                "so",
                "au-a/ride-height/raise, in force from 2012-01-01",
                "Too close to call: the measurement cannot tell which side of the limit it is:",
                "!  suspension-lift 60 mm, limit 75 mm: 15 mm left (allowed with a certificate); measured to within 20 mm",
                "!  suspension-lift 60 mm, limit 50 mm: 10 mm too much (allowed without a certificate); measured to within 20 mm",
                "To be shown at the inspection:",
                "[x] travel kept",
                "[ ] test",
                "Who certifies: Engineers:",
                "- engineer, appointed by Office A",
                "- issued: report, plate",
                "- inspect",
                "- before the work: ask",
                "How the figures follow:",
                "- suspension-lift 60 mm: 60 mm (stated)",
                "- total-lift 60 mm: suspension-lift 60 + body-lift 0 + tyre-lift 0 = 60 mm",
                "Sources:",
                "- law, 4 (p; the authority's own text; checked 2025-11-25)",
                "Bear in mind:",
                "- not legal advice",
                "Book made",
            ]);
    }

    [Fact]
    public void What_is_open_is_told_with_what_each_answer_gives_and_what_nobody_established_with_whom_to_ask()
    {
        var book = Book(
            $"{Rule("raise", Since("2012-01-01", Tiers))}, "
                + Rule("raise-too", Since("2012-01-01", """ "not-established": { "ask": "Office C.", "open": "https://example.org/c" } """))
                + ", "
                + Rule("raise-free", Since("2012-01-01", """ "not-regulated": " no such rule " """))
        );
        var answer = Assess(book, Lift("unknown")) with { Warnings = [Problem.Warning("w", new Mark("job", 3, 1), "mind it", "look")] };
        All(answer)
            .Skip(2)
            .TakeWhile(line => line != "raise: from allowed without a certificate to not allowed:")
            .ShouldBe([
                "Judged by the rules of State A (au-a) as on 25 November 2026.",
                "!  job:3:1: mind it (look)",
                "What is missing, and what it would change:",
                "? modification.suspension-lift",
                "- at most 50 mm: from allowed without a certificate to not allowed",
                "- over 50 mm up to 75 mm: from allowed with a certificate to not allowed",
                "- over 75 mm: not allowed",
                "What nobody has established, and whom to ask:",
                "? nobody has established the limits for raise-too (au-a/ride-height/raise-too)",
                "- ask: Office C.; open: https://example.org/c",
            ]);
        All(answer).ShouldContain("? nobody has established the limits");
        All(answer).ShouldContain("- not regulated: no such rule");
        const string Noted =
            """ "tiers": [ { "pathway": "certificate", "note": " mind it ", "within": { "suspension-lift": "75 mm" } } ] """;
        All(Assess(Stating($"{Noted}, \"beyond\": \"prohibited\""), Lift("60 mm"))).ShouldContain("mind it");
    }

    [Fact]
    public void What_one_has_to_know_beside_the_verdict_is_a_line_each()
    {
        CategoryBounds heavy = new("NB1", null, 3500, null, null, null, []);
        Beside(Free with { Category = new CategoryChange("NA", [heavy], 4000) })
            .ShouldBe(["Re-rated to 4000 kg the vehicle is no longer NA but NB1 (a GVM over 3500 kg): judged as NB1."]);
        Beside(Free with { Category = new CategoryChange("MC", [heavy, heavy with { Category = "MD" }], 4000) })
            .ShouldBe(["Re-rated to 4000 kg the vehicle is no longer MC but NB1 or MD: the seats would tell which."]);
        Beside(Free with { Foremost = ["first", "second"] }).ShouldBe(["first", "second"]);
        Beside(
                With(tyres =>
                    tyres with
                    {
                        Loads =
                        [
                            new LoadCheck("front-axle-tyres", "front", 1650, 1500, "t"),
                            new LoadCheck("rear-axle-tyres", "rear", 1400, 1500, "t"),
                            new LoadCheck("gvm-tyres", "all", 3500, 3000, "t"),
                        ],
                    }
                )
            )
            .ShouldBe([
                "Tyres fitted carry less than the vehicle is rated for: front 1500 of 1650 kg, all together 3000 of 3500 kg; load no "
                    + "further than they carry.",
            ]);
        Beside(
                With(tyres =>
                    tyres with
                    {
                        Road = tyres.Road with { Midway = new LengthCheck(90, 95), Running = new LengthCheck(80, 100) },
                    }
                )
            )
            .ShouldBe(["Too little clearance: midway between the axles 90 of at least 95 mm; running 80 of at least 100 mm."]);
        Beside(With(tyres => tyres with { Road = tyres.Road with { Midway = new LengthCheck(95, 95) } })).ShouldBeEmpty();
        Beside(With(tyres => tyres with { Fitted = TyreSize.Parse("265/70R17"), NotCompared = ["load index", "speed symbol"] }))
            .ShouldBe(["Tyres not held against the placard's by load index and speed symbol: not stated of each."]);
        Beside(With(tyres => tyres with { Fitted = null, NotCompared = ["section width", "load index", "speed symbol"] }))
            .ShouldBe(["Width, load and speed of the tyres fitted not judged: their size is not stated."]);
        Beside(With(tyres => tyres with { Missing = [new MissingFact("vehicle.wheelbase", "it")] }))
            .ShouldBe(["Clearance midway between the axles not judged: the wheelbase is not stated."]);
        Beside(With(tyres => tyres with { Speedometer = Speedometer(true, SpeedometerFinding.Within, SpeedometerFinding.ReadsLow) }))
            .ShouldBe(["Speedometer would read low if exact before (rule 2): have it checked."]);
        Beside(With(tyres => tyres with { Speedometer = Speedometer(false, SpeedometerFinding.ReadsHigh, SpeedometerFinding.ReadsHigh) }))
            .ShouldBe(["Speedometer reads too high with these tyres (rule 1, rule 2): have it checked."]);
        Beside(With(tyres => tyres with { Speedometer = Speedometer(true, SpeedometerFinding.Within, SpeedometerFinding.NotCovered) }))
            .ShouldBeEmpty();
        FirstLines
            .Of(
                Free with
                {
                    Warnings =
                    [
                        .. ((string[])["one", "two", "three"]).Select(each => Problem.Warning(each, new Mark("job", 3, 1), each, "")),
                    ],
                }
            )
            .Skip(1)
            .ShouldBe(["Check the job: one (job:3:1).", "Check the job: two (job:3:1)."]);

        static IEnumerable<string> Beside(Assessment answer) => FirstLines.Beside(answer);
    }

    [Fact]
    public void Across_the_states_the_day_the_mark_of_registration_and_what_a_move_asks_are_told()
    {
        var book = Book(Rule("raise", Since("2012-01-01", Tiers)), ("jurisdictions/au-a/certification", Scheme));
        var here = Assess(book, """ "job": "W-1", "modification": { "suspension-lift": "80 mm" } """);
        var there = here with
        {
            Jurisdiction = "au-b",
            JurisdictionName = "State B",
            Gaps = [new Gap("au-b/r", "the fee", "Office B", null)],
            Certification = null,
            Cautions = ["a", "b", "c"],
        };
        var other = there with { Jurisdiction = "au-c", JurisdictionName = "State Cc", Gaps = [] };
        var page = new Told();
        AcrossText.Write(page, [here with { Cautions = ["a", "b", "c"] }, there, other], "au-a");
        page.Lines.ShouldBe([
            "Job W-1, as on 25 November 2026",
            "* State A|not allowed",
            "  State B|not allowed",
            "  State Cc|not allowed",
            "* state of registration: its rules decide. The other lines: if the registration moved there.",
            "Everywhere:",
            "- suspension-lift 80 mm, limit 75 mm: 5 mm too much",
            "What differs:",
            "- State B: the fee",
            "If the registration moves:",
            "- State B, State Cc: what re-registering a modified vehicle asks for is not established; ask first",
            "Bear in mind:",
            "- b",
            "- c",
        ]);
        page = new Told();
        AcrossText.Write(page, [here, there], "au-b");
        page.Lines.ShouldContain("- State A: Inspect it.");
    }

    [Fact]
    public void Limits_in_force_are_told_with_for_whom_they_are_and_how_each_is_known()
    {
        var book = Book(
            $$"""
            { "rule": "raise", "title": "Raising", "for": { "category": "MC" }, "versions": [ { "from": "2012-01-01", "warning-only": "yes",
              "sources": [ { "cite": "law", "clause": "4", "carries": [ "from", "no-certificate" ] } ],
              "measured": { "mass-state": "unladen" }, "beyond": "prohibited",
              "tiers": [
                { "pathway": "no-certificate", "codes": [ "LS9" ], "provided": [ "travel-kept" ],
                  "when": { "stability-control": "no", "frame-height": { "over": "400 mm" } },
                  "within": { "suspension-lift": { "at-least": "-2 in", "under": "50 mm" }, "body-lift": "none" } },
                { "pathway": "certificate", "within": { "total-lift": "not-established" } } ] } ] },
            {{Rule("raise-too", Since("2012-01-01", """ "not-established": { "ask": "Office C" } """))}},
            {{Rule("raise-free", Since("2012-01-01", """ "not-regulated": "none" """))}},
            {{Rule("raise-open", Since("2012-01-01", """ "tiers": [ ], "beyond": "not-established" """))}}
            """
        );
        var place = book.Jurisdiction("au-a")!;
        var day = Made.Day("2026-11-25");
        var json = JsonNode.Parse(LimitsJson.Write(book, place, day, place.Rules.SelectMany(rule => Resolver.Resolve(book, rule, day))))!;
        var rules = json["rules"]!.AsArray();
        rules.Count.ShouldBe(4);
        string Also(int at, string key) => rules[at]![key]?.ToJsonString() ?? "null";
        (Also(1, "says"), Also(1, "ask"), Also(1, "beyond"), Also(1, "tiers")).ShouldBe(
            ("\"not-established\"", "\"Office C\"", "null", "[]")
        );
        (Also(2, "says"), Also(2, "ask"), Also(2, "beyond")).ShouldBe(("\"not-regulated\"", "null", "null"));
        (Also(3, "says"), Also(3, "beyond")).ShouldBe(("\"limits\"", "\"not-established\""));
        json["rules"] = new JsonArray(rules[0]!.DeepClone());
        json.ToJsonString()
            .ShouldBe(
                JsonNode
                    .Parse(
                        """
                        { "jurisdiction": "au-a", "on": "2026-11-25", "book": "made", "edition": null, "rules": [ {
                          "rule": "au-a/ride-height/raise", "topic": "ride-height", "title": "Raising",
                          "for": [ { "fact": "category", "one-of": [ "MC" ] } ],
                          "from": "2012-01-01", "until": null, "warning-only": true, "adopted": [], "mass-state": "unladen",
                          "measured": { "between": [], "mass-state": "unladen", "total": [], "note": null },
                          "says": "limits", "tiers": [
                            { "tier": "no-certificate", "pathway": "no-certificate",
                              "when": [
                                { "fact": "stability-control", "one-of": [ "no" ] },
                                { "fact": "frame-height", "one-of": [], "over": 400, "at-most": null, "unit": "mm" } ],
                              "limits": [
                                { "measure": "suspension-lift", "kind": "limit", "at-least": -50.8, "under": 50, "unit": "mm",
                                  "standing": "primary", "cite": "au-a/law" },
                                { "measure": "body-lift", "kind": "no-limit", "at-least": null, "at-most": null, "unit": "mm",
                                  "standing": "primary", "cite": "au-a/law" } ],
                              "provided": [ "travel-kept" ], "codes": [ "LS9" ] },
                            { "tier": "certificate", "pathway": "certificate", "when": [],
                              "limits": [
                                { "measure": "total-lift", "kind": "not-established", "at-least": null, "at-most": null, "unit": "mm",
                                  "standing": "no-source", "cite": null } ],
                              "provided": [], "codes": [] } ],
                          "beyond": "prohibited", "ask": null,
                          "sources": [ { "cite": "au-a/law", "title": "law", "clause": "4", "read-as": "primary", "checked": "2025-11-25",
                            "carries": [ "from", "no-certificate" ], "url": null } ] } ] }
                        """
                    )!
                    .ToJsonString()
            );
    }

    [Fact]
    public void A_figure_is_drawn_with_what_it_says_beside_its_limit()
    {
        DrawnFigure
            .Margin(Free)
            .ShouldBe(new DrawnFigure("suspension-lift", "", 40, 50, "40 of 50 mm", "10 mm left", false, Known.Exactly));
        DrawnFigure
            .Margin(Assess(Stating(Tiers), Lift("80 mm")))
            .ShouldBe(new DrawnFigure("suspension-lift", "", 80, 75, "80 of 75 mm", "5 mm too much", true, Known.Exactly));
        DrawnFigure.Margin(Assess(Stating(Tiers), Lift("unknown"))).ShouldBeNull();
        LoadCheck Load(int value, Known known, int limit = 1000) => new("gvm", "vehicle", value, limit, $"{value}") { Known = known };
        var masses = new MassAnswer(
            new MassBudget(
                MassState.Unladen,
                [],
                [Load(900, Known.Exactly), Load(910, Known.AtLeast), Load(920, Known.AtMost), Load(1100, Known.AtLeast), Load(5, 0, 0)],
                []
            ),
            null,
            null,
            null,
            []
        );
        DrawnFigure
            .Loads(masses)
            .ShouldBe([
                new DrawnFigure("GVM", "unladen", 900, 1000, "900 of 1000 kg", "100 kg left", false, Known.Exactly),
                new DrawnFigure("GVM", "unladen", 910, 1000, "at least 910 of 1000 kg", "at most 90 kg left", false, Known.AtLeast),
                new DrawnFigure("GVM", "unladen", 920, 1000, "at most 920 of 1000 kg", "at least 80 kg left", false, Known.AtMost),
                new DrawnFigure("GVM", "unladen", 1100, 1000, "at least 1100 of 1000 kg", "at least 100 kg over", true, Known.AtLeast),
            ]);
    }

    private static Assessment With(Func<TyreAnswer, TyreAnswer> change) =>
        Free with
        {
            Tyres = change(
                new TyreAnswer(null, null, new TyreCapacity(new DerivedFigure(1, ""), new DerivedFigure(1, ""), ""), [], [], [])
            ),
        };

    private static SpeedometerAnswer Speedometer(bool assumed, params SpeedometerFinding[] findings) =>
        new(
            100,
            100,
            assumed,
            new DerivedFigure(100, ""),
            [
                .. findings.Select(
                    (finding, at) =>
                        new SpeedometerCheck(new NamedSpeedometerRule($"rule {at + 1}", new SpeedometerRule(0, 10, 4)), finding, 5, null)
                ),
            ],
            []
        );

    private static IReadOnlyList<string> All(Assessment answer) => FixedWordsTests.All(answer);
}
