using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>
/// A verdict with what decides it, what is left and what is still to be shown. Derived, on limits of a scenario of our own.
/// </summary>
public sealed class AssessmentTests
{
    private static readonly Book Plain = Stating(Tiers);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("50 mm", Pathway.NoCertificate)]
    [InlineData("50.1 mm", Pathway.Certificate)]
    [InlineData("75 mm", Pathway.Certificate)]
    [InlineData("75.1 mm", Pathway.Prohibited)]
    public void A_tenth_of_a_millimetre_decides(string lift, Pathway verdict) => Assess(Plain, Lift(lift)).Verdict.ShouldBe(verdict);

    [Fact]
    [Trait("Basis", "derived")]
    public void The_deciding_tier_shows_each_limit_with_what_is_left_and_the_easier_one_what_was_passed()
    {
        var finding = Assess(Plain, Lift("60 mm")).Findings.ShouldHaveSingleItem();
        finding.Tier!.Pathway.ShouldBe(Pathway.Certificate);
        finding.Certain.ShouldBeTrue();
        finding
            .Limits.Select(limit => (limit.Measure.Name, limit.Value.Exact, limit.Margin, limit.Holds))
            .ShouldBe([("suspension-lift", 60, 15, Truth.Yes), ("total-lift", 60, 90, Truth.Yes)]);
        finding
            .Exceeded.Select(limit => (limit.Tier.Pathway, limit.Measure.Name, limit.Margin))
            .ShouldBe([(Pathway.NoCertificate, "suspension-lift", -10)]);
        finding
            .Conditions.Select(each => (each.Condition.Name, each.State))
            .ShouldBe([("travel-kept", Truth.Unknown), ("lane-change-test", Truth.Unknown)]);
        finding.Indication.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_condition_that_was_shown_is_met_and_one_that_failed_closes_the_pathway()
    {
        var met = Assess(Plain, Lift("60 mm") + """, "shown": { "lane-change-test": "yes" } """);
        met.Findings.ShouldHaveSingleItem().Conditions.Select(each => each.State).ShouldBe([Truth.Unknown, Truth.Yes]);
        Assess(Plain, Lift("60 mm") + """, "shown": { "lane-change-test": "no" } """).Verdict.ShouldBe(Pathway.Prohibited);
        Assess(Plain, Lift("40 mm") + """, "shown": { "travel-kept": "no" } """).Verdict.ShouldBe(Pathway.Prohibited);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_measures_in_play_are_shown_with_how_each_was_derived()
    {
        var measures = Assess(Plain, """ "modification": { "suspension-lift": "40 mm", "tyre-diameter-growth": "28 mm" } """).Measures;
        measures
            .Select(known => (known.Measure.Name, known.Value.Exact, known.Derivation))
            .ShouldBe([
                ("body-lift", 0, "nothing is stated to change it"),
                ("suspension-lift", 40, "40 mm (stated)"),
                ("total-lift", 54, "suspension-lift 40 + body-lift 0 + tyre-lift 14 = 54 mm"),
                ("tyre-diameter-growth", 28, "28 mm (stated)"),
            ]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_that_touches_what_no_rule_speaks_of_is_open()
    {
        var open = Assess(Plain, """ "modification": { "track-increase": "20 mm" } """);
        open.Verdict.ShouldBeNull();
        open.Between.ShouldBe(Outcome.Open);
        open.Gaps.Select(gap => (gap.Rule, gap.Ask, gap.Open))
            .ShouldBe([("wheels", "Office A", "https://example.org/a"), ("wheels", "Office A", "https://example.org/a")]);
        // A height that is stated touches its topic.
        Assess(Plain, """ "measured": { "frame-height": "700 mm" } """).Findings.ShouldHaveSingleItem();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Several_rules_give_the_most_onerous_of_what_each_gives_and_it_stands_first()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Tiers)),
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
        var answer = Assess(book, """ "modification": { "suspension-lift": "40 mm", "track-increase": "20 mm" } """);
        answer.Verdict.ShouldBe(Pathway.Certificate);
        answer.Findings.Select(finding => finding.Version.Rule.Name).ShouldBe(["track", "raise"]);
        Assess(book, """ "modification": { "suspension-lift": "90 mm", "track-increase": "20 mm" } """)
            .Findings[0]
            .Version.Rule.Name.ShouldBe("raise");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rule_that_does_not_speak_of_what_is_changed_leaves_it_open()
    {
        var book = Book(
            null,
            (
                "jurisdictions/au-a/wheels",
                Topic(
                    "wheels",
                    Rule(
                        "width",
                        Since(
                            "2012-01-01",
                            """ "tiers": [ { "pathway": "no-certificate", "within": { "body-lift": "0 mm" } } ], "beyond": "prohibited" """
                        )
                    )
                )
            )
        );
        var answer = Assess(book, """ "modification": { "track-increase": "20 mm" } """);
        answer.Between.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        answer.Gaps.ShouldHaveSingleItem().What.ShouldContain("track-increase");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "not-regulated": "no rule" """)] // it speaks of its whole subject
    [InlineData(""" "tiers": [ { "pathway": "no-certificate", "when": { "track-increase": "50 mm" } } ], "beyond": "prohibited" """)]
    public void A_rule_speaks_of_a_measure_by_its_whole_subject_or_by_a_test(string content)
    {
        var book = Book(null, ("jurisdictions/au-a/wheels", Topic("wheels", Rule("track", Since("2012-01-01", content)))));
        Assess(book, """ "modification": { "track-increase": "20 mm" } """).Verdict.ShouldBe(Pathway.NoCertificate);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measured_lift_closer_to_its_limit_than_its_uncertainty_is_flagged_as_such()
    {
        var limits = Assess(Plain, Lift("48 mm") + """, "measured": { "uncertainty": { "suspension-lift": "3 mm" } } """)
            .Findings.ShouldHaveSingleItem()
            .Limits;
        limits[0].Guarded!.Conformity.ShouldBe(Conformity.TooCloseToCall); // 50 - 48 = 2 mm
        limits[1].Guarded!.Conformity.ShouldBe(Conformity.Within); // 75 - 48 = 27 mm
        Assess(Plain, Lift("48 mm")).Findings.ShouldHaveSingleItem().Limits[0].Guarded.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_range_shows_the_end_that_is_nearer_to_being_passed()
    {
        var book = Stating(
            """ "tiers": [ { "pathway": "certificate", "within": { "frame-height": { "at-least": "500 mm", "at-most": "700 mm" } } }"""
                + """ ], "beyond": "prohibited" """
        );
        Check("600 mm").ShouldBe((700, true, 100));
        Check("700 mm").ShouldBe((700, true, 0));
        Passed("499 mm").ShouldBe((500, false, -1));
        Passed("705 mm").ShouldBe((700, true, -5));

        (Fraction?, bool, Fraction?) Check(string height) =>
            Of(
                Assess(book, $$""" "measured": { "frame-height": "{{height}}" } """)
                    .Findings.ShouldHaveSingleItem()
                    .Limits.ShouldHaveSingleItem()
            );
        (Fraction?, bool, Fraction?) Passed(string height) =>
            Of(
                Assess(book, $$""" "measured": { "frame-height": "{{height}}" } """)
                    .Findings.ShouldHaveSingleItem()
                    .Exceeded.ShouldHaveSingleItem()
            );
        static (Fraction?, bool, Fraction?) Of(LimitCheck limit) => (limit.Bound?.Value, limit.IsUpper, limit.Margin);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_is_judged_elsewhere_when_asked_and_never_in_a_place_that_is_not_in_the_book()
    {
        Assess(Plain, Lift("40 mm"), "au-b")
            .ShouldSatisfyAllConditions(answer => answer.Jurisdiction.ShouldBe("au-b"), answer => answer.Verdict.ShouldBeNull());
        Should.Throw<ArgumentException>(() => Assess(Plain, Lift("40 mm"), "au-c"));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2018-10-25", Pathway.NoCertificate)]
    [InlineData("2018-10-26", Pathway.Prohibited)]
    public void The_day_of_the_work_picks_the_version_where_the_state_says_so(string work, Pathway verdict)
    {
        var book = Book(
            Rule(
                "raise",
                $$"""{{Since("2012-01-01", Tiers)}},"""
                    + Since(
                        "2018-10-26",
                        """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "30 mm" } } ], """
                            + """ "beyond": "prohibited" """
                    )
            )
        );
        var job = RuleBook.Jobs.Reading.JobReader.Read(
            Jobs.Nodes.Of(
                $$"""{ "registered-in": "au-a", "dates": { "work": "{{work}}", "certification": "2026-11-25" }, {{Lift("40 mm")}} }"""
            ),
            book
        );
        Assessor.Assess(book, job).Verdict.ShouldBe(verdict);
    }
}
