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

    /// <summary>Every kind of fault that a schema knows, in the words of who writes the file, with what would be right.</summary>
    [Fact]
    public void What_a_schema_does_not_allow_is_told_in_words_with_what_would_be_right()
    {
        var text = $$"""
            vehicles: {}
            cases:
              - id: {{new string('a', 81)}}
                says: [A sentence.]
                vehicle: wagon
                changes: none
                on: []
                each: {}
                expect: { verdict: certificat, between: [certificate] }
                because: { memory: so }
              - id: No id
                say: A sentence.
                vehicle:
                on: [2019-01-01, 2019-01-01]
                expect: { between: [certificate, approval, prohibited], may-certify: maybe }
                because: so
            """;

        SchemaCheck
            .Find("cases", YamlText.Read(text, "f"))
            .OrderBy(problem => problem.Mark)
            .Select(problem => problem.ToString())
            .ShouldBe([
                "f:1:11: error wrong-shape: there are too few keys (at least 1)",
                "f:3:9: error not-well-formed: the text is too long (at most 80)",
                "f:4:11: error wrong-shape: a text is needed here (What the case shows, in one sentence.)",
                "f:6:14: error wrong-shape: keys with values are needed here (What differs from the base vehicle, by "
                    + "the keys of a job.)",
                "f:7:9: error wrong-shape: the list is too short (at least 1)",
                "f:8:11: error wrong-shape: there are too few keys (at least 1)",
                "f:9:24: error not-a-word: 'certificat' is not one of no-certificate, certificate, approval, "
                    + "prohibited, undecided (did you mean 'certificate'?)",
                "f:9:45: error wrong-shape: the list is too short (at least 2)",
                "f:11:5: error missing-key: the key 'says' is missing (add 'says:')",
                "f:11:9: error not-well-formed: 'No id' does not have the form that is needed here (A name in lower "
                    + "case with hyphens; never reused for something else.)",
                "f:12:5: error unknown-key: 'say' is not a key here (did you mean 'says'?)",
                "f:13:13: error wrong-shape: a value is needed here (The name of a base vehicle of this file.)",
                "f:14:9: error wrong-shape: an entry of the list is given twice (keep one of them)",
                "f:15:24: error wrong-shape: the list is too long (at most 2)",
                "f:15:74: error not-a-word: 'maybe' is not one of yes, no, open",
                "f:16:14: error wrong-shape: keys with values are needed here (Where the answer is from.)",
            ]);
    }

    /// <summary>YAML reads yes and no as true and false in some hands; who writes them is told of yes and no.</summary>
    [Fact]
    public void Who_writes_neither_yes_nor_no_is_told_of_both() =>
        SchemaCheck
            .Find("jurisdiction", YamlText.Read("registers: perhaps", "f"))
            .Single(problem => problem.Code == "not-a-word")
            .ToString()
            .ShouldBe("f:1:12: error not-a-word: 'perhaps' is not one of yes, no");

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
