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
        string[] places = [.. assessments.Select(assessment => Place(assessment, registeredIn))];
        foreach (var (place, assessment) in places.Zip(assessments))
            page.Row(place, ShortAnswer.Of(assessment), places.Max(each => each.Length) + 2);
        page.Line("* state of registration: its rules decide. The other lines: if the registration moved there.");
        Differences(page, assessments);
        page.Heading("If the registration moves");
        foreach (var same in assessments.Where(each => each.Jurisdiction != registeredIn).GroupBy(Moving))
            page.Item($"{string.Join(", ", same.Select(each => each.JurisdictionName))}: {same.Key}");
        page.Heading("Bear in mind");
        foreach (var caution in first.Cautions.TakeLast(2))
            page.Item(caution);
    }

    /// <summary>What stands in the way, what decides and what is open: said once for all places of which it is true.</summary>
    private static void Differences(AnswerPage page, IReadOnlyList<Assessment> assessments)
    {
        var told = assessments
            .SelectMany(assessment => Details(assessment).Select(detail => (detail, assessment.JurisdictionName)))
            .GroupBy(each => each.detail, each => each.JurisdictionName)
            .ToLookup(same => same.Count() == assessments.Count);
        if (told[true].Any())
            page.Heading("Everywhere");
        foreach (var same in told[true])
            page.Item(same.Key);
        if (told[false].Any())
            page.Heading("What differs");
        foreach (var same in told[false])
            page.Item($"{string.Join(", ", same)}: {same.Key}");
    }

    private static string Place(Assessment assessment, string registeredIn) =>
        $"{(assessment.Jurisdiction == registeredIn ? "*" : " ")} {assessment.JurisdictionName}";

    private static IEnumerable<string> Details(Assessment assessment) =>
        assessment
            .Blockers.Select(BlockerText.Sentence)
            .Concat(new[] { FirstLines.Reason(assessment) }.OfType<string>())
            .Concat(assessment.Gaps.Select(gap => gap.What))
            .Distinct();

    private static string Moving(Assessment assessment) =>
        assessment.Certification?.Version.Reregistering?.Trim()
        ?? "what re-registering a modified vehicle asks for is not established; ask first";
}
