using System.Text.Json;
using Newtonsoft.Json.Linq;
using NJsonSchema;
using RuleBook.Authoring.Schemas;

namespace RuleBook.Cli.Tests;

/// <summary>Every answer in JSON has the shape that is published, and no key that the shape does not describe.</summary>
public sealed class JsonShapeTests
{
    public static TheoryData<string> Examples =>
        [
            .. Directory
                .GetFiles(Path.Combine(Invocation.Root, "examples"), "*.yaml")
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task An_answer_to_a_job_has_its_published_shape(string example)
    {
        var job = Path.Combine(Invocation.Root, "examples", example);
        await Check("assessment", await Printed("assess", job, "--format", "json"));
        await Check("margin", await Printed("margin", job, "--format", "json"));
        await Check("remedy", await Printed("remedy", job, "--format", "json"));
        await Check("record", await Printed("assess", job, "--format", "record"));
        var across = await Printed("across", job, "--format", "json");
        await Check("across", across);
        using var answers = JsonDocument.Parse(across);
        foreach (var answer in answers.RootElement.GetProperty("answers").EnumerateArray())
            await Check("assessment", answer.GetRawText());
    }

    [Theory]
    [InlineData("timeline", "timeline", "ride-height")]
    [InlineData("timeline", "timeline", "tyres-and-wheels")]
    [InlineData("timeline", "timeline", "road-use")]
    [InlineData("limits", "limits", "au-qld")]
    [InlineData("limits", "limits", "au")]
    [InlineData("limits", "limits", "nz")]
    [InlineData("limits", "limits", "us-ca")]
    [InlineData("inspection", "inspect")]
    [InlineData("case-run", "cases")]
    [InlineData("edition-list", "editions")]
    public async Task What_a_command_tells_of_the_book_has_its_published_shape(string schema, params string[] command) =>
        await Check(schema, await Printed([.. command, "--format", "json"]));

    [Fact]
    public async Task What_is_open_in_a_state_has_its_published_shape_and_is_that_of_the_state()
    {
        var open = await Printed("gaps", "au-tas", "--format", "json");
        await Check("gaps", open);
        using var told = JsonDocument.Parse(open);
        var places = told
            .RootElement.GetProperty("documents")
            .EnumerateArray()
            .Select(each => each.GetProperty("jurisdiction").GetString());
        places.Distinct().ShouldBe(["au-tas"]); // nobody has established how far Tasmania lets one raise a vehicle
    }

    private static async Task Check(string name, string json)
    {
        var schema = await JsonSchema.FromJsonAsync(SchemaCheck.Text(name), TestContext.Current.CancellationToken);
        var answer = JToken.Parse(json);
        schema.Validate(answer).ShouldBeEmpty(name);
        Undescribed(answer, schema, name).Distinct().ShouldBeEmpty();
    }

    private static IEnumerable<string> Undescribed(JToken token, JsonSchema schema, string path) =>
        token switch
        {
            JObject keys when schema.ActualSchema.Properties.Count > 0 => keys.Properties()
                .SelectMany(entry =>
                    schema.ActualSchema.Properties.TryGetValue(entry.Name, out var inner)
                        ? Undescribed(entry.Value, inner.ActualSchema, $"{path}/{entry.Name}")
                        : [$"{path}/{entry.Name}"]
                ),
            JArray items when schema.ActualSchema.Item is { } item => items.SelectMany(each => Undescribed(each, item.ActualSchema, path)),
            _ => [],
        };

    private static async Task<string> Printed(params string[] args)
    {
        var answer = await Invocation.Of(args);
        answer.Error.ShouldBeEmpty();
        return answer.Out;
    }
}
