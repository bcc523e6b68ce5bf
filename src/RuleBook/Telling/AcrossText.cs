using RuleBook.Answers;

namespace RuleBook.Telling;

/// <summary>One job in every jurisdiction: a line each, then what differs, then what a move asks for.</summary>
public static class AcrossText
{
    /// <summary>Writes all of it.</summary>
    public static void Write(AnswerPage page, IReadOnlyList<Assessment> assessments, string registeredIn)
    {
        var first = assessments[0];
        page.Title($"{(first.Job is { } job ? $"Job {job}, " : "")}as on {Phrases.Day(first.On)}");
        foreach (var assessment in assessments) page.Row(Place(assessment, registeredIn), Line(assessment));
        page.Line("* where the vehicle is registered: its rules decide. The other lines say what would hold if the registration moved there.");
        page.Heading("What decides, and what is open");
        foreach (var same in assessments.Select(assessment => (Place: Place(assessment, registeredIn), Detail: Detail(assessment))).GroupBy(each => each.Detail))
            if (same.Key.Length > 0) page.Item($"{string.Join(", ", same.Select(each => each.Place))}: {same.Key}");
        page.Heading("If the registration moves");
        foreach (var same in assessments.Where(each => each.Jurisdiction != registeredIn).GroupBy(Moving)) page.Item($"{string.Join(", ", same.Select(each => each.JurisdictionName))}: {same.Key}");
        foreach (var caution in first.Cautions.TakeLast(2)) page.Item(caution);
    }

    private static string Place(Assessment assessment, string registeredIn) => $"{(assessment.Jurisdiction == registeredIn ? "* " : "")}{assessment.JurisdictionName}";

    private static string Line(Assessment assessment) => assessment.Blockers.IsEmpty
        ? Phrases.Verdict(assessment)
        : $"NOT AS PLANNED ({assessment.Blockers.Length} {(assessment.Blockers.Length == 1 ? "blocker" : "blockers")}); by itself: {char.ToLowerInvariant(Phrases.Verdict(assessment)[0])}{Phrases.Verdict(assessment)[1..]}";

    private static string Detail(Assessment assessment) => string.Join("; ", assessment.Blockers.Select(BlockerText.Sentence)
        .Concat(new[] { FirstLines.Reason(assessment) }.OfType<string>())
        .Concat(assessment.Gaps.Select(gap => gap.What))
        .Distinct());

    private static string Moving(Assessment assessment) =>
        assessment.Certification?.Version.Reregistering?.Trim() ?? "what re-registering a modified vehicle asks for is not established; ask first";
}
