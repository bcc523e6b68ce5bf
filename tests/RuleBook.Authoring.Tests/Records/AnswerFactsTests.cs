using RuleBook.Authoring.Records;

namespace RuleBook.Authoring.Tests.Records;

/// <summary>What of a kept answer is compared with today's, read from one written by hand.</summary>
[Trait("Basis", "derived")]
public sealed class AnswerFactsTests
{
    [Fact]
    public void Rules_figures_conditions_measures_and_blockers_are_each_read_by_what_names_them()
    {
        var facts = AnswerFacts.Of(
            """
            { "headline": "certificate", "between": [ "certificate", "certificate" ],
              "findings": [ { "rule": "raise", "from": "2012-01-01", "between": [ "no-certificate", "approval" ],
                "limits": [ { "tier": "free", "measure": "lift", "bound": "at-least", "kind": "limit", "limit": 5, "unit": "mm" } ],
                "exceeded": [ { "tier": "free", "measure": "lift", "bound": "under", "kind": "limit", "limit": 7, "unit": "mm" } ],
                "closed": [ { "limits": [ { "tier": "more", "measure": "lift", "bound": "over", "kind": "limit", "limit": 8, "unit": "mm" },
                  { "tier": "most", "measure": "lift", "bound": null, "kind": "not-established" } ] } ],
                "conditions": [ { "condition": "kept", "state": "to-show" } ] } ],
              "of-use": [ { "rule": "use", "from": null, "between": [ "prohibited", "prohibited" ],
                "conditions": [ { "condition": "lamp", "state": "met" } ] } ],
              "measures": [ { "measure": "lift", "value": 6, "unit": "mm" } ],
              "blockers": [ { "id": "unsafe/x", "text": "x is loose" } ] }
            """
        );
        facts.Decision.ShouldBe("allowed with a certificate");
        facts.Rules.ShouldBe(
            new Dictionary<string, (string, string)>
            {
                ["raise"] = ("2012-01-01", "allowed without a certificate or allowed with the authority's approval first"),
                ["use"] = ("", "not allowed"),
            }
        );
        facts.Figures.ShouldBe(
            new Dictionary<(string, string, string, string), string>
            {
                [("raise", "free", "lift", "lower")] = "at-least 5 mm",
                [("raise", "free", "lift", "upper")] = "under 7 mm",
                [("raise", "more", "lift", "lower")] = "over 8 mm",
                [("raise", "most", "lift", "upper")] = "not-established",
            }
        );
        facts.Conditions.ShouldBe(new Dictionary<(string, string), string> { [("raise", "kept")] = "to-show", [("use", "lamp")] = "met" });
        facts.Measures.ShouldBe(new Dictionary<string, string> { ["lift"] = "6 mm" });
        facts.Blockers.ShouldBe(new Dictionary<string, string> { ["unsafe/x"] = "x is loose" });
    }

    [Theory]
    [InlineData("nothing-to-judge", "nothing to judge")]
    [InlineData("blocked", "not as planned; the modification itself allowed without a certificate or not allowed")]
    [InlineData("undecided", "undecided, allowed without a certificate or not allowed")]
    [InlineData("prohibited", "allowed without a certificate or not allowed")]
    public void A_decision_is_told_in_the_words_of_an_answer(string headline, string told) =>
        AnswerFacts.Of($$"""{ "headline": "{{headline}}", "between": [ "no-certificate", "prohibited" ] }""").Decision.ShouldBe(told);
}
