using RuleBook.Evaluation;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>One job in every jurisdiction, a row each.</summary>
internal static class AcrossText
{
    public static string? Write(IAnsiConsole console, IReadOnlyList<Assessment> assessments, string registeredIn)
    {
        var page = new Page(console);
        var first = assessments[0];
        page.Title($"{(first.Job is { } job ? $"Job {job}, " : "")}as on {Phrases.Day(first.On)}");
        var table = new Table { Border = TableBorder.Simple, Expand = false };
        foreach (var heading in (string[])["where", "verdict", "what decides", "what is open"]) table.AddColumn(new TableColumn(new Text(heading)));
        foreach (var assessment in assessments)
            table.AddRow(
                new Text($"{(assessment.Jurisdiction == registeredIn ? "* " : "")}{assessment.JurisdictionName}"),
                new Text(Phrases.Verdict(assessment)),
                new Text(Decides(assessment)),
                new Text(Open(assessment)));
        page.Write(table);
        page.Line("* where the vehicle is registered: its rules decide. The other rows say what would hold if the registration moved there.");
        foreach (var caution in first.Cautions.TakeLast(2)) page.Item(caution);
        return null;
    }

    private static string Decides(Assessment assessment) => assessment.Findings
        .Where(finding => finding.Outcome.Worst == assessment.Between.Worst)
        .Select(finding => finding.Limits.Concat(finding.Exceeded).FirstOrDefault(check => check.Holds == Truth.No) is { } broken
            ? Phrases.Limit(broken)
            : finding.Limits.OrderBy(check => check.Margin is { } margin ? margin : 0).FirstOrDefault() is { } tightest ? Phrases.Limit(tightest) : "")
        .FirstOrDefault(text => text.Length > 0) ?? "";

    private static string Open(Assessment assessment) => string.Join("; ", assessment.Undecided.Select(effect => effect.Opening.Name)
        .Concat(assessment.Gaps.Select(gap => gap.What)).Distinct());
}
