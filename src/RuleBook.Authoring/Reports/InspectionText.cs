using System.Globalization;
using RuleBook.Authoring.Inspecting;

namespace RuleBook.Authoring.Reports;

/// <summary>An inspection for a person at a terminal.</summary>
public static class InspectionText
{
    /// <summary>One line a problem (<c>file:line:column: error code: text (tip)</c>), then a line that sums up.</summary>
    /// <param name="report">What was found.</param>
    /// <param name="output">Receives it; lines end with LF.</param>
    public static void Write(InspectionReport report, TextWriter output)
    {
        foreach (var problem in report.Problems)
            output.Write($"{problem}\n");
        output.Write(Summary(report) + "\n");
    }

    /// <summary>The line that sums up: <c>2 errors, 1 warning in 14 files</c>.</summary>
    public static string Summary(InspectionReport report) =>
        report.Problems.IsEmpty
            ? $"sound: {Count(report.Book?.Jurisdictions.Length ?? 0, "jurisdiction")} in {Count(report.Files, "file")}, {report.Digest}"
            : $"{Count(report.Errors, "error")}, {Count(report.Warnings, "warning")} in {Count(report.Files, "file")}";

    private static string Count(int number, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");
}
