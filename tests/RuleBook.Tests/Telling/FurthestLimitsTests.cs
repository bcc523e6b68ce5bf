using RuleBook.InForce;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>How far a version goes, in one line. Derived, on rules of a scenario of our own.</summary>
public sealed class FurthestLimitsTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "pathway": "certificate", "within": { "suspension-lift": "50 mm" } }""", "certificate suspension-lift at most 50 mm")]
    [InlineData("""{ "pathway": "certificate", "within": { "suspension-lift": "none" } }""", "certificate suspension-lift without limit")]
    [InlineData(
        """{ "pathway": "certificate", "within": { "suspension-lift": "not-established" } }""",
        "certificate suspension-lift not established"
    )]
    [InlineData(
        """{ "pathway": "certificate", "within": { "frame-height": { "over": "500 mm" } } }""",
        "certificate frame-height over 500 mm"
    )]
    [InlineData("""{ "pathway": "approval" }""", "approval")]
    [InlineData(
        """{ "pathway": "certificate", "when": { "category": [ "MC", "NA" ], "frame-height": "900 mm" }, "within": {"""
            + """ "suspension-lift": "50 mm" } }""",
        "certificate (category MC/NA) suspension-lift at most 50 mm"
    )]
    [InlineData(
        """{ "pathway": "certificate", "within": { "suspension-lift": "50 mm" } }, { "name": "b", "pathway": "certificate","""
            + """ "within": { "suspension-lift": "60 mm" } }""",
        "certificate suspension-lift at most 60 mm"
    )]
    public void The_reach_of_a_version_is_the_furthest_limit_on_each_pathway(string tiers, string reach)
    {
        var book = Stating($$""" "tiers": [ {{tiers}} ], "beyond": "prohibited" """);
        FurthestLimits.Of(book, History.Of(book, "ride-height").ShouldHaveSingleItem().Version).ShouldBe(reach);
    }
}
