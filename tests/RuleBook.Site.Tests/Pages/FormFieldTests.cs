using System.Text.Json;
using RuleBook.Site.Pages;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The form against the schema of a job.</summary>
public sealed class FormFieldTests
{
    private static readonly string[] Named = [.. Names()];

    [Fact]
    public void Every_key_that_the_schema_of_a_job_names_has_a_field()
    {
        using var schema = JsonDocument.Parse(File.ReadAllText(Path.Combine(TheBook.Folder, "schema", "job.schema.json")));
        var keys = Keys(schema.RootElement, "").ToArray();
        keys.Length.ShouldBeGreaterThan(100);

        // An uncertainty is stated by the name of a measure, a condition by its own; a field stands for each that the book has.
        string[] open = ["measured.uncertainty", "shown"];
        keys.Except(open).Except(Named).Except(["modification.tyres[]", "held[].codes[]"]).ShouldBeEmpty();
    }

    [Fact]
    public void Every_fact_and_measure_that_a_job_can_state_has_a_field()
    {
        var words = TheBook.Input.Book.Vocabulary;
        words
            .Facts.Values.Select(fact => fact.Job)
            .Concat(words.Measures.Values.Where(measure => !measure.IsDerived).Select(measure => measure.Job))
            .Concat(words.Conditions.Keys.Select(name => $"shown.{name}"))
            .Distinct()
            .Except(Named)
            .ShouldBeEmpty();
    }

    [Fact]
    public void No_two_fields_hold_the_same_key() =>
        Named.GroupBy(name => name).Where(group => group.Count() > 1).Select(group => group.Key).ShouldBeEmpty();

    private static IEnumerable<string> Keys(JsonElement schema, string path)
    {
        if (schema.TryGetProperty("properties", out var properties))
            return properties.EnumerateObject().SelectMany(each => Keys(each.Value, path.Length == 0 ? each.Name : $"{path}.{each.Name}"));
        if (schema.TryGetProperty("items", out var items))
            return Keys(items, $"{path}[]");
        return [path];
    }

    private static IEnumerable<string> Names()
    {
        var page = Parsed.Of([CheckPage.Of(new SiteBook(TheBook.Input)).Write(new SiteBook(TheBook.Input))]).Single().Document;
        foreach (var field in page.All("#job [name]"))
            yield return field.GetAttribute("name")!;
        foreach (var rows in page.All("#job [data-rows]"))
        foreach (var key in Parsed.InTemplates(rows))
            yield return key.Length > 0 ? $"{rows.GetAttribute("data-rows")}[].{key}" : $"{rows.GetAttribute("data-rows")}[]";
    }
}
