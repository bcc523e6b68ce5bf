using RuleBook.Authoring.Schemas;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Schemas;

/// <summary>Where a problem is said to be. The places are counted by hand in the texts below (derived).</summary>
public sealed class SchemaCheckTests
{
    [Fact]
    public void Problems_deep_inside_lists_and_alternatives_stand_where_they_are_written()
    {
        const string text = """
            topic: ride-height
            rulez: 1
            rules:
            - rule: A b
              title:
              versions:
              - from: 20
                sources: []
                tiers:
                - pathway: certificat
                  within: {suspension-lift: {}, z: {at-leest: 2 mm}}
                - foo
                adopts: [a]
            jurisdiction: au
            """;

        var found = SchemaCheck
            .Find("rules", YamlText.Read(text, "f"))
            .OrderBy(problem => problem.Mark)
            .Select(problem => $"{problem.Mark} {problem.Code}");

        found.ShouldBe([
            "f:2:1 unknown-key",
            "f:4:9 not-well-formed",
            "f:5:9 wrong-shape",
            "f:7:11 not-well-formed",
            "f:8:14 wrong-shape",
            "f:10:16 not-a-word",
            "f:11:33 wrong-shape",
            "f:11:41 unknown-key",
            "f:12:7 wrong-shape",
            "f:13:13 wrong-shape",
        ]);
    }

    [Fact]
    public void A_key_that_lacks_is_reported_at_the_mapping_that_lacks_it() =>
        SchemaCheck
            .Find("sources", YamlText.Read("\nfoo: 1\n", "f"))
            .Single(problem => problem.Code == "missing-key")
            .Mark.Line.ShouldBe(2);

    [Fact]
    public void A_misspelt_key_comes_with_the_right_one() =>
        SchemaCheck
            .Find("sources", YamlText.Read("sorces: []", "f"))
            .First(problem => problem.Code == "unknown-key")
            .Tip.ShouldContain("'sources'");

    [Theory]
    [InlineData("2018-10-26")]
    [InlineData("2016-12")]
    [InlineData("2013")]
    [InlineData("2009~")]
    [InlineData("\"[2018-05-15..2026-11-25]\"")]
    [InlineData("unknown")]
    public void Every_way_of_writing_a_partial_date_is_accepted(string date) => // ISO 8601-2:2019 (EDTF), levels 0 and 1
        SchemaCheck
            .Find(
                "rules",
                YamlText.Read(
                    $"{{topic: a, rules: [{{rule: b, title: c, versions: [{{from: {date}, sources: [{{cite: d}}], not-regulated: "
                        + $"e}}]}}], jurisdiction: au}}",
                    "f"
                )
            )
            .ShouldBeEmpty();
}
