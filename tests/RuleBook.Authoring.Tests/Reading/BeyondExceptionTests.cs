using RuleBook.Law;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>An adopting state that changes what holds beyond the adopted limits (both rules are invented).</summary>
public sealed class BeyondExceptionTests
{
    private static readonly string Nation = SmallBook.Raise(
        """
        - from: 2011-01-01
          sources: [ { cite: law, clause: "1" } ]
          tiers: [ { pathway: no-certificate, within: { suspension-lift: 50 mm } } ]
          beyond: prohibited
        """
    );

    [Theory]
    [InlineData("", "51 mm", Pathway.Prohibited)]
    [InlineData("except: [ { beyond: approval, loosens: The law says so. } ]", "50 mm", Pathway.NoCertificate)]
    [InlineData("except: [ { beyond: approval, loosens: The law says so. } ]", "51 mm", Pathway.Approval)]
    [InlineData(
        "except: [ { tier: no-certificate, within: { suspension-lift: 40 mm } }, { beyond: certificate } ]",
        "45 mm",
        Pathway.Certificate
    )]
    public void What_the_state_says_of_beyond_holds_and_else_what_the_nation_says(string exception, string lift, Pathway gives) =>
        Answer(State(exception), Job(lift)).ShouldBe(Only(gives));

    [Fact]
    public void Beyond_that_the_state_leaves_open_is_open_up_to_prohibited() =>
        Answer(State("except: [ { beyond: not-established } ]"), Job("51 mm"))
            .ShouldBe(new Tables.Outcome(Pathway.Certificate, Pathway.Prohibited)); // more onerous than the tier exceeded

    [Fact]
    public void An_exception_to_beyond_that_changes_shows_in_the_answers()
    {
        var (before, after) = (State(""), State("except: [ { beyond: approval } ]"));

        var report = Between(before, after);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(before, after);
    }

    private static Book State(string exception) =>
        SmallBook.Of(
            ("au", Nation),
            (
                "au-qld",
                SmallBook.Raise(
                    $$"""
                    - from: 2012-01-01
                      sources: [ { cite: law, clause: "2" } ]
                      adopts: { rule: au/ride-height/raise, as-of: amended }
                      {{exception}}
                    """
                )
            )
        );

    private static string Job(string lift) =>
        $"{{ registered-in: au-qld, on: 2026-11-28, vehicle: {{ category: MC }}, modification: {{ suspension-lift: {lift} }} }}";
}
