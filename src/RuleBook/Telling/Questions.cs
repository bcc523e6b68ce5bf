using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Telling;

/// <summary>A missing fact as a question in plain words, with the answers that it would give.</summary>
internal static class Questions
{
    /// <summary><c>Which category is on the compliance plate? MC, NA: allowed with a certificate; MA: not allowed.</c></summary>
    /// <param name="effect">What is not known, and what it would change.</param>
    /// <param name="vocabulary">The words of the book.</param>
    public static string Of(Effect effect, Vocabulary vocabulary) => $"{Ask(effect, vocabulary)} {string.Join("; ", Answers(effect))}";

    /// <summary>The question alone.</summary>
    public static string Ask(Effect effect, Vocabulary vocabulary)
    {
        if (effect.Opening.Kind == OpeningKind.Version)
            return "Which version of the rule was in force that day?";
        if (FollowsFrom(effect) is { } follows)
            return $"What is the {follows.Title} ({effect.Opening.Name} would tell)?";
        if (
            vocabulary.Facts.Values.Where(fact => fact.Job == effect.Opening.Name).MinBy(fact => fact.Name, StringComparer.Ordinal) is
            { } word
        )
            return word.Question ?? $"What is the {word.Title}?";
        var measure = vocabulary
            .Measures.Values.Where(measure => measure.Job == effect.Opening.Name)
            .OrderBy(measure => measure.IsDerived)
            .ThenBy(measure => measure.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return measure is null ? $"What is {effect.Opening.Name}?" : $"What is the {measure.Title}?";
    }

    /// <summary>The measure that decides, where something else is asked for from which it follows; null otherwise.</summary>
    public static Measure? FollowsFrom(Effect effect) =>
        effect.Opening.Options is [{ Cell.Measure: { Share: null } decides }, ..] && decides.Job != effect.Opening.Name ? decides : null;

    /// <summary>What each answer would give; answers that give the same are told together.</summary>
    public static IEnumerable<string> Answers(Effect effect) =>
        effect.DecidesAlone
            ? effect
                .Merged()
                .GroupBy(each => each.Outcome)
                .Select(same => $"{string.Join(", ", same.Select(each => each.Label))}: {Phrases.Outcome(same.Key)}")
            : [NothingAlone];

    /// <summary>Where an answer changes something only together with others.</summary>
    internal const string NothingAlone = "decides nothing by itself";
}
