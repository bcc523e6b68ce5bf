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
        page.Heading("If the registration moves");
        foreach (var assessment in assessments.Where(each => each.Jurisdiction != registeredIn))
            page.Item($"{assessment.JurisdictionName}: {assessment.Certification?.Version.Reregistering?.Trim() ?? "what re-registering a modified vehicle asks for is not established; ask first"}");
        page.Line("* where the vehicle is registered: its rules decide. The other rows say what would hold if the registration moved there.");
        foreach (var caution in first.Cautions.TakeLast(2)) page.Item(caution);
        return null;
    }

    /// <summary>The limit that is broken, or else the one with the least left of those that the job uses.</summary>
    private static string Decides(Assessment assessment) => assessment.Findings
        .Where(finding => finding.Outcome.Worst == assessment.Between.Worst)
        .SelectMany(finding => finding.Exceeded.Concat(finding.Limits.Where(check => check.Value.Exact is { IsZero: false }).OrderBy(check => check.Margin)))
        .Where(check => check.Bound is not null)
        .Select(Phrases.Limit)
        .FirstOrDefault("");

    private static string Open(Assessment assessment) => string.Join("; ", assessment.Undecided.Select(effect => effect.Opening.Name)
        .Concat(assessment.Gaps.Select(gap => gap.What)).Distinct());
}
