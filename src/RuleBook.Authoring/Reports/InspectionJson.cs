using System.Text.Json;
using RuleBook.Authoring.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Reports;

/// <summary>An inspection for a program.</summary>
public static class InspectionJson
{
    /// <summary>
    /// Writes <c>{ "sound", "book", "files", "errors", "warnings", "problems": [ ... ] }</c>; a problem has
    /// <c>file</c>, <c>line</c>, <c>column</c>, <c>severity</c>, <c>code</c>, <c>text</c> and <c>tip</c>.
    /// </summary>
    /// <param name="report">What was found.</param>
    /// <param name="output">Receives UTF-8.</param>
    public static void Write(InspectionReport report, Stream output)
    {
        using var json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteBoolean("sound", report.IsSound);
        json.WriteString("book", report.Digest);
        json.WriteNumber("files", report.Files);
        json.WriteNumber("errors", report.Errors);
        json.WriteNumber("warnings", report.Warnings);
        json.WriteStartArray("problems");
        foreach (var problem in report.Problems)
            Write(problem, json);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Problem problem, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("file", problem.Mark.File);
        json.WriteNumber("line", problem.Mark.Line);
        json.WriteNumber("column", problem.Mark.Column);
        json.WriteString("severity", problem.Severity == Severity.Error ? "error" : "warning");
        json.WriteString("code", problem.Code);
        json.WriteString("text", problem.Text);
        json.WriteString("tip", problem.Tip);
        json.WriteEndObject();
    }
}
