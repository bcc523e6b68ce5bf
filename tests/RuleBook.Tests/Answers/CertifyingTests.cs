using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>Who certifies, and what a reader should bear in mind. Derived, on schemes of a scenario of our own.</summary>
public sealed class CertifyingTests
{
    private const string Scheme = """
        { "topic": "certification", "schemes": [ { "scheme": "engineers", "title": "Engineers of A", "versions": [
          { "from": "2013-01-01", "until": "2020-01-01", "certifier": "old engineer", "sources": [ { "cite": "law" } ] },
          { "from": "2020-01-01", "certifier": "engineer", "appointed-by": "Office A", "accepts-appointed-in": [ "au-b" ],
            "issued": [ { "pathway": "certificate", "papers": [ "certificate", "plate" ] }, { "pathway": "approval", "papers": [ "letter",
            "plate" ] } ],
            "steps": [ { "text": "inspect", "pathways": [ "certificate" ] }, { "text": "wheels only", "pathways": [ "certificate" ],
            "topics": [ "wheels" ] }, { "text": "ask first", "pathways": [ "approval" ] } ], "sources": [ { "cite": "law" },
            { "cite": "nowhere" } ] } ] } ] }
        """;

    private const string National = """
        { "topic": "certification", "schemes": [
          { "scheme": "all", "title": "For everybody", "versions": [ { "from": "2000-01-01", "certifier": "anyone" } ] },
          { "scheme": "first", "title": "Before first registration", "for": { "registered": "no" }, "versions": [ { "from": "2021-01-01",
          "certifier": "national" } ] } ] }
        """;

    [Fact]
    [Trait("Basis", "derived")]
    public void The_scheme_of_the_state_of_registration_certifies_with_the_papers_and_steps_of_the_pathway()
    {
        var certification = Of(Lift("60 mm"))!;
        certification.Scheme.ShouldBe("Engineers of A");
        certification.Version.Certifier.ShouldBe("engineer");
        certification.Papers.ShouldBe(["certificate", "plate"]);
        certification.Steps.Select(step => step.Text).ShouldBe(["inspect"]);
        certification.Sources.ShouldHaveSingleItem().Source.Id.ShouldBe("law");
        certification.MayCertify.ShouldBeNull();
        certification.Why.ShouldBeNull();
        Of(Lift("20 mm"))!.Papers.ShouldBeEmpty(); // no certificate is needed
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void While_the_verdict_is_open_the_papers_of_every_pathway_left_are_shown_once() =>
        Of(Lift("unknown"))!.Papers.ShouldBe(["certificate", "plate", "letter"]);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2019-12-31", "old engineer")]
    [InlineData("2020-01-01", "engineer")]
    [InlineData("2012-12-31", null)]
    public void The_scheme_is_that_of_the_day_of_certification(string day, string? certifier)
    {
        var book = Book();
        var job = RuleBook.Jobs.Reading.JobReader.Read(
            Jobs.Nodes.Of(
                $$"""{ "registered-in": "au-a", "dates": { "work": "2012-01-01", "certification": "{{day}}" }, {{Lift("60 mm")}} }"""
            ),
            book
        );
        Assessor.Assess(book, job).Certification?.Version.Certifier.ShouldBe(certifier);
        (Assessor.Assess(book, job).Certification is null).ShouldBe(certifier is null);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("[ \"au-a\" ]", Truth.Yes, "appointed in State A")]
    [InlineData("[ \"au-b\" ]", Truth.Yes, "accepts certifiers appointed in au-b")]
    [InlineData("[ \"au\" ]", Truth.No, "an engineer of State A is needed")]
    [InlineData("[ ]", Truth.No, "appointed there by Office A")]
    public void A_certifier_is_appointed_in_the_state_of_registration_or_accepted_there(string appointed, Truth may, string why)
    {
        var certification = Of(Lift("60 mm") + $$""", "certifier": { "appointed-in": {{appointed}} } """)!;
        certification.MayCertify.ShouldBe(may);
        certification.Why.ShouldNotBeNull().ShouldContain(why);
        certification.Why!.ShouldNotContain("not established"); // the scheme says whom it accepts
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_step_of_a_topic_on_which_nothing_is_certified_is_not_asked_for() =>
        Of(Lift("60 mm"))!.Steps.Select(step => step.Text).ShouldNotContain("wheels only");

    [Fact]
    [Trait("Basis", "derived")]
    public void Whether_a_certifier_of_another_state_may_certify_is_open_where_nobody_says()
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Tiers)),
            ("jurisdictions/au-a/certification", Scheme.Replace(""" "accepts-appointed-in": [ "au-b" ],""", "", StringComparison.Ordinal))
        );
        var certification = Assess(book, Lift("60 mm") + """, "certifier": { "appointed-in": [ "au-b" ] } """).Certification!;
        certification.MayCertify.ShouldBe(Truth.Unknown);
        certification.Why.ShouldNotBeNull().ShouldContain("not established");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("\"not-yet\"", "Before first registration")]
    [InlineData("\"2020-01-01\"", "Engineers of A")]
    [InlineData("\"unknown\"", "Engineers of A")] // the nation's route is for those that are known not to be registered
    public void Before_first_registration_the_nations_scheme_counts(string first, string scheme) =>
        Of(Lift("60 mm") + $$""", "vehicle": { "first-registered": {{first}} } """)!.Scheme.ShouldBe(scheme);

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_a_scheme_nobody_is_named() => Assess(Stating(Tiers), Lift("60 mm")).Certification.ShouldBeNull();

    [Fact]
    [Trait("Basis", "derived")]
    public void Rules_of_use_are_those_of_the_state_of_registration_and_of_each_road_that_is_travelled()
    {
        var tiers = """ "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "30 mm" } } ], "beyond": "prohibited" """;
        var book = Book(
            Rule("raise", Since("2012-01-01", Tiers)),
            ("jurisdictions/au-a/road-use", Topic("road-use", Rule("home", Since("2012-01-01", tiers)))),
            (
                "jurisdictions/au-b/road-use",
                Topic(
                    "road-use",
                    string.Join(
                        ", ",
                        Rule("road", Since("2012-01-01", tiers), """ "governed-by": "travel", """),
                        Rule("papers", Since("2012-01-01", tiers)),
                        Rule("goods", Since("2012-01-01", tiers), """ "governed-by": "travel", "for": { "category": "NA" }, """)
                    )
                )
            )
        );
        var vehicle = """, "vehicle": { "category": "MC" } """;
        var answer = Assess(book, Lift("40 mm") + vehicle + """, "travels-through": [ "au-b", "au-b" ] """);
        answer.OfUse.Select(finding => finding.Version.Rule.Id).ShouldBe(["au-a/road-use/home", "au-b/road-use/road"]);
        answer.OfUse.ShouldAllBe(finding => finding.Outcome.Best == Pathway.Prohibited);
        answer.Verdict.ShouldBe(Pathway.NoCertificate); // a rule of use is no rule of the modification
        Assess(book, Lift("40 mm") + vehicle).OfUse.Select(finding => finding.Version.Rule.Name).ShouldBe(["home"]);
        Assess(book, """ "modification": { "body-lift": "10 mm" } """).OfUse.ShouldBeEmpty();
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("law", null)]
    [InlineData("account", "at second hand")]
    [InlineData("practice", "as common practice")]
    [InlineData("recalled", "from memory")]
    public void What_is_not_known_from_the_document_itself_is_said_to_be(string source, string? how)
    {
        var cautions = Assess(Book(Rule("raise", Since("2012-01-01", Tiers, source))), Lift("60 mm")).Cautions;
        cautions
            .Where(caution => caution.StartsWith("raise", StringComparison.Ordinal))
            .Select(caution => caution.Contains(how ?? "?"))
            .ShouldBe(how is null ? [] : [true]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_source_that_is_due_for_a_re_check_is_named_and_a_cautions_of_state_and_book_are_passed_on()
    {
        var cautions = Assess(
            Book(Rule("raise", Since("2012-01-01", Tiers, "stale"))),
            Lift("60 mm") + """, "vehicle": { "stability-control": "yes" } """
        ).Cautions;
        cautions.ShouldContain(caution => caution.Contains("due for a re-check since 2026-01-01"));
        cautions.ShouldContain("take care with stability control");
        cautions[^1].ShouldBe("not legal advice");
        var plain = Assess(Stating(Tiers), Lift("60 mm") + """, "vehicle": { "stability-control": "no" } """).Cautions;
        plain.ShouldBe(["not legal advice"]);
        Assess(Stating(Tiers), Lift("60 mm"), "au").Cautions[0].ShouldBe("The states register.");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_it_is_not_established_which_day_counts_every_day_was_tried_and_is_said_to_be()
    {
        var book = Book(null, ("jurisdictions/au-b/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers)))));
        Cautions("2026-11-24")
            .ShouldContain(caution => caution.StartsWith("Which day picks the version in State B", StringComparison.Ordinal));
        Cautions("2026-11-25").ShouldBe(["not legal advice"]);

        IEnumerable<string> Cautions(string work) =>
            Assessor
                .Assess(
                    book,
                    RuleBook.Jobs.Reading.JobReader.Read(
                        Jobs.Nodes.Of(
                            $$"""{ "registered-in": "au-b", "dates": { "work": "{{work}}", "certification": "2026-11-25" }, """
                                + $$"""{{Lift("60 mm")}} }"""
                        ),
                        book
                    )
                )
                .Cautions;
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_sources_disagree_the_readings_the_one_taken_and_the_reason_are_told()
    {
        var dispute =
            """ "disputed": [ { "about": "the figure", "readings": [ { "says": "50 mm" }, { "says": "45 mm" } ], """
            + """ "taken": "50 mm", "because": "it is newer" } ], """;
        Assess(Book(Rule("raise", Since("2012-01-01", dispute + Tiers))), Lift("60 mm"))
            .Cautions.ShouldContain("Sources disagree on the figure: 50 mm; 45 mm. Taken here: 50 mm. Why: it is newer");
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_basis_of_the_tyre_diameters_is_named_where_it_decides()
    {
        // Handbook: 804 - 776 = 28 mm; nominal 26.5 mm. A limit of 27 mm lies between the two.
        var sizes = """ "vehicle": { "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17" } """;
        Cautions(27).ShouldContain(caution => caution.StartsWith("The basis of the tyre diameters decides", StringComparison.Ordinal));
        Cautions(30).ShouldNotContain(caution => caution.StartsWith("The basis", StringComparison.Ordinal));

        IEnumerable<string> Cautions(int limit) =>
            Assess(
                Stating(
                    $$""" "tiers": [ { "pathway": "no-certificate", "within": { "tyre-diameter-growth": "{{limit}} mm" } } ], """
                        + """ "beyond": "prohibited" """
                ),
                sizes
            ).Cautions;
    }

    private static Book Book() => Book(Rule("raise", Since("2012-01-01", Tiers)));

    private static Book Book(string rules, params (string Path, string Text)[] more) =>
        Scenario.Book(rules, [("jurisdictions/au-a/certification", Scheme), ("jurisdictions/au/certification", National), .. more]);

    private static Book Book(string? rules, (string Path, string Text) more) => Scenario.Book(rules, more);

    private static Certification? Of(string more) => Assess(Book(), more).Certification;
}
