using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tests.Answers;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.InForce;

/// <summary>How single figures are known. Derived from what a citation says it carries, on rules of a scenario of our own.</summary>
public sealed class EvidenceTests
{
    private const string Notice = """{ "cite": "law", "clause": "1", "carries": [ "from", "certificate.total-lift" ] }""";
    private const string Account = """{ "cite": "account", "carries": "no-certificate" }""";

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "cite": "law" }""", "certificate.total-lift", "primary")] // nothing said: all of it
    [InlineData($"{Notice}, {Account}", "from", "primary")]
    [InlineData($"{Notice}, {Account}", "certificate.total-lift", "primary")]
    [InlineData($"{Notice}, {Account}", "no-certificate.total-lift", "secondary")]
    [InlineData($"{Notice}, {Account}", "no-certificate.conditions", "secondary")]
    [InlineData($"{Notice}, {Account}", "certificate.suspension-lift", "no-source")]
    [InlineData($"{Notice}, {Account}", "beyond", "no-source")]
    [InlineData($$"""{{Notice}}, { "cite": "recalled" }""", "beyond", "memory")]
    [InlineData(
        """{ "cite": "law", "carries": "existence" }, { "cite": "account", "carries": "limits" }""",
        "certificate.suspension-lift",
        "secondary"
    )]
    [InlineData(
        """{ "cite": "law", "carries": "existence" }, { "cite": "account", "carries": "limits" }""",
        "certificate.conditions",
        "no-source"
    )]
    [InlineData("""{ "cite": "law", "carries": "total-lift" }, { "cite": "account" }""", "certificate.total-lift", "primary")]
    [InlineData("""{ "cite": "law", "carries": "total-lift" }, { "cite": "account" }""", "certificate.suspension-lift", "secondary")]
    public void A_figure_is_known_by_the_best_citation_that_carries_it(string sources, string part, string standing) =>
        Wording.Of(Resolve(Version(sources, Tiers)).Evidence.Of(PartOf(part))).ShouldBe(standing);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tiers_own_citation_carries_its_tier_alone()
    {
        const string Own = """
            "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "50 mm", "total-lift": "75 mm" },
            "sources": [ { "cite": "law", "carries": "total-lift" } ] },
                       { "pathway": "certificate", "within": { "total-lift": "150 mm" } } ], "beyond": "prohibited"
            """;
        var evidence = Resolve(Version("""{ "cite": "account" }""", Own)).Evidence;
        Wording.Of(evidence.Of(PartOf("no-certificate.total-lift"))).ShouldBe("primary");
        Wording.Of(evidence.Of(PartOf("no-certificate.suspension-lift"))).ShouldBe("secondary");
        Wording.Of(evidence.Of(PartOf("certificate.total-lift"))).ShouldBe("secondary");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("law", "account", "", "secondary", "account")] // the figure is the weaker link
    [InlineData("account", "law", "", "secondary", "account")] // the adoption is
    [InlineData("law", "law", "", "primary", "law")]
    [InlineData("law", "recalled", """, "carries": [ "adopts", "total-lift" ]""", "primary", "law")] // the adopting text repeats the figure
    public void An_adopted_figure_is_known_by_the_weaker_of_adoption_and_figure(
        string adopting,
        string adopted,
        string carries,
        string standing,
        string cite
    )
    {
        var book = Book(
            Rule(
                "raise",
                Version(
                    $$"""{ "cite": "{{adopting}}" {{carries}} }""",
                    """ "adopts": { "rule": "au/ride-height/raise", "as-of": "amended" } """
                )
            ),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers, adopted))))
        );
        var known = Resolve(book).Evidence.Of(PartOf("certificate.total-lift"));
        (Wording.Of(known), known.Cited!.Source.Id).ShouldBe((standing, cite));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "150 mm" """, "primary")] // the exception alone
    [InlineData("""{ "at-least": "-50 mm", "at-most": "150 mm" }""", "secondary")] // the lower end is the adopted one
    public void A_figure_of_an_exception_needs_no_adopted_one_unless_an_end_of_it_is_kept(string range, string standing)
    {
        var book = Book(
            Rule(
                "raise",
                Version(
                    """{ "cite": "law" }""",
                    """ "adopts": { "rule": "au/ride-height/raise", "as-of": "amended" }, "except": [ { "tier": "certificate","""
                        + """ "within": { "total-lift": "125 mm" } } ] """
                )
            ),
            (
                "jurisdictions/au/ride-height",
                Topic(
                    "ride-height",
                    Rule(
                        "raise",
                        Since(
                            "2012-01-01",
                            $$""" "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "75 mm", "total-lift":"""
                                + $$""" {{range}} } } ], "beyond": "prohibited" """,
                            "account"
                        )
                    )
                )
            )
        );
        Wording.Of(Resolve(book).Evidence.Of(PartOf("certificate.total-lift"))).ShouldBe(standing);
        Wording.Of(Resolve(book).Evidence.Of(PartOf("certificate.suspension-lift"))).ShouldBe("secondary");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("40 mm", "no-certificate.suspension-lift", "secondary")] // kept limits, all of them needed
    [InlineData("60 mm", "no-certificate.suspension-lift", "secondary")] // what closed the easier tier
    [InlineData("200 mm", "beyond", "memory")]
    public void A_verdict_names_the_weakest_link_of_what_decides(string lift, string part, string standing)
    {
        const string Sources = """
            { "cite": "law", "carries": [ "from", "certificate" ] }, { "cite": "account", "carries": "no-certificate" },
            { "cite": "recalled", "carries": "beyond" }
            """;
        var weakest = Assess(Book(Rule("raise", Version(Sources, Tiers))), Lift(lift)).WeakestEvidence!;
        (weakest.Rule.Id, weakest.Part.ToString(), Wording.Of(weakest.Standing)).ShouldBe(("au-a/ride-height/raise", part, standing));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_several_limits_that_close_a_tier_the_best_known_one_suffices()
    {
        const string Sources = """{ "cite": "law", "carries": [ "certificate", "no-certificate.total-lift" ] }, { "cite": "recalled" }""";
        var book = Book(Rule("raise", Version(Sources, Tiers)));
        Wording.Of(Assess(book, """ "modification": { "suspension-lift": "60 mm" } """).WeakestEvidence!.Standing).ShouldBe("memory");
        Wording
            .Of(Assess(book, """ "modification": { "suspension-lift": "75 mm", "body-lift": "10 mm" } """).WeakestEvidence!.Standing)
            .ShouldBe("primary");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_nothing_established_decides_no_evidence_is_named() =>
        Assess(Stating(""" "not-established": { "ask": "Office A" } """), Lift("40 mm")).WeakestEvidence.ShouldBeNull();

    [Fact]
    [Trait("Basis", "derived")]
    public void Figures_without_a_source_are_counted_apart()
    {
        var book = Book(Rule("raise", Version($"{Notice}, {Account}", Tiers)));
        var holding = Holdings.Of(book).Single(each => each is { Place.Id: "au-a", Topic.Name: "ride-height" });
        holding.Values.Select(pair => (pair.Key, pair.Value)).ShouldBe([(ReadAs.Primary, 1), (ReadAs.Secondary, 2)]);
        holding.WithoutSource.ShouldBe(1);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_caution_stands_where_the_limit_that_decides_is_known_at_second_hand_though_another_is_primary()
    {
        var book = Book(
            Rule(
                "raise",
                Version("""{ "cite": "law", "carries": [ "from", "certificate" ] }, { "cite": "account", "carries": "limits" }""", Tiers)
            )
        );
        Assess(book, Lift("40 mm")).Cautions.ShouldContain(caution => caution.Contains("at second hand"));
    }

    private static string Version(string sources, string content) =>
        $$"""{ "from": "2012-01-01", "sources": [ {{sources}} ], {{content}} }""";

    private static ResolvedVersion Resolve(string version) => Resolve(Book(Rule("raise", version)));

    private static ResolvedVersion Resolve(Book book) =>
        Resolver.Resolve(book, book.Rule("au-a/ride-height/raise")!, Made.Day("2026-11-25")).ShouldHaveSingleItem();

    private static Part PartOf(string text) => text.Split('.') is [var tier, var name] ? new Part(tier, name) : new Part(null, text);
}
