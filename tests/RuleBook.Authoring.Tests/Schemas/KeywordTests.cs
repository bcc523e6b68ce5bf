using System.Text.Json;
using NJsonSchema;
using RuleBook.Authoring.Schemas;

namespace RuleBook.Authoring.Tests.Schemas;

/// <summary>
/// The validator passes over keywords that it does not know, and over misspelt ones, without a word. What each keyword means is taken from
/// JSON Schema draft-07 (Validation, clause named); that the validator honours it is tried here with a value that the keyword forbids.
/// </summary>
public sealed class KeywordTests
{
    private static readonly string[] Annotations = ["$schema", "title", "description", "examples", "definitions"];

    public static TheoryData<string, string, string> Honoured =>
        new()
        {
            { "type", "{\"type\": \"string\"}", "1" }, // 6.1.1
            { "enum", "{\"enum\": [\"a\"]}", "\"b\"" }, // 6.1.2
            { "maxLength", "{\"type\": \"string\", \"maxLength\": 1}", "\"ab\"" }, // 6.3.1
            { "minLength", "{\"type\": \"string\", \"minLength\": 2}", "\"a\"" }, // 6.3.2
            { "pattern", "{\"type\": \"string\", \"pattern\": \"^a$\"}", "\"b\"" }, // 6.3.3
            { "items", "{\"type\": \"array\", \"items\": {\"type\": \"string\"}}", "[1]" }, // 6.4.1
            { "maxItems", "{\"type\": \"array\", \"maxItems\": 1}", "[1, 2]" }, // 6.4.3
            { "minItems", "{\"type\": \"array\", \"minItems\": 1}", "[]" }, // 6.4.4
            { "uniqueItems", "{\"type\": \"array\", \"uniqueItems\": true}", "[\"a\", \"a\"]" }, // 6.4.5
            { "maxProperties", "{\"type\": \"object\", \"maxProperties\": 1}", "{\"a\": 1, \"b\": 2}" }, // 6.5.1
            { "minProperties", "{\"type\": \"object\", \"minProperties\": 1}", "{}" }, // 6.5.2
            { "required", "{\"type\": \"object\", \"required\": [\"a\"]}", "{}" }, // 6.5.3
            { "properties", "{\"type\": \"object\", \"properties\": {\"a\": {\"type\": \"string\"}}}", "{\"a\": 1}" }, // 6.5.4
            {
                "patternProperties",
                "{\"type\": \"object\", \"patternProperties\": {\"^a\": " + "{\"type\": " + "\"string\"}}}",
                "{\"ab\": 1}"
            }, // 6.5.5
            { "additionalProperties", "{\"type\": \"object\", \"additionalProperties\": false}", "{\"a\": 1}" }, // 6.5.6
            { "$ref", "{\"$ref\": \"#/definitions/a\", \"definitions\": {\"a\": {\"type\": \"string\"}}}", "1" }, // Core 8.3
        };

    [Theory]
    [MemberData(nameof(Honoured))]
    public async Task A_keyword_that_the_schemas_may_use_is_honoured_by_the_validator(string keyword, string schema, string forbidden)
    {
        var loaded = await JsonSchema.FromJsonAsync(schema, TestContext.Current.CancellationToken);

        loaded.Validate(forbidden).ShouldNotBeEmpty(keyword);
    }

    [Theory]
    [InlineData("{\"const\": \"a\"}", "\"b\"")] // draft-07 6.1.3
    [InlineData("{\"if\": {\"type\": \"string\"}, \"then\": {\"maxLength\": 1}}", "\"ab\"")] // draft-07 6.6
    [InlineData("{\"type\": \"array\", \"contains\": {\"type\": \"string\"}}", "[1]")] // draft-07 6.4.6
    [InlineData("{\"type\": \"object\", \"propertyNames\": {\"pattern\": \"^a\"}}", "{\"b\": 1}")] // draft-07 6.5.8
    [InlineData("{\"type\": \"object\", \"dependentRequired\": {\"a\": [\"b\"]}}", "{\"a\": 1}")] // 2020-12 6.5.4
    [InlineData("{\"type\": \"array\", \"prefixItems\": [{\"type\": \"string\"}]}", "[1]")] // 2020-12 10.3.1.1
    [InlineData("{\"type\": \"object\", \"unevaluatedProperties\": false}", "{\"a\": 1}")] // 2020-12 11.3
    [InlineData("{\"type\": \"object\", \"requird\": [\"a\"]}", "{}")] // misspelt
    public async Task A_keyword_that_the_validator_passes_over_forbids_nothing(string schema, string forbidden)
    {
        var loaded = await JsonSchema.FromJsonAsync(schema, TestContext.Current.CancellationToken);

        loaded.Validate(forbidden).ShouldBeEmpty("it is honoured now, and may be used");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_uses_no_keyword_that_the_validator_passes_over(string name)
    {
        string[] allowed = [.. Annotations, .. Honoured.Select(row => row.Data.Item1)];

        Schemas(Parse(name))
            .SelectMany(schema => schema.EnumerateObject())
            .Select(entry => entry.Name)
            .Distinct()
            .Except(allowed)
            .ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_key_that_an_editor_offers_comes_with_a_description(string name)
    {
        var root = Parse(name);
        var bare = Schemas(root)
            .Where(schema => schema.TryGetProperty("properties", out _))
            .SelectMany(schema => schema.GetProperty("properties").EnumerateObject())
            .Where(entry => !Followed(root, entry.Value).TryGetProperty("description", out _))
            .Select(entry => entry.Name);

        bare.ShouldBeEmpty();
    }

    [Fact]
    public void A_definition_says_the_same_in_every_schema()
    {
        var definitions = SchemaCheck
            .Names.Select(Parse)
            .Where(root => root.TryGetProperty("definitions", out _))
            .SelectMany(root => root.GetProperty("definitions").EnumerateObject())
            .GroupBy(entry => entry.Name, entry => entry.Value.GetRawText());

        definitions.Where(texts => texts.Distinct().Count() > 1).Select(texts => texts.Key).ShouldBeEmpty();
    }

    [Fact]
    public void All_schemas_are_tried() => SchemaCheck.Names.Count.ShouldBeGreaterThanOrEqualTo(7);

    public static TheoryData<string> Names => [.. SchemaCheck.Names];

    private static JsonElement Parse(string name) => JsonDocument.Parse(SchemaCheck.Text(name)).RootElement;

    private static JsonElement Followed(JsonElement root, JsonElement schema) =>
        schema.TryGetProperty("$ref", out var reference)
            ? root.GetProperty("definitions").GetProperty(reference.GetString()!.Split('/')[^1])
            : schema;

    /// <summary>The schema and every schema inside it.</summary>
    private static IEnumerable<JsonElement> Schemas(JsonElement schema)
    {
        if (schema.ValueKind != JsonValueKind.Object)
            yield break;
        yield return schema;
        foreach (var entry in schema.EnumerateObject())
        {
            var inner =
                entry.Name is "properties" or "patternProperties" or "definitions"
                    ? entry.Value.EnumerateObject().Select(named => named.Value)
                : entry.Value.ValueKind == JsonValueKind.Object ? [entry.Value]
                : entry.Value.ValueKind == JsonValueKind.Array ? entry.Value.EnumerateArray()
                : [];
            foreach (var one in inner.SelectMany(Schemas))
                yield return one;
        }
    }
}
