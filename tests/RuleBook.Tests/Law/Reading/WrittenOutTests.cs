using System.Text;
using System.Text.Json;
using RuleBook.Law.Reading;
using RuleBook.Tests.Jobs;
using RuleBook.Text;

namespace RuleBook.Tests.Law.Reading;

/// <summary>
/// What a file says once is as if it were said wherever it holds. Derived: each file beside the same one written at length by hand.
/// </summary>
[Trait("Basis", "derived")]
public sealed class WrittenOutTests
{
    private const string Topic = "jurisdictions/xa/ride-height.yaml";

    private const string Head =
        """ "from": "unknown", "in-force-by": "2020", "sources": [ { "cite": "act" } ], "measured": { "mass-state": "loaded" } """;

    [Fact]
    public void A_rule_that_states_its_content_has_it_as_its_version() =>
        Same(
            """{ "rules": [ { "rule": "a", "note": "n", "title": "A", "for": {}, "from": "2020", "sources": """
                + """[], "not-regulated": "free" } ] }""",
            """{ "rules": [ { "rule": "a", "title": "A", "for": {}, "versions": [ { "note": "n", "from": "2020", "sources": """
                + """[], "not-regulated": "free" } ] } ] }"""
        );

    [Fact]
    public void What_comes_after_stands_under_later() =>
        Same(
            """{ "rules": [ { "rule": "a", "from": "2020", "tiers": [], "later": [ { "from": "2021", "like": "2020" } ] } ] }""",
            """{ "rules": [ { "rule": "a", "versions": [ { "from": "2020", "tiers": [] }, { "from": "2021", "like": "2020" } ] } ] }"""
        );

    [Theory]
    [InlineData(
        """{ "tiers": [] }""",
        """{ "tiers": [], "from": "unknown", "in-force-by": "2020", "sources": [ { "cite": "act" } ], "measured": """
            + """{ "mass-state": "loaded" } }"""
    )]
    [InlineData(
        """{ "not-regulated": "free", "in-force-by": "2010", "sources": [ { "cite": "b" } ] }""",
        """{ "not-regulated": "free", "in-force-by": "2010", "sources": [ { "cite": "b" } ], "from": "unknown" }"""
    )]
    [InlineData("""{ "from": "2021", "tiers": [] }""", """{ "from": "2021", "tiers": [], "measured": { "mass-state": "loaded" } }""")]
    [InlineData("""{ "announced": "2027", "not-regulated": "free" }""", """{ "announced": "2027", "not-regulated": "free" }""")]
    [InlineData("""{ "proposed": "yes", "not-regulated": "free" }""", """{ "proposed": "yes", "not-regulated": "free" }""")]
    public void A_version_has_from_the_head_what_it_leaves_out_and_the_sources_with_the_start_alone(string version, string whole) =>
        Same(
            $$"""{ {{Head}}, "rules": [ { "rule": "a", "versions": [ {{version}} ] }, { "rule": "b", "versions": [ { "tiers": """
                + $$"""[] } ] } ] }""",
            $$"""{ "rules": [ { "rule": "a", "versions": [ {{whole}} ] }, { "rule": "b", "versions": [ { "tiers": [], {{Head}} } ] } ] }"""
        );

    [Fact]
    public void What_comes_after_the_first_version_starts_on_no_day_of_the_head() =>
        Same(
            $$"""{ {{Head}}, "rules": [ { "rule": "a", "tiers": [], "later": [ { "tiers": [] } ] } ] }""",
            $$"""{ "rules": [ { "rule": "a", "versions": [ { "tiers": [], {{Head}} }, { "tiers": """
                + $$"""[], "measured": { "mass-state": "loaded" } } ] } ] }"""
        );

    [Fact]
    public void What_the_rule_says_for_its_versions_goes_before_the_head() =>
        Same(
            $$"""{ {{Head}}, "rules": [ { "rule": "a", "measured": {}, "sources": [], "versions": [ { "tiers": [] } """
                + $$"""] }, { "rule": "b", "tiers": [] } ] }""",
            $$"""
            { "rules": [ { "rule": "a", "measured": {}, "sources": [], "versions": [ { "tiers": [], "from": "unknown", "in-force-by": "2020" } ] },
              { "rule": "b", "versions": [ { "tiers": [], {{Head}} } ] } ] }
            """
        );

    [Theory]
    [InlineData(
        """{ "rule": "b", "title": "B", "like": "a" }""",
        """{ "rule": "b", "title": "B", "versions": [ { "note": "n", "tiers": [], "beyond": "prohibited" } ] }"""
    )]
    [InlineData(
        """{ "rule": "b", "like": "a", "for": {}, "not-regulated": "free" }""",
        """{ "rule": "b", "for": {}, "versions": [ { "not-regulated": "free", "note": "n" } ] }"""
    )]
    [InlineData(
        """{ "rule": "b", "like": "a", "note": "m", "versions": [] }""",
        """{ "rule": "b", "note": "m", "versions": [] }""",
        "key-without-effect rules[1].like"
    )]
    [InlineData("""{ "rule": "b", "like": "c" }""", """{ "rule": "b", "like": "c" }""")]
    public void A_rule_is_like_one_above_but_for_its_name_whom_it_binds_and_what_it_says(string rule, string whole, params string[] told) =>
        Same(
            $$"""{ "rules": [ { "rule": "a", "for": { "x": "y" }, "aliases": "z", "note": "n", "tiers": """
                + $$"""[], "beyond": "prohibited" }, {{rule}} ] }""",
            $$"""
            { "rules": [ { "rule": "a", "for": { "x": "y" }, "aliases": "z", "versions": [ { "note": "n", "tiers": [], "beyond": "prohibited" } ] },
              {{whole}} ] }
            """,
            Topic,
            told
        );

    [Fact]
    public void What_was_read_for_the_figures_of_another_rule_carries_none_of_a_rules_own() =>
        Same(
            """{ "rules": [ { "rule": "a", "from": "2020", "sources": ["s"], "corrected": [], "tiers": [] }, """
                + """{ "rule": "b", "like": "a", "tiers": [] } ] }""",
            """
            { "rules": [ { "rule": "a", "versions": [ { "from": "2020", "sources": ["s"], "corrected": [], "tiers": [] } ] },
              { "rule": "b", "versions": [ { "tiers": [], "from": "2020" } ] } ] }
            """
        );

    [Fact]
    public void A_source_was_compared_when_the_head_says_unless_it_says_so_itself() =>
        Same(
            """{ "checked": "2026-11", "recheck-after": "2027-11", "sources": [ { "source": "a" }, """
                + """{ "source": "b", "checked": "2025" } ] }""",
            """{ "sources": [ { "source": "a", "checked": "2026-11", "recheck-after": "2027-11" }, """
                + """{ "source": "b", "checked": "2025", "recheck-after": "2027-11" } ] }""",
            "jurisdictions/xa/sources.yaml"
        );

    [Theory]
    [InlineData(""" "from": "2020", "measured": {}, "rules": [ { "rule": "a", "from": "2021", "tiers": [] } ] """, "from")]
    [InlineData(""" "from": "2020", "sources": [], "rules": [ { "rule": "a", "sources": [], "tiers": [] } ] """, "sources")]
    [InlineData(""" "measured": {}, "rules": [ { "rule": "a", "not-regulated": "free" } ] """, "measured")]
    [InlineData(""" "in-force-by": "2020", "rules": [ { "rule": "a", "from": "2021", "tiers": [] } ] """, "in-force-by")]
    public void What_stands_at_the_head_and_holds_for_nothing_is_told(string file, string idle)
    {
        var problems = new List<Problem>();
        WrittenOut.Of(new BookFile(Topic, Nodes.Of($"{{{file}}}")), problems);
        Told(problems).ShouldBe([$"key-without-effect {idle}"]);
    }

    private static void Same(string file, string whole, string path = Topic, params string[] told)
    {
        var problems = new List<Problem>();
        var written = WrittenOut.Of(new BookFile(path, Nodes.Of(file)), problems).Root;
        Text(written).ShouldBe(Text(Nodes.Of(whole)));
        Told(problems).ShouldBe(told);
    }

    private static IEnumerable<string> Told(List<Problem> problems) => problems.Select(problem => $"{problem.Code} {problem.Mark.File}");

    private static string Text(Node node)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer))
            NodeJson.Write(json, node);
        return Encoding.UTF8.GetString(buffer.ToArray());
    }
}
