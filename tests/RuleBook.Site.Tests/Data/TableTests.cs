using System.Text.Json;
using NJsonSchema;
using RuleBook.Site.Tests.Pages;
using RuleBook.Site.Tests.ReadBack;

namespace RuleBook.Site.Tests.Data;

public sealed class TableTests
{
    private static string File(string path) => TheBook.Site.Single(file => file.Path == path).Text();

    [Fact]
    public async Task The_json_keeps_its_published_schema_and_no_key_has_two_types()
    {
        var schema = await JsonSchema.FromJsonAsync(File("data/limits.schema.json"), TestContext.Current.CancellationToken);
        schema.Validate(File("data/limits.json")).ShouldBeEmpty();
        var types = JsonDocument
            .Parse(File("data/limits.json"))
            .RootElement.GetProperty("limits")
            .EnumerateArray()
            .SelectMany(row => row.EnumerateObject())
            .GroupBy(
                field => field.Name,
                field => field.Value.ValueKind is JsonValueKind.False ? JsonValueKind.True : field.Value.ValueKind
            );
        types.Where(field => field.Distinct().Count() > 1).Select(field => field.Key).ShouldBeEmpty();
    }

    [Fact]
    public void The_csv_has_the_columns_of_its_table_schema_and_a_row_for_each_of_the_json()
    {
        var package = JsonDocument.Parse(File("data/datapackage.json")).RootElement;
        foreach (var resource in package.GetProperty("resources").EnumerateArray())
        {
            var rows = ReadCsv.Of(File($"data/{resource.GetProperty("path").GetString()}"));
            var names = resource
                .GetProperty("schema")
                .GetProperty("fields")
                .EnumerateArray()
                .Select(field => field.GetProperty("name").GetString()!)
                .ToArray();
            if (rows.Count > 0)
                rows[0].ShouldBe(names);
            rows.ShouldAllBe(row => row.Count == names.Length);
            var json = JsonDocument.Parse(File($"data/{resource.GetProperty("name").GetString()}.json")).RootElement;
            json.GetProperty("limits").GetArrayLength().ShouldBe(Math.Max(0, rows.Count - 1));
        }
    }

    /// <summary>
    /// Queensland from 26 October 2018: 75 mm without and 150 mm with a certificate (minister's release and notifications of 2018).
    /// </summary>
    [Fact]
    public void A_row_says_amount_unit_pathway_and_clause()
    {
        var rows = JsonDocument
            .Parse(File("data/au-qld.json"))
            .RootElement.GetProperty("limits")
            .EnumerateArray()
            .Where(row =>
                row.GetProperty("rule").GetString() == "raise-four-wheel-drive"
                && row.TryGetProperty("from", out var from)
                && from.GetString() == "2018-10-26"
                && row.TryGetProperty("measure", out var measure)
                && measure.GetString() == "total-lift"
            )
            .ToArray();
        rows.Select(row =>
                (row.GetProperty("pathway").GetString(), row.GetProperty("upper").GetDecimal(), row.GetProperty("unit").GetString())
            )
            .ShouldBe([("no-certificate", 75m, "mm"), ("certificate", 150m, "mm")]);
    }
}
