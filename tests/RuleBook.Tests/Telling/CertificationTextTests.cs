using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>Who certifies and in which order, as it is told. Derived, on a scheme of a scenario of our own.</summary>
public sealed class CertificationTextTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void The_authority_has_the_last_word_only_where_the_scheme_says_so()
    {
        const string LastWord = "- the authority has the last word, not the certifier";
        Told("authority").ShouldContain(LastWord);
        Told("certifier").ShouldNotContain(LastWord);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_step_that_comes_before_the_work_is_told_as_such_and_one_that_follows_is_not()
    {
        var told = Told("certifier");
        told.ShouldContain("- before the work: ask first");
        told.ShouldContain("- inspect");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("au-a", "- The certifier named may certify: ")]
    [InlineData("au", "- The certifier named may not certify: ")]
    public void A_certifier_who_is_not_appointed_there_is_told_as_one_who_may_not_certify(string appointed, string told) =>
        Told("certifier", $$""", "certifier": { "appointed-in": [ "{{appointed}}" ] } """)
            .ShouldContain(line => line.StartsWith(told, StringComparison.Ordinal));

    private static IReadOnlyList<string> Told(string decides, string more = "") =>
        FixedWordsTests.All(
            Assess(
                Book(
                    Rule("raise", Since("2012-01-01", Tiers)),
                    (
                        "jurisdictions/au-a/certification",
                        $$"""
                        { "topic": "certification", "schemes": [ { "scheme": "engineers", "title": "Engineers of A", "versions": [
                          { "from": "2013-01-01", "certifier": "engineer", "decides": "{{decides}}", "accepts-appointed-in": [ ],
                            "steps": [ { "text": "ask first", "before-work": "yes", "pathways": [ "certificate" ] }, { "text": "inspect",
                            "pathways": [ "certificate" ] } ],
                            "sources": [ { "cite": "law" } ] } ] } ] }
                        """
                    )
                ),
                Lift("60 mm") + more
            )
        );
}
