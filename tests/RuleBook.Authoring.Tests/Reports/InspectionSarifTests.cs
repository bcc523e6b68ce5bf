using System.Text.Json;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Reports;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Reports;

/// <summary>
/// What SARIF requires, from OASIS Standard "Static Analysis Results Interchange Format (SARIF) Version 2.1.0" with errata 01; sections
/// named.
/// </summary>
public sealed class InspectionSarifTests
{
    private static readonly Problem Problem = Text.Problem.Error(
        "unknown-key",
        new Mark("jurisdictions/au-sa/ride height.yaml", 3, 7),
        "'rulez' is not a key here",
        "did you mean 'rules'?"
    );

    [Fact]
    public void The_log_names_its_version_and_has_runs() // 3.13.2 version is "2.1.0"; 3.13.4 runs is required
    {
        var log = Write(Problem);

        log.GetProperty("version").GetString().ShouldBe("2.1.0");
        log.GetProperty("$schema").GetString().ShouldEndWith("sarif-schema-2.1.0.json"); // 3.13.3
        log.GetProperty("runs").GetArrayLength().ShouldBe(1);
    }

    [Fact]
    // 3.14.6 tool, 3.18.2 driver, 3.19.8 name; 3.14.23 results: [] when none.
    public void A_run_names_its_tool_and_has_results_even_when_nothing_is_found()
    {
        var run = Write().GetProperty("runs")[0];

        run.GetProperty("tool").GetProperty("driver").GetProperty("name").GetString().ShouldBe("rulebook");
        run.GetProperty("results").GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public void Every_rule_has_an_id_once_and_texts() // 3.49.3 id; 3.19.23 rules are unique; 3.12.3 text
    {
        var rules = Write()
            .GetProperty("runs")[0]
            .GetProperty("tool")
            .GetProperty("driver")
            .GetProperty("rules")
            .EnumerateArray()
            .ToArray();

        rules.Select(rule => rule.GetProperty("id").GetString()).ShouldBeUnique();
        rules.ShouldAllBe(rule =>
            rule.GetProperty("shortDescription").GetProperty("text").GetString()!.Length > 0
            && rule.GetProperty("fullDescription").GetProperty("text").GetString()!.Length > 0
            && rule.GetProperty("help").GetProperty("text").GetString()!.Length > 0
        );
    }

    [Theory] // 3.49.14 defaultConfiguration, 3.50.3 level
    [InlineData("no-source", "error")]
    [InlineData("source-overdue", "warning")]
    public void A_rule_says_at_which_level_it_is_told_of(string code, string level) =>
        Write()
            .GetProperty("runs")[0]
            .GetProperty("tool")
            .GetProperty("driver")
            .GetProperty("rules")
            .EnumerateArray()
            .Single(rule => rule.GetProperty("id").GetString() == code)
            .GetProperty("defaultConfiguration")
            .GetProperty("level")
            .GetString()
            .ShouldBe(level);

    [Fact]
    // 3.27.11 message, 3.27.10 level, 3.27.5 ruleId, 3.27.6 ruleIndex.
    public void A_result_has_a_message_a_level_and_the_rule_that_its_index_names()
    {
        var run = Write(Problem).GetProperty("runs")[0];
        var result = run.GetProperty("results")[0];

        result.GetProperty("message").GetProperty("text").GetString().ShouldBe("'rulez' is not a key here. Did you mean 'rules'?");
        result.GetProperty("level").GetString().ShouldBe("error");
        Write(Problem with { Severity = Severity.Warning })
            .GetProperty("runs")[0]
            .GetProperty("results")[0]
            .GetProperty("level")
            .GetString()
            .ShouldBe("warning");
        var rule = run.GetProperty("tool").GetProperty("driver").GetProperty("rules")[result.GetProperty("ruleIndex").GetInt32()];
        rule.GetProperty("id").GetString().ShouldBe(result.GetProperty("ruleId").GetString());
    }

    [Fact]
    // 3.4.3 uri (RFC 3986), 3.30.5 startLine, 3.30.6 startColumn.
    public void A_place_is_a_relative_address_and_a_region_that_counts_from_one()
    {
        var place = Write(Problem)
            .GetProperty("runs")[0]
            .GetProperty("results")[0]
            .GetProperty("locations")[0]
            .GetProperty("physicalLocation");

        place.GetProperty("artifactLocation").GetProperty("uri").GetString().ShouldBe("jurisdictions/au-sa/ride%20height.yaml");
        place.GetProperty("region").GetProperty("startLine").GetInt32().ShouldBe(3);
        place.GetProperty("region").GetProperty("startColumn").GetInt32().ShouldBe(7);
    }

    [Fact]
    public void Columns_are_said_to_count_utf_16_units() => // 3.14.17 columnKind; the reader's columns are .NET characters
        Write().GetProperty("runs")[0].GetProperty("columnKind").GetString().ShouldBe("utf16CodeUnits");

    private static JsonElement Write(params Problem[] problems)
    {
        using var stream = new MemoryStream();
        InspectionSarif.Write(new InspectionReport([.. problems], 1, "sha256:0", null), stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
