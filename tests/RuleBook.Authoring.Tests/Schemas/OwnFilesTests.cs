using Newtonsoft.Json.Linq;
using NJsonSchema;
using RuleBook.Answers;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Schemas;
using RuleBook.Authoring.Tests.Inspecting;
using RuleBook.Jobs.Reading;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Schemas;

/// <summary>The schemas against the repository's own files: an editor must find nothing wrong in them (JSON Schema draft-07).</summary>
public sealed class OwnFilesTests
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(BadBook.Root, "..", ".."));

    public static TheoryData<string> Examples =>
        [.. Directory.GetFiles(Path.Combine(Root, "examples"), "*.yaml").Select(path => Path.GetFileName(path)).Order()];

    [Fact]
    public void The_book_has_no_error() => // the grammar of the data; warnings (an overdue source) are allowed
        Inspection.Run(Root, new DateOnly(2026, 11, 25)).Problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();

    [Fact]
    public void Every_file_of_the_book_has_the_shape_of_its_schema() =>
        BookFolder
            .Load(Root)
            .Files.Where(file => SchemaCheck.NameFor(file.Path) is not null)
            .SelectMany(file => SchemaCheck.Find(SchemaCheck.NameFor(file.Path)!, YamlText.Read(file.Text, file.Path)))
            .ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_has_the_shape_of_a_job(string name) =>
        SchemaCheck.Find("job", YamlText.ReadFile(Path.Combine(Root, "examples", name))).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_answer_to_an_example_has_the_shape_of_an_assessment_and_no_key_without_a_description(string name)
    {
        var book = BookReading.Open(Root);
        var job = JobReader.Read(YamlText.ReadFile(Path.Combine(Root, "examples", name)), book);
        var schema = await JsonSchema.FromJsonAsync(SchemaCheck.Text("assessment"), TestContext.Current.CancellationToken);

        var answer = JToken.Parse(AssessmentJson.Write(Assessor.Assess(book, job)));

        schema.Validate(answer).ShouldBeEmpty();
        Undescribed(answer, schema, "").ShouldBeEmpty();
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
}
