using RuleBook.Authoring.Records;

namespace RuleBook.Authoring.Tests.Records;

/// <summary>Two answers written by hand, and in what they differ.</summary>
[Trait("Basis", "derived")]
public sealed class AnswerComparisonTests
{
    private const string Then = """
        { "headline": "certificate", "between": [ "certificate", "certificate" ],
          "findings": [
            { "rule": "gone", "from": "2010-01-01", "between": [ "certificate", "certificate" ],
              "limits": [ { "tier": "t", "measure": "m", "bound": "at-most", "kind": "limit", "limit": 1, "unit": "mm" } ],
              "conditions": [ { "condition": "c", "state": "met" } ] },
            { "rule": "moved", "from": "2012-01-01", "between": [ "certificate", "certificate" ],
              "limits": [ { "tier": "t", "measure": "m", "bound": "at-most", "kind": "limit", "limit": 2, "unit": "mm" } ],
              "conditions": [ { "condition": "c", "state": "met" } ] },
            { "rule": "stays", "from": "2013-01-01", "between": [ "certificate", "certificate" ],
              "limits": [ { "tier": "t", "measure": "b", "bound": "at-most", "kind": "limit", "limit": 3, "unit": "mm" },
                          { "tier": "t", "measure": "a", "bound": "at-most", "kind": "limit", "limit": 4, "unit": "mm" },
                          { "tier": "t", "measure": "same", "bound": "at-most", "kind": "limit", "limit": 5, "unit": "mm" } ],
              "conditions": [ { "condition": "shown", "state": "to-show" }, { "condition": "same", "state": "met" } ] } ],
          "measures": [ { "measure": "lift", "value": 6, "unit": "mm" }, { "measure": "same", "value": 7, "unit": "mm" } ],
          "blockers": [ { "id": "b/1", "text": "one" }, { "id": "b/2", "text": "two" } ] }
        """;

    private const string Now = """
        { "headline": "undecided", "between": [ "no-certificate", "certificate" ],
          "findings": [
            { "rule": "come", "from": null, "between": [ "no-certificate", "no-certificate" ] },
            { "rule": "moved", "from": "2014-05-06", "between": [ "no-certificate", "no-certificate" ],
              "limits": [ { "tier": "t", "measure": "m", "bound": "at-most", "kind": "limit", "limit": 20, "unit": "mm" } ],
              "conditions": [ { "condition": "c", "state": "not-met" } ] },
            { "rule": "stays", "from": "2013-01-01", "between": [ "certificate", "certificate" ],
              "limits": [ { "tier": "t", "measure": "b", "bound": "under", "kind": "limit", "limit": 3, "unit": "mm" },
                          { "tier": "t", "measure": "same", "bound": "at-most", "kind": "limit", "limit": 5, "unit": "mm" } ],
              "conditions": [ { "condition": "shown", "state": "met" }, { "condition": "same", "state": "met" } ] } ],
          "measures": [ { "measure": "lift", "value": 6.5, "unit": "mm" }, { "measure": "same", "value": 7, "unit": "mm" } ],
          "blockers": [ { "id": "b/2", "text": "two" }, { "id": "b/3", "text": "three" } ] }
        """;

    [Fact]
    public void What_differs_is_told_by_kind_and_of_a_rule_that_moved_only_that_it_did()
    {
        var compared = AnswerComparison.Of(Then, Now);
        compared.Same.ShouldBeFalse();
        compared.Decision.ShouldBe(
            ("allowed with a certificate", "undecided, allowed without a certificate or allowed with a certificate")
        );
        compared.Differences.ShouldBe([
            new(DifferenceKind.RuleChanged, "come", "version in force", null, "since an unknown day: allowed without a certificate", ""),
            new(DifferenceKind.RuleChanged, "gone", "version in force", "since 2010-01-01: allowed with a certificate", null, null),
            new(
                DifferenceKind.RuleChanged,
                "moved",
                "version in force",
                "since 2012-01-01: allowed with a certificate",
                "since 2014-05-06: allowed without a certificate",
                "2014-05-06"
            ),
            new(DifferenceKind.FigureCorrected, "stays", "a (t)", "at-most 4 mm", null, null),
            new(DifferenceKind.FigureCorrected, "stays", "b (t)", "at-most 3 mm", "under 3 mm", null),
            new(DifferenceKind.Condition, "stays", "shown", "to-show", "met", null),
            new(DifferenceKind.Reckoned, "", "lift", "6 mm", "6.5 mm", null),
            new(DifferenceKind.Blocker, "", "b/1", "one", null, null),
            new(DifferenceKind.Blocker, "", "b/3", null, "three", null),
        ]);
    }

    [Fact]
    public void The_same_answer_in_other_words_differs_in_nothing_and_the_same_text_is_the_same()
    {
        var other = AnswerComparison.Of(Then, Then.Replace("\"headline\"", " \"headline\"", StringComparison.Ordinal));
        (other.Same, other.Decision).ShouldBe((false, null));
        other.Differences.ShouldBeEmpty();
        AnswerComparison.Of(Then, Then).Same.ShouldBeTrue();
    }
}
