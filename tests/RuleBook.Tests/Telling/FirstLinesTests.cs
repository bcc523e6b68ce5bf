using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>The first lines tell the decision and its reason. Basis: limits of a scenario of our own.</summary>
public sealed class FirstLinesTests
{
    private const string Two = """
        "tiers": [ { "pathway": "no-certificate", "name": "springs", "within": { "suspension-lift": "50 mm", "body-lift": "0 mm" } },
                   { "pathway": "no-certificate", "name": "blocks", "within": { "suspension-lift": "0 mm", "body-lift": "50 mm" } },
                   { "pathway": "certificate", "within": { "total-lift": "150 mm" } } ], "beyond": "prohibited"
        """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_condition_that_is_not_met_is_the_reason_and_not_some_limit()
    {
        var answer = Assess(Stating(Tiers), Lift("40 mm") + """, "shown": { "travel-kept": "no" } """);
        answer
            .Findings.ShouldHaveSingleItem()
            .Reason.ShouldHaveSingleItem()
            .Conditions.Select(condition => condition.Name)
            .ShouldBe(["travel-kept"]);
        FirstLines.Of(answer).First().ShouldBe("Not allowed (condition not met: travel kept). State A, 25 November 2026.");
        AssessmentJson.Write(answer).ShouldContain("\"reason\": true");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_reason_is_the_limit_that_closed_the_last_pathway_that_was_open()
    {
        var answer = Assess(Stating(Tiers), Lift("80 mm"));
        answer.Findings.ShouldHaveSingleItem().Reason.ShouldHaveSingleItem().Tier.Pathway.ShouldBe(Pathway.Certificate);
        FirstLines
            .Of(answer)
            .First()
            .ShouldBe("Not allowed (suspension-lift 80 mm, limit 75 mm: 5 mm too much). State A, 25 November 2026.");
    }

    /// <summary>
    /// Load index 98 is 750 kg a tyre (ETRTO table, schema/reference/tables.yaml): 1500 kg an axle. Index 112 is 1120 kg.
    /// </summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(
        "98S",
        "Tyres fitted carry less than the vehicle is rated for: front 1500 of 1650 kg, rear 1500 of 2100 kg; load no further "
            + "than they carry."
    )]
    [InlineData("112S", null)]
    public void Tyres_that_carry_less_than_an_axle_rating_are_told_in_the_first_lines(string service, string? told) =>
        FirstLines
            .Of(
                Figures.Reckoned.Assess(
                    $$""" "vehicle": { {{Figures.Reckoned.Wagon}} }, "modification": { "tyres": "265/65R17 {{service}}" } """
                )
            )
            .Where(line => line.StartsWith("Tyres fitted", StringComparison.Ordinal))
            .ShouldBe(told is null ? [] : [told]);

    /// <summary>Load index 108 is 1000 kg a tyre (the same table): four carry 4000 kg, however they share it; 115 is 1215 kg.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("108Q", "4490 kg", "", "all together 4000 of 4490 kg")]
    [InlineData("108Q", "4490 kg", """, "front-axle": "1600 kg" """, "all together 4000 of 4490 kg")]
    [InlineData("108Q", "4490 kg", """, "rear-axle": "2900 kg" """, "rear 2000 of 2900 kg, all together 4000 of 4490 kg")]
    [InlineData("108Q", "4000 kg", "", null)]
    [InlineData("115Q", "4490 kg", "", null)]
    public void Tyres_that_together_carry_less_than_the_GVM_are_told_where_no_axle_rating_is_known(
        string service,
        string gvm,
        string axle,
        string? told
    ) =>
        FirstLines
            .Of(
                Figures.Reckoned.Assess(
                    $$""" "vehicle": { "ratings": { "gvm": "{{gvm}}" {{axle}} } }, "modification": { "tyres": "265/65R17 {{service}}" } """
                )
            )
            .Where(line => line.StartsWith("Tyres fitted", StringComparison.Ordinal))
            .ShouldBe(
                told is null ? [] : [$"Tyres fitted carry less than the vehicle is rated for: {told}; load no further than they carry."]
            );

    /// <summary>
    /// A rule that is only for heavier vehicles, and not established, is no answer for a vehicle whose mass nobody stated.
    /// </summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void What_nobody_established_for_other_vehicles_does_not_stand_before_the_question_that_would_tell_which_it_is()
    {
        var book = Book(
            $"{Rule("raise", Since("2012-01-01", Tiers), """ "for": { "category": "MC" }, """)}, "
                + Rule(
                    "raise-others",
                    Since("2012-01-01", """ "not-established": { "ask": "Office A" } """),
                    """ "for": { "category": "NA" }, """
                )
        );
        FirstLines
            .Of(Assess(book, Lift("60 mm")))
            .First()
            .ShouldStartWith("Undecided: allowed without a certificate or not allowed, the question below");
        FirstLines
            .Of(Assess(book, Lift("60 mm") + """, "vehicle": { "category": "NA" } """))
            .First()
            .ShouldStartWith("Undecided: nobody has established the limits for raise-others. Ask Office A.");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_a_certificate_is_needed_the_first_line_tells_what_would_have_been_free_as_such()
    {
        var answer = Assess(Stating(Tiers), Lift("60 mm"));
        FirstLines
            .Of(answer)
            .First()
            .ShouldBe(
                "Allowed with a certificate (without one: suspension-lift 60 mm, limit 50 mm: 10 mm too much). State A, 25 November 2026."
            );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Alternatives_of_one_pathway_have_a_letter_and_a_name_each()
    {
        var finding = Assess(Stating(Two), """ "modification": { "suspension-lift": "40 mm", "body-lift": "25 mm" } """)
            .Findings.ShouldHaveSingleItem();
        finding.Reason.Select(closed => Alternatives.Of(finding, closed.Tier)).ShouldBe(["A suspension-lift alone", "B body-lift alone"]);
        Alternatives.Of(finding, finding.Tier!).ShouldBe(""); // the only one of its pathway
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("40 mm", "0 mm", "A suspension-lift alone")]
    [InlineData("0 mm", "40 mm", "B body-lift alone")] // A is no easier, and no reason
    [InlineData("40 mm", "25 mm", "", "A suspension-lift alone", "B body-lift alone")] // the certificate is the only one of its pathway
    [InlineData("151 mm", "0 mm", "", "A suspension-lift alone", "B body-lift alone", "")] // no tier holds
    public void The_data_name_the_alternative_that_is_taken_and_those_that_are_closed(
        string springs,
        string blocks,
        string taken,
        params string[] closed
    )
    {
        var answer = Assess(Stating(Two), $$""" "modification": { "suspension-lift": "{{springs}}", "body-lift": "{{blocks}}" } """);
        using var told = JsonDocument.Parse(AssessmentJson.Write(answer));
        var finding = told.RootElement.GetProperty("findings")[0];
        finding.GetProperty("alternative").GetString().ShouldBe(taken);
        finding.GetProperty("closed").EnumerateArray().Select(each => each.GetProperty("alternative").GetString()).ShouldBe(closed);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2026-11-25", null, false)] // the sources of the scenario were compared on 25 November 2025
    [InlineData("2026-11-26", null, true)]
    [InlineData("2026-03-01", "2026-02-28", true)]
    [InlineData("2026-03-01", "2026-03-01", false)]
    public void A_day_more_than_a_year_after_the_last_check_or_in_the_future_is_told(string on, string? today, bool told)
    {
        var answer = Assess(Stating(Tiers), Lift("40 mm"));
        var lines = FirstLines.Of(answer with { On = Answers.Made.Day(on) }, today is null ? null : Answers.Made.Day(today));
        lines.Contains("Known only to 25 November 2025: what changes after that is not in the book.").ShouldBe(told);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rule_of_use_that_forbids_stands_on_the_first_line_and_the_pathway_second()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Tiers)),
            (
                "jurisdictions/au-a/road-use",
                Topic(
                    "road-use",
                    Rule(
                        "no-raised-vehicle",
                        Since(
                            "2012-01-01",
                            """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "20 mm" } } ], "beyond":"""
                                + """ "prohibited" """
                        )
                    )
                )
            )
        );
        var answer = Assess(book, Lift("40 mm"));
        answer.Headline.ShouldBe(Headline.Blocked);
        FirstLines
            .Of(answer)
            .Take(2)
            .ShouldBe([
                "NOT AS PLANNED: past a rule of use, no-raised-vehicle: suspension-lift 40 mm, limit 20 mm: 20 mm too much.",
                "The modification itself: allowed without a certificate, 10 mm left (suspension-lift). State A, 25 November 2026.",
            ]);
    }
}
