using RuleBook.Answers;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>One job in every state is a line a state. Derived, on limits of a scenario of our own.</summary>
public sealed class AcrossTextTests
{
    private static readonly Lazy<Assessment> Asked = new(() => Assess(Stating(Tiers), Lift("60 mm")));

    [Fact]
    [Trait("Basis", "derived")]
    public void Each_state_is_one_line_and_the_state_of_registration_is_marked()
    {
        var there = Asked.Value with { Jurisdiction = "au-b", JurisdictionName = "State B" };
        var told = Tell([Asked.Value, there]);
        told.Where(line => line.Contains('|')).ShouldBe(["* State A|allowed with a certificate", "  State B|allowed with a certificate"]);
        AssessmentJson.Write(there).ShouldContain("\"registered-in\": \"au-a\"");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_holds_everywhere_is_told_once_and_what_differs_by_state()
    {
        var unjudged = Assess(Stating(Tiers), """ "modification": { "suspension-lift": "60 mm", "guard-flare": "30 mm" } """);
        Assessment[] both = [unjudged, unjudged with { Jurisdiction = "au-b", JurisdictionName = "State B" }];
        var told = Tell(both);
        told.ShouldContain("* State A|NOT AS PLANNED, 1 blocker; certificate");
        told.Count(line => line.Contains("guard-flare", StringComparison.Ordinal)).ShouldBe(1);
        told.ShouldContain("Everywhere:");
        var apart = Tell([both[0], Asked.Value with { Jurisdiction = "au-b", JurisdictionName = "State B" }]);
        apart[apart.IndexOf("What differs:") + 1].ShouldStartWith("- State A: ");
    }

    private static List<string> Tell(Assessment[] assessments)
    {
        var page = new Told();
        AcrossText.Write(page, assessments, "au-a");
        return page.Lines;
    }
}
