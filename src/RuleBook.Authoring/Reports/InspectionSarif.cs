using System.Text.Json;
using RuleBook.Authoring.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Reports;

/// <summary>An inspection for a code host: Static Analysis Results Interchange Format (OASIS SARIF 2.1.0).</summary>
public static class InspectionSarif
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private const string Root = "%SRCROOT%";

    /// <summary>Writes one run with the codes as rules and the problems as results; addresses are relative to the book's folder.</summary>
    /// <param name="report">What was found.</param>
    /// <param name="output">Receives UTF-8.</param>
    public static void Write(InspectionReport report, Stream output)
    {
        using var json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        WriteTool(json);
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        foreach (var problem in report.Problems)
            WriteResult(problem, json);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "rulebook");
        json.WriteStartArray("rules");
        foreach (var info in CheckList.All)
        {
            json.WriteStartObject();
            json.WriteString("id", info.Code);
            WriteText(json, "shortDescription", Sentence(info.Title));
            WriteText(json, "fullDescription", info.Why);
            WriteText(json, "help", Sentence(info.Tip));
            json.WriteStartObject("defaultConfiguration");
            json.WriteString("level", Level(info.Severity));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteResult(Problem problem, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", problem.Code);
        if (Index(problem.Code) is var index and >= 0)
            json.WriteNumber("ruleIndex", index);
        json.WriteString("level", Level(problem.Severity));
        WriteText(json, "message", problem.Tip.Length > 0 ? $"{Sentence(problem.Text)} {Sentence(problem.Tip)}" : Sentence(problem.Text));
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", Address(problem.Mark.File));
        json.WriteString("uriBaseId", Root);
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", problem.Mark.Line);
        json.WriteNumber("startColumn", problem.Mark.Column);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteText(Utf8JsonWriter json, string key, string text)
    {
        json.WriteStartObject(key);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    private static int Index(string code) => CheckList.All.IndexOf(CheckList.All.FirstOrDefault(info => info.Code == code)!);

    private static string Level(Severity severity) => severity == Severity.Error ? "error" : "warning";

    private static string Address(string file) =>
        string.Join('/', file.Replace('\\', '/').TrimStart('/').Split('/').Select(Uri.EscapeDataString));

    private static string Sentence(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] is '.' or '?' or '!' ? "" : ".");
}
