using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>
/// What a job touches follows from the rules of the place: a change that some rule there bounds is judged by it, and one of which none
/// speaks is told as not judged, with whom to ask. Derived, on limits of a scenario of our own.
/// </summary>
public sealed class NotJudgedTests
{
    private const string Free =
        """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "50 mm" } } ], "beyond": "prohibited" """;
    private const string Wider =
        """ "tiers": [ { "pathway": "certificate", "within": { "guard-flare": "20 mm" } } ], "beyond": "prohibited" """;
    private const string Flared = """ "modification": { "guard-flare": "15 mm" } """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measure_that_only_one_state_bounds_is_judged_there_and_told_as_not_judged_elsewhere()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Free)),
            ("jurisdictions/au-b/wheels", Topic("wheels", Rule("flare", Since("2012-01-01", Wider))))
        );
        var there = Assess(book, Flared, "au-b");
        there.Verdict.ShouldBe(Pathway.Certificate);
        there.NotJudged.ShouldBeEmpty();

        var here = Assess(book, Flared);
        here.Findings.ShouldBeEmpty();
        var left = here.NotJudged.ShouldHaveSingleItem();
        (left.Fact, left.What, left.Ask).ShouldBe(("modification.guard-flare", "guard-flare", "Office A"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_of_one_state_changes_no_answer_of_another()
    {
        var without = Book(Rule("raise", Since("2012-01-01", Free)));
        var with = Book(
            Rule("raise", Since("2012-01-01", Free)),
            ("jurisdictions/au-b/ride-height", Topic("ride-height", Rule("flare", Since("2012-01-01", Wider))))
        );
        foreach (var lift in (string[])["0 mm", "40 mm", "60 mm", "unknown"])
        {
            var (before, after) = (Assess(without, Lift(lift)), Assess(with, Lift(lift)));
            after.Between.ShouldBe(before.Between);
            after.Undecided.Select(effect => effect.Opening.Name).ShouldBe(before.Undecided.Select(effect => effect.Opening.Name));
            after.NotJudged.ShouldBeEmpty();
        }
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_change_that_asks_for_a_rule_of_its_own_and_finds_none_is_open_and_told()
    {
        var book = Book(Rule("raise", Since("2012-01-01", Free)));
        var answer = Assess(book, """ "modification": { "suspension-lift": "40 mm", "track-increase": "20 mm" } """);
        answer.Between.ShouldBe(Outcome.Open);
        answer.NotJudged.ShouldHaveSingleItem().What.ShouldBe("track-increase");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rule_that_establishes_nothing_of_heights_says_nothing_of_a_change_of_another_kind()
    {
        var book = Book(Rule("raise", Since("2012-01-01", """ "not-established": { "ask": "Office A" } """)));
        Assess(book, """ "modification": { "suspension-lift": "40 mm", "guard-flare": "15 mm" } """)
            .NotJudged.ShouldHaveSingleItem()
            .What.ShouldBe("guard-flare");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_nothing_is_established_for_the_vehicle_its_lift_is_open_and_not_told_a_second_time()
    {
        var book = Book(
            Rule(
                "raise",
                Since("2012-01-01", """ "not-established": { "ask": "Office A" } """),
                """ "for": { "body-lift": { "at-most": "0 mm" } },"""
            )
        );
        var answer = Assess(book, Lift("40 mm"));
        answer.NotJudged.ShouldBeEmpty();
        answer.Headline.ShouldBe(Headline.Undecided);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_the_job_says_was_shown_and_no_rule_asks_for_is_told_first_and_what_a_rule_asks_for_is_not()
    {
        var answer = Assess(Stating(Free), Lift("40 mm") + """, "shown": { "travel-kept": "yes", "lane-change-test": "no" } """);
        FirstLines.Of(answer).ShouldContain("No rule that judges this asks for: test (stated as not met), travel kept (stated as shown).");
        FirstLines
            .Of(Assess(Stating(Tiers), Lift("40 mm") + """, "shown": { "travel-kept": "yes", "lane-change-test": "yes" } """))
            .ShouldNotContain(line => line.Contains("asks for", StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_a_rule_that_binds_reads_is_judged_and_what_only_a_rule_for_other_vehicles_reads_is_not()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Free)) + ", " + Rule("flare", Since("2012-01-01", Wider), """ "for": { "category": "NA" },""")
        );
        Assess(book, Flared + """, "vehicle": { "category": "NA" } """).NotJudged.ShouldBeEmpty();
        Assess(book, Flared + """, "vehicle": { "category": "MC" } """).NotJudged.ShouldHaveSingleItem().What.ShouldBe("guard-flare");
        Assess(book, Flared).NotJudged.ShouldBeEmpty(); // it may be bound: the category is asked for
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_nothing_is_changed_nothing_is_left_unjudged() =>
        Assess(Book(Rule("raise", Since("2012-01-01", Free))), """ "vehicle": { "category": "MC" } """).NotJudged.ShouldBeEmpty();
}
