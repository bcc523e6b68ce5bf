using RuleBook.Authoring.Changes;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>A figure that the book had wrong is told as that, not as a change of the law (derived: a made-up correction).</summary>
public sealed class CorrectionTests
{
    private const string Wrong = """
        - from: 2018-10-26
          sources: [ { cite: law } ]
          tiers: [ { pathway: certificate, within: { suspension-lift: 75 mm } } ]
          beyond: prohibited
        """;

    private const string Mended = """
        - from: 2018-10-26
          sources: [ { cite: law } ]
          tiers: [ { pathway: certificate, within: { suspension-lift: 65 mm } } ]
          beyond: prohibited
          corrected: [ { on: 2026-11-27, was: 75 mm of suspension, because: the notice was read } ]
        """;

    [Fact]
    public void A_corrected_figure_says_that_past_answers_were_wrong_and_since_when()
    {
        var report = EditedBook.Between(SmallBook.WithVersions(Wrong), SmallBook.WithVersions(Mended));

        var remark = report.Remarks.Single();
        remark.Kind.ShouldBe(RemarkKind.Corrected);
        remark.From.ShouldBe(new DateOnly(2018, 10, 26));
        remark.Text.ShouldContain("past answers were wrong");
        remark.Text.ShouldContain("75 mm of suspension");
        report.Answers.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_correction_is_told_once_and_not_again_by_the_next_edition() =>
        EditedBook.Between(SmallBook.WithVersions(Mended), SmallBook.WithVersions(Mended)).IsEmpty.ShouldBeTrue();
}
