using RuleBook.Telling;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// Idaho Code 49-966: a truck of 4,501 to 7,500 lb has 27 and 29 in, a four-wheel drive of up to 10,000 lb 30 and 31 in; which row wins is
/// not said.
/// </summary>
public sealed class ReasonTests
{
    [Fact]
    [Trait("Basis", "published")]
    public void What_stands_in_the_way_is_the_row_that_is_passed_and_never_a_prohibition_that_is_not_reached()
    {
        var answer = RealBook.Assess(
            """
            registered-in: us-id
            on: 2026-11-25
            vehicle: { kind: truck, four-wheel-drive: yes, ratings: { gvm: 6500 lb } }
            modification: { suspension-lift: 3 in }
            measured: { front-bumper-height: 28 in, rear-bumper-height: 29 in }
            """
        );
        FirstLines.Reason(answer).ShouldBe("front bumper height 28 in (711.2 mm), limit 27 in (685.8 mm): 1 in (25.4 mm) too much");
        answer.Findings.SelectMany(finding => finding.Reason).ShouldAllBe(closed => closed.Tier.Pathway != Law.Pathway.Prohibited);
    }
}
