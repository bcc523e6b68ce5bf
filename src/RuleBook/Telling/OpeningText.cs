using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>The first lines of an answer: what stands in the way, then the pathway; where there is nothing to judge, that there is not.</summary>
internal static class OpeningText
{
    public static void Write(AnswerPage page, Assessment assessment)
    {
        var blockers = assessment.Blockers.Select(BlockerText.Sentence).ToArray();
        switch (assessment.Headline)
        {
            case Headline.NothingToJudge:
                page.Title("Nothing to judge: the job states no change, and no load that is over a limit.", VerdictColour.Open);
                return;
            case Headline.Blocked:
                page.Title($"Not as planned: {blockers[0]}.", VerdictColour.Prohibited);
                Rest(page, blockers[1..]);
                page.Line($"The modification itself: {Lower(Phrases.Verdict(assessment))}.");
                return;
            default:
                page.Title($"{Phrases.Verdict(assessment)}.", Colour(assessment.Verdict));
                Rest(page, blockers);
                return;
        }
    }

    private static void Rest(AnswerPage page, string[] blockers)
    {
        foreach (var blocker in blockers) page.Item(blocker, "x");
    }

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static VerdictColour Colour(Pathway? verdict) => verdict switch
    {
        null => VerdictColour.Open,
        Pathway.NoCertificate => VerdictColour.Free,
        Pathway.Prohibited => VerdictColour.Prohibited,
        _ => VerdictColour.Certified,
    };
}
