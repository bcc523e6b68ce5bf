using RuleBook.Physics.Masses;

namespace RuleBook.Telling;

/// <summary>What is not known, and what it would add.</summary>
internal static class MissingText
{
    public static void Write(AnswerPage page, IReadOnlyCollection<MissingFact> missing)
    {
        foreach (var each in missing)
            page.Item($"{each.Fact} would give: {each.Adds}", "? ");
    }
}
