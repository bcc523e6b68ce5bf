using System.Collections.Immutable;
using RuleBook.Answers;

namespace RuleBook.Telling;

/// <summary>One job in every jurisdiction, a row each.</summary>
public static class AcrossText
{
    /// <summary>Writes all of it.</summary>
    public static void Write(AnswerPage page, IReadOnlyList<Assessment> assessments, string registeredIn)
    {
        var first = assessments[0];
        page.Title($"{(first.Job is { } job ? $"Job {job}, " : "")}as on {Phrases.Day(first.On)}");
        page.Table(["where", "verdict", "what decides", "what is open"], assessments.Select(assessment => (ImmutableArray<string>)
        [
            $"{(assessment.Jurisdiction == registeredIn ? "* " : "")}{assessment.JurisdictionName}",
            Phrases.Verdict(assessment),
            Decides(assessment),
            Open(assessment),
        ]));
        page.Heading("If the registration moves");
        foreach (var assessment in assessments.Where(each => each.Jurisdiction != registeredIn))
            page.Item($"{assessment.JurisdictionName}: {assessment.Certification?.Version.Reregistering?.Trim() ?? "what re-registering a modified vehicle asks for is not established; ask first"}");
        page.Line("* where the vehicle is registered: its rules decide. The other rows say what would hold if the registration moved there.");
        foreach (var caution in first.Cautions.TakeLast(2)) page.Item(caution);
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
