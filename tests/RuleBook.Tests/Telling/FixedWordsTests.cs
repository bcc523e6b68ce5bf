using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>The words that stand for one fact each, written here by hand: a reader has nothing else to go by.</summary>
public sealed class FixedWordsTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(Truth.Yes, "[x]")]
    [InlineData(Truth.Unknown, "[ ]")]
    [InlineData(Truth.No, "x ")]
    public void A_box_is_ticked_where_something_was_shown_and_crossed_where_it_is_not_so(Truth state, string box) =>
        Phrases.Box(state).ShouldBe(box);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("law", "the authority's own text")]
    [InlineData("account", "known at second hand")]
    [InlineData("practice", "common practice as at 2025-11-25, no published source")]
    [InlineData("recalled", "from memory, not verified")]
    public void A_source_is_told_by_how_it_was_read(string id, string told) =>
        Phrases.ReadAs(Book(null).Jurisdiction("au-a")!.Sources.Single(source => source.Id == id)).ShouldBe(told);

    /// <summary>A figure that nothing carries is said to be without a source, not to be well known.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(ReadAs.Primary, "authority's text")]
    [InlineData(ReadAs.Secondary, "second hand")]
    [InlineData(ReadAs.CommonPractice, "common practice")]
    [InlineData(ReadAs.Memory, "from memory")]
    [InlineData(null, "no source")]
    public void Beside_a_figure_it_is_told_in_short_how_it_is_known(ReadAs? basis, string told) =>
        Phrases.Standing(new RuleBook.InForce.Standing(basis, null)).ShouldBe(told);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(Pathway.NoCertificate, "allowed without a certificate")]
    [InlineData(Pathway.Certificate, "allowed with a certificate")]
    [InlineData(Pathway.Approval, "allowed with the authority's approval first")]
    [InlineData(Pathway.Prohibited, "not allowed")]
    public void A_pathway_is_a_sentence_that_a_customer_understands(Pathway pathway, string told) =>
        Phrases.Pathway(pathway).ShouldBe(told);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "at-least": "500 mm" }""", "frame-height 400 mm, limit at least 500 mm")]
    [InlineData("""{ "over": "500 mm" }""", "frame-height 400 mm, limit over 500 mm")]
    [InlineData("""{ "at-most": "300 mm" }""", "frame-height 400 mm, limit 300 mm")]
    [InlineData("""{ "under": "300 mm" }""", "frame-height 400 mm, limit under 300 mm")]
    public void A_limit_says_whether_its_end_belongs_to_it(string limit, string told)
    {
        var answer = Assess(
            Stating(
                $$""" "tiers": [ { "pathway": "no-certificate", "within": { "frame-height": {{limit}} } } ], "beyond": "prohibited" """
            ),
            """ "measured": { "frame-height": "400 mm" } """
        );
        FirstLines.Reason(answer).ShouldNotBeNull().ShouldStartWith(told);
    }

    /// <summary>A rule taken over as amended follows what comes later; one taken over as it stood does not.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("amended", "adopts au/ride-height/raise as amended, looked up on 25 November 2026")]
    [InlineData("2018-01-01", "adopts au/ride-height/raise as it stood on 1 January 2018")]
    public void An_adoption_says_whether_it_follows_amendments(string asOf, string told)
    {
        var book = Book(
            Rule("raise", Since("2018-10-26", $$""" "adopts": { "rule": "au/ride-height/raise", "as-of": "{{asOf}}" } """)),
            ("jurisdictions/au/ride-height", Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers))))
        );
        All(Assess(book, Lift("60 mm"))).ShouldContain(told);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("stale", "law")]
    [InlineData("law", "stale")]
    public void A_source_that_is_overdue_is_told_whichever_rule_it_stands_under(string first, string second)
    {
        var book = Book($"{Rule("raise", Since("2012-01-01", Tiers, first))}, {Rule("raise-too", Since("2012-01-01", Tiers, second))}");
        All(Assess(book, Lift("60 mm")))
            .ShouldContain("- \"stale\" was last compared 2025-11-25 and is due for a re-check since 2026-01-01.");
    }

    /// <summary>The job in one line shows what changes: of the same size, its load index and speed symbol.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("265/70R17 98S", "tyres 265/65R17 -> 265/70R17")]
    [InlineData("265/65R17 98S", "tyres 265/65R17 112S -> 265/65R17 98S")]
    public void A_tyre_is_told_by_its_size_or_where_that_stays_by_its_rating(string fitted, string told) =>
        JobLine
            .Of(Figures.Reckoned.Read($$""" "vehicle": { "tyres": [ "265/65R17 112S" ] }, "modification": { "tyres": "{{fitted}}" } """))
            .ShouldContain(told);

    /// <summary>What stands on a plate is not what is carried: the load on the ball is told, its limit is not taken for it.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void A_trailer_is_told_with_what_it_puts_on_the_ball_and_not_with_the_limit_of_the_ball()
    {
        var line = JobLine.Of(
            Figures.Reckoned.Read(
                $$""" "vehicle": { {{Figures.Reckoned.Wagon}} }, "trailer": { "mass": "3000 kg", "ball-load": "300 kg" } """
            )
        );
        line.ShouldContain("trailer 3000 kg with 300 kg on the ball");
        line.ShouldNotContain("350 kg");
    }

    internal static IReadOnlyList<string> All(Assessment answer)
    {
        var page = new Told();
        new AssessmentText(page).Write(answer);
        return page.Lines;
    }
}
