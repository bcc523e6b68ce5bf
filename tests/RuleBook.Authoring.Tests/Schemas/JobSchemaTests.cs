using Newtonsoft.Json.Linq;
using RuleBook.Authoring.Schemas;
using RuleBook.Jobs.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Schemas;

/// <summary>What an editor offers for a job (schema/job.schema.json) and what the command reads are the same keys.</summary>
public sealed class JobSchemaTests
{
    private static readonly JObject Schema = JObject.Parse(SchemaCheck.Text("job"));

    [Fact]
    public void Every_fact_and_measure_that_a_job_may_state_is_a_key_of_the_schema()
    {
        var vocabulary = TestBook.Book.Vocabulary;
        vocabulary
            .Facts.Values.Select(fact => fact.Job)
            .Concat(vocabulary.Measures.Values.Where(measure => !measure.IsDerived).Select(measure => measure.Job))
            .Distinct()
            .Where(path => path.Contains('.', StringComparison.Ordinal) && Find(path) is null)
            .ShouldBeEmpty();
    }

    /// <summary>Each key is put into a job by itself: whatever else is wrong with it, it is known.</summary>
    [Fact]
    public void Every_key_of_the_schema_is_read()
    {
        var unknown = Paths(Schema, "").Where(path => IsUnknown(path)).ToArray();
        unknown.ShouldBeEmpty();
        Paths(Schema, "").Count().ShouldBeGreaterThan(120);
    }

    [Fact]
    public void A_key_that_nobody_reads_is_refused_by_the_schema_too() =>
        SchemaCheck.Find("job", YamlText.Read("registered-in: au-qld\nvehicle: { categry: MC }\n", "job")).ShouldNotBeEmpty();

    private static bool IsUnknown(string path)
    {
        var parts = path.Split('.');
        Node value = new Scalar("unknown", At);
        foreach (var part in parts.Reverse())
            value = part.EndsWith("[]", StringComparison.Ordinal)
                ? new Mapping([KeyValuePair.Create(new Scalar(part[..^2], At), (Node)new Sequence([value], At))], At)
                : new Mapping([KeyValuePair.Create(new Scalar(part, At), value)], At);
        try
        {
            JobReader.Read(value, TestBook.Book);
            return false;
        }
        catch (InputException refused)
        {
            return refused.Problems.Any(problem => problem.Code == "unknown-key");
        }
    }

    private static Mark At => new("job", 1, 1);

    private static IEnumerable<string> Paths(JToken schema, string path)
    {
        if (Resolved(schema) is not JObject at)
            yield break;
        foreach (var property in (at["properties"] as JObject)?.Properties() ?? [])
        {
            var inner = path.Length == 0 ? property.Name : $"{path}.{property.Name}";
            var below = Paths(property.Value, inner).ToArray();
            if (below.Length == 0 && Resolved(property.Value)["items"] is { } items)
                below = [.. Paths(items, inner + "[]")];
            if (below.Length == 0)
                yield return inner;
            foreach (var each in below)
                yield return each;
        }
    }

    private static JToken? Find(string path) =>
        path.Split('.')
            .Aggregate(
                (JToken?)Schema,
                (at, key) =>
                    at is null ? null : Resolved(at)["properties"]?[key] ?? Resolved(Resolved(at)["items"] ?? at)["properties"]?[key]
            );

    private static JToken Resolved(JToken at) => (string?)at["$ref"] is { } named ? Schema["definitions"]![named.Split('/')[^1]]! : at;
}
