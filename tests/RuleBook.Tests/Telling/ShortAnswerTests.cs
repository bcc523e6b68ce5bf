using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>An answer in a few words, for a list of many. Derived, on limits of a scenario of our own.</summary>
public sealed class ShortAnswerTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("40 mm", "allowed without a certificate")]
    [InlineData("60 mm", "allowed with a certificate")]
    [InlineData("80 mm", "not allowed")]
    public void A_verdict_is_told_as_it_stands(string lift, string told) =>
        ShortAnswer.Of(Assess(Stating(Tiers), Lift(lift))).ShouldBe(told);

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_not_known_is_told_from_the_easiest_to_the_hardest_that_it_can_be() =>
        ShortAnswer.Of(Assess(Stating(Tiers), Lift("unknown"))).ShouldBe("undecided: no certificate to not allowed");

    /// <summary>2400 kg of tare are 100 kg over a GVM of 2300 kg.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("60 mm", "NOT AS PLANNED, 1 blocker; certificate")]
    [InlineData("80 mm", "not allowed; and 1 blocker")]
    [InlineData("unknown", "NOT AS PLANNED, 1 blocker; undecided")]
    public void What_stands_in_the_way_comes_first_and_an_open_verdict_is_told_as_open(string lift, string told) =>
        ShortAnswer
            .Of(Assess(Stating(Tiers), $$""" "vehicle": { "tare": "2400 kg", "ratings": { "gvm": "2300 kg" } }, {{Lift(lift)}} """))
            .ShouldBe(told);

    /// <summary>Nothing is changed, so there is no verdict to be told behind the blocker, nor one that is open.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void Where_nothing_is_changed_only_what_stands_in_the_way_is_told() =>
        ShortAnswer
            .Of(Assess(Stating(Tiers), """ "vehicle": { "tare": "2400 kg", "ratings": { "gvm": "2300 kg" } } """))
            .ShouldBe("NOT AS PLANNED, 1 blocker");

    /// <summary>2400 kg of tare are over a GVM of 2300 kg; 3100 kg of trailer over a rating of 3000 kg.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void Several_things_in_the_way_are_counted() =>
        ShortAnswer
            .Of(
                Assess(
                    Stating(Tiers),
                    """
                    "vehicle": { "tare": "2400 kg", "ratings": { "gvm": "2300 kg", "braked-tow": "3000 kg" } },
                    "trailer": { "mass": "3100 kg", "braked": "yes" }, "modification": { "suspension-lift": "40 mm" }
                    """
                )
            )
            .ShouldBe("NOT AS PLANNED, 2 blockers; no certificate");
}
