using RuleBook.Answers;

namespace RuleBook.Telling;

/// <summary>
/// An answer in a few words, for a list of many: at most 48 letters, so that it fits on a line of eighty with what it is about.
/// </summary>
public static class ShortAnswer
{
    private const string More = "; more left open";

    /// <summary>The verdict; what stands in the way comes before it.</summary>
    public static string Of(Assessment assessment) =>
        (assessment.Headline, assessment.Verdict) switch
        {
            (Headline.NothingToJudge, _) => $"nothing to judge{(LeavesOpen(assessment) ? More : "")}",
            (Headline.Prohibited, _) => $"not allowed{(assessment.Blockers.IsEmpty ? "" : $"; and {Blockers(assessment)}")}",
            (Headline.Blocked, { } pathway) when !assessment.JudgesNothing =>
                $"NOT AS PLANNED, {Blockers(assessment)}; {Wording.Short(pathway)}",
            (Headline.Blocked, _) => $"NOT AS PLANNED, {Blockers(assessment)}{(assessment.JudgesNothing ? "" : "; undecided")}",
            (_, { } pathway) when LeavesOpen(assessment) => $"{Wording.Short(pathway)}{More}",
            (_, { } pathway) => Phrases.Pathway(pathway),
            _ => $"undecided: {Wording.Short(assessment.Between.Best)} to {Wording.Short(assessment.Between.Worst)}",
        };

    /// <summary>Whether a rule of use, a load or what the tyres are made for, beside the verdict, is not judged.</summary>
    internal static bool LeavesOpen(Assessment assessment) =>
        !assessment.OfUseOpen.IsEmpty || !assessment.LoadsNotJudged.IsEmpty || assessment.Tyres is { NotCompared.IsEmpty: false };

    private static string Blockers(Assessment assessment) =>
        assessment.Blockers.Length == 1 ? "1 blocker" : $"{assessment.Blockers.Length} blockers";
}
