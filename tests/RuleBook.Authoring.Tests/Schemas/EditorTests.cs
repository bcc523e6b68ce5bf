using System.Text.Json;
using System.Text.RegularExpressions;
using NJsonSchema;
using RuleBook.Authoring.Schemas;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Schemas;

/// <summary>
/// What an editor shows to a maintainer: an example beside each key of a text, and snippets of the usual edits. All are what the schemas
/// allow.
/// </summary>
public sealed partial class EditorTests
{
    private static readonly string SnippetFile = Path.Combine(TestBook.Folder, ".vscode", "rulebook.code-snippets");

    public static TheoryData<string> Maintained =>
        ["rules", "jurisdiction", "sources", "certification", "vocabulary", "reference", "editions", "cases"];

    public static TheoryData<string> Snippets =>
        [.. JsonDocument.Parse(File.ReadAllText(SnippetFile)).RootElement.EnumerateObject().Select(snippet => snippet.Name)];

    [Theory]
    [MemberData(nameof(Maintained))]
    public void A_key_that_takes_any_text_has_an_example(string name) =>
        Texts(Parse(name)).Where(text => !text.Schema.TryGetProperty("examples", out _)).Select(text => text.Key).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Maintained))]
    public async Task An_example_is_what_its_key_allows(string name)
    {
        foreach (var (key, schema) in Texts(Parse(name)))
        {
            var loaded = await JsonSchema.FromJsonAsync(schema.GetRawText(), TestContext.Current.CancellationToken);
            foreach (var example in schema.GetProperty("examples").EnumerateArray())
                loaded.Validate(example.GetRawText()).ShouldBeEmpty($"{key}: {example}");
        }
    }

    [Theory]
    [MemberData(nameof(Snippets))]
    public void A_snippet_with_its_defaults_is_a_version_that_the_schema_allows(string name)
    {
        var body = JsonDocument
            .Parse(File.ReadAllText(SnippetFile))
            .RootElement.GetProperty(name)
            .GetProperty("body")
            .EnumerateArray()
            .Select(line => line.GetString()!);
        string[] lines = [.. body.Select(line => Placeholder().Replace(line, "$1"))];
        if (!lines[0].StartsWith("- ", StringComparison.Ordinal))
            lines = ["- from: 2020", "  sources: [ { cite: law } ]", "  not-regulated: It is not.", .. lines.Select(line => $"  {line}")];
        var text =
            "jurisdiction: au-qld\ntopic: ride-height\nrules:\n  - rule: one\n    title: One\n    versions:\n"
            + string.Concat(lines.Select(line => $"      {line}\n"));

        SchemaCheck.Find("rules", YamlText.Read(text, "snippet")).ShouldBeEmpty(text);
    }

    private static JsonElement Parse(string name) => JsonDocument.Parse(SchemaCheck.Text(name)).RootElement;

    /// <summary>The schemas of keys that take a text or a number of any kind, and the definitions of such.</summary>
    private static IEnumerable<(string Key, JsonElement Schema)> Texts(JsonElement schema) =>
        schema.ValueKind switch
        {
            JsonValueKind.Object => schema
                .EnumerateObject()
                .Where(entry => entry.Name is "properties" or "definitions" && entry.Value.ValueKind == JsonValueKind.Object)
                .SelectMany(entry => entry.Value.EnumerateObject())
                .Where(entry => TakesText(entry.Value))
                .Select(entry => (entry.Name, entry.Value))
                .Concat(schema.EnumerateObject().SelectMany(entry => Texts(entry.Value))),
            JsonValueKind.Array => schema.EnumerateArray().SelectMany(Texts),
            _ => [],
        };

    private static bool TakesText(JsonElement schema) =>
        schema.ValueKind == JsonValueKind.Object
        && schema.TryGetProperty("type", out var type)
        && !schema.TryGetProperty("enum", out _)
        && (
            type.ValueKind == JsonValueKind.Array ? [.. type.EnumerateArray().Select(one => one.GetString()!)] : new[] { type.GetString()! }
        )
            is var types
        && types.Contains("string")
        && !types.Contains("object")
        && !types.Contains("array");

    [GeneratedRegex(@"\$\{\d+:([^}]*)\}")]
    private static partial Regex Placeholder();
}
