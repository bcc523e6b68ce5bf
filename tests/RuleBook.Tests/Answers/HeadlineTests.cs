using RuleBook.Answers;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>
/// The first line never permits what nobody judged or what must not be driven. Basis: the project's own promise on answers; no law.
/// </summary>
public sealed class HeadlineTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "vehicle": { "category": "MC" } """)]
    [InlineData(""" "vehicle": { } """)]
    [InlineData(""" "modification": { "suspension-lift": "0 mm" } """)]
    public void A_vehicle_on_which_nothing_is_fitted_is_nothing_to_judge_and_not_allowed(string job) =>
        Assess(Stating(Tiers), job)
            .ShouldSatisfyAllConditions(
                answer => answer.Headline.ShouldBe(Headline.NothingToJudge),
                answer => answer.Verdict.ShouldBeNull(),
                answer => AssessmentJson.Write(answer).ShouldContain("\"verdict\": \"nothing-to-judge\""),
                answer => AssessmentJson.Write(answer).ShouldContain("\"headline\": \"nothing-to-judge\"")
            );

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("50 mm", Headline.NoCertificate)]
    [InlineData("60 mm", Headline.Certificate)]
    [InlineData("80 mm", Headline.Prohibited)]
    public void A_lift_without_a_blocker_is_headed_by_its_pathway(string lift, Headline headline) =>
        Assess(Stating(Tiers), Lift(lift)).Headline.ShouldBe(headline);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("40 mm")]
    [InlineData("60 mm")]
    public void A_change_of_which_no_rule_of_the_place_speaks_blocks_whatever_pathway_the_rest_has(string lift)
    {
        var answer = Assess(Stating(Tiers), $$""" "modification": { "suspension-lift": "{{lift}}", "track-increase": "20 mm" } """);
        answer.Headline.ShouldBe(Headline.Blocked);
        answer.NotJudged.ShouldHaveSingleItem().ShouldBe(new NotJudged("modification.track-increase", "track-increase", "Office A"));
        answer.Blockers.ShouldHaveSingleItem().Id.ShouldBe("not-judged/modification.track-increase");
    }
}
