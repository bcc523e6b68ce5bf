using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Tables;

/// <summary>
/// What is not known is asked for only where it can change the verdict (supervaluation: true under every completion). Derived, on limits of
/// a scenario of our own.
/// </summary>
public sealed class UndecidedTests
{
    private const string ByStability = """
        "tiers": [ { "pathway": "no-certificate", "when": { "stability-control": "no" }, "within": { "suspension-lift": "50 mm" } },
                   { "pathway": "certificate", "within": { "suspension-lift": "75 mm" } } ], "beyond": "prohibited"
        """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_fact_that_changes_the_verdict_is_asked_for_with_what_each_answer_gives()
    {
        var answer = Assess(Stating(ByStability), Lift("40 mm"));
        answer.Between.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Certificate));
        var effect = answer.Undecided.ShouldHaveSingleItem();
        (effect.Opening.Name, effect.Opening.Kind).ShouldBe(("vehicle.stability-control", OpeningKind.Word));
        effect.Merged().ShouldBe([("yes", One(Pathway.Certificate)), ("no", One(Pathway.NoCertificate))]);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("60 mm", Pathway.Certificate)]
    [InlineData("80 mm", Pathway.Prohibited)]
    public void A_fact_that_cannot_change_it_is_not_asked_for(string lift, Pathway verdict) =>
        Assess(Stating(ByStability), Lift(lift))
            .ShouldSatisfyAllConditions(answer => answer.Verdict.ShouldBe(verdict), answer => answer.Undecided.ShouldBeEmpty());

    [Fact]
    [Trait("Basis", "derived")]
    public void Two_tiers_that_together_cover_every_vehicle_leave_nothing_to_ask()
    {
        // Whatever the answer, one of the two tiers is open: three-valued logic alone would not see it.
        var book = Stating(
            """
            "tiers": [ { "name": "with", "pathway": "certificate", "when": { "stability-control": "yes" },
            "within": { "suspension-lift": "50 mm" } },
                       { "name": "without", "pathway": "certificate", "when": { "stability-control": "no" },
                       "within": { "suspension-lift": "60 mm" } } ], "beyond": "prohibited"
            """
        );
        Assess(book, Lift("40 mm")).Verdict.ShouldBe(Pathway.Certificate);
        Assess(book, Lift("55 mm")).Between.ShouldBe(new Outcome(Pathway.Certificate, Pathway.Prohibited));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measure_that_is_unknown_is_told_by_the_stretches_on_which_the_verdict_stays_the_same()
    {
        var effect = Assess(Stating(Tiers), Lift("unknown")).Undecided.ShouldHaveSingleItem();
        effect.Opening.Name.ShouldBe("modification.suspension-lift");
        effect
            .Merged()
            .ShouldBe([
                ("at most 50 mm", One(Pathway.NoCertificate)),
                ("over 50 mm up to 75 mm", One(Pathway.Certificate)),
                ("over 75 mm", One(Pathway.Prohibited)),
            ]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_edge_of_the_total_falls_on_the_part_that_is_unknown_with_the_known_parts_taken_off()
    {
        // 75 mm in all, 20 of body and 14 of tyre: 41 mm of suspension without a certificate; 75 mm with one by its own limit (150 - 34 =
        // 116 is more).
        var effect = Assess(
            Stating(Tiers),
            """ "modification": { "suspension-lift": "unknown", "body-lift": "20 mm", "tyre-diameter-growth": "28 mm" } """
        )
            .Undecided.ShouldHaveSingleItem();
        effect.Merged().Select(each => each.Label).ShouldBe(["at most 41 mm", "over 41 mm up to 75 mm", "over 75 mm"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_edge_of_the_tyres_share_is_twice_as_far_on_its_growth()
    {
        var book = Stating(
            """ "tiers": [ { "pathway": "no-certificate", "within": { "tyre-lift": "25 mm" } } ], "beyond": "prohibited" """
        );
        Assess(book, """ "modification": { "tyre-diameter-growth": "unknown" } """)
            .Undecided.ShouldHaveSingleItem()
            .Merged()
            .Select(each => each.Label)
            .ShouldBe(["at most 50 mm", "over 50 mm"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_open_end_belongs_to_the_harder_side()
    {
        var book = Stating(
            """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } } ], "beyond":"""
                + """ "prohibited" """
        );
        Assess(book, Lift("unknown"))
            .Undecided.ShouldHaveSingleItem()
            .Merged()
            .Select(each => each.Label)
            .ShouldBe(["under 50 mm", "at least 50 mm"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Inside_the_month_of_a_change_both_versions_are_tried_and_the_answer_stands_where_they_agree()
    {
        var book = Book(
            Rule(
                "raise",
                $$"""{{Since("2012-01-01", Tiers)}}, """
                    + Since(
                        "2026-11",
                        """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "30 mm" } } ], """
                            + """ "beyond": "prohibited" """
                    )
            )
        );
        Assess(book, Lift("20 mm"))
            .ShouldSatisfyAllConditions(
                answer => answer.Verdict.ShouldBe(Pathway.NoCertificate),
                answer => answer.Findings.Length.ShouldBe(2)
            );
        var open = Assess(book, Lift("40 mm"));
        open.Findings.ShouldAllBe(finding => !finding.Certain);
        var effect = open.Undecided.ShouldHaveSingleItem();
        (effect.Opening.Name, effect.Opening.Kind).ShouldBe(("au-a/ride-height/raise", OpeningKind.Version));
        effect
            .Merged()
            .ShouldBe([
                ("in force from 2012-01-01 until 2026-11", One(Pathway.NoCertificate)),
                ("in force from 2026-11", One(Pathway.Prohibited)),
            ]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_a_version_of_unknown_start_it_is_said_that_nothing_else_is_known()
    {
        var book = Book(Rule("raise", $$"""{ "from": "unknown", "in-force-by": "2026-12", {{Cited}}, {{Tiers}} }"""));
        Assess(book, Lift("80 mm"))
            .Undecided.ShouldHaveSingleItem()
            .Merged()
            .Select(each => each.Label)
            .ShouldBe(["in force before 2026-12", "in force since an unknown day"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicle_of_unknown_kind_may_be_bound_by_a_rule_or_by_none()
    {
        var book = Book(Rule("raise", Since("2012-01-01", Tiers), """ "for": { "category": "MC" },"""));
        Assess(book, Lift("60 mm") + """, "vehicle": { "category": "MC" } """).Verdict.ShouldBe(Pathway.Certificate);
        Assess(book, Lift("60 mm") + """, "vehicle": { "category": "NA" } """)
            .ShouldSatisfyAllConditions(
                answer => answer.Between.ShouldBe(Outcome.Open),
                answer => answer.Findings.ShouldBeEmpty(),
                answer => answer.Gaps.ShouldHaveSingleItem().Rule.ShouldBe("ride-height")
            );
        Assess(book, Lift("60 mm"))
            .Undecided.ShouldHaveSingleItem()
            .Merged()
            .ShouldBe([("MC", One(Pathway.Certificate)), ("NA", Outcome.Open)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void More_unknowns_than_can_be_tried_leave_the_verdict_wider_and_never_wrong()
    {
        var facts = string.Join(
            ", ",
            Enumerable
                .Range(1, 40)
                .Select(i =>
                    $$"""{ "pathway": "no-certificate", "within": { "suspension-lift": "{{i}} mm", "body-lift": "{{i}} mm","""
                    + $$""" "tyre-diameter-growth": "{{i}} mm" } }"""
                )
        );
        var answer = Assess(
            Stating($$""" "tiers": [ {{facts}} ], "beyond": "prohibited" """),
            """ "modification": { "suspension-lift": "unknown", "body-lift": "unknown", "tyre-diameter-growth": "unknown" } """
        );
        answer.Between.ShouldBe(Outcome.Open);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(
        """{ "from": "2012-01-01", SOURCES, "not-established": { "ask": "Office A", "open": "the notice" } }""",
        "nobody has established the limits for raise",
        "the notice"
    )]
    [InlineData("""{ "from": "2027-01-01", SOURCES, "not-regulated": "no rule" }""", "nothing is recorded for that day on raise", null)]
    [InlineData(
        """{ "from": "2012-01-01", SOURCES, "tiers": [ { "pathway": "certificate", "within": { "suspension-lift":"""
            + """ "not-established" } } ], "beyond": "prohibited" }""",
        "nobody has established which suspension-lift is allowed with a certificate",
        "https://example.org/a"
    )]
    [InlineData(
        """{ "from": "2012-01-01", SOURCES, "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "30 mm" } } ],"""
            + """ "beyond": "not-established" }""",
        "nobody has established what holds beyond the limits for raise",
        "https://example.org/a"
    )]
    public void What_nobody_has_established_is_named_with_whom_to_ask(string version, string what, string? open)
    {
        var answer = Assess(Book(Rule("raise", version.Replace("SOURCES", Cited))), Lift("40 mm"));
        answer.Verdict.ShouldBeNull();
        answer.Gaps.ShouldHaveSingleItem().ShouldBe(new Gap("au-a/ride-height/raise", what, "Office A", open));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_not_established_but_cannot_matter_any_more_is_not_named()
    {
        var book = Book(
            Rule(
                "raise",
                Since(
                    "2012-01-01",
                    """ "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "not-established" } } ], "beyond":"""
                        + """ "prohibited" """
                )
            ),
            (
                "jurisdictions/au-a/wheels",
                Topic(
                    "wheels",
                    Rule(
                        "track",
                        Since(
                            "2012-01-01",
                            """ "tiers": [ { "pathway": "certificate", "within": { "track-increase": "50 mm" } } ], "beyond":"""
                                + """ "prohibited" """
                        )
                    )
                )
            )
        );
        Assess(book, """ "modification": { "suspension-lift": "40 mm", "track-increase": "60 mm" } """)
            .ShouldSatisfyAllConditions(answer => answer.Verdict.ShouldBe(Pathway.Prohibited), answer => answer.Gaps.ShouldBeEmpty());
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_the_nations_guideline_would_give_is_an_indication_and_never_the_verdict()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", """ "not-established": { "ask": "Office A", "indication": "au/ride-height/raise" } """)),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers))))
        );
        var answer = Assess(book, Lift("60 mm"));
        answer.Verdict.ShouldBeNull();
        answer.Findings.ShouldHaveSingleItem().Indication.ShouldBe(new Indication("au/ride-height/raise", One(Pathway.Certificate)));
    }

    private static Outcome One(Pathway pathway) => new(pathway, pathway);
}
