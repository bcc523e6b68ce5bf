using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>A measure that a job can move.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Unchanged">Its value where nothing changes it.</param>
/// <param name="OnlyKnown">No job has to state it: it counts only where it is known.</param>
/// <param name="Own">It asks for a rule that speaks of it.</param>
/// <param name="Suggested">The topics that the vocabulary names, on which the verdict is open where no rule of the place binds.</param>
internal sealed record Moving(Measure Measure, Fraction Unchanged, bool OnlyKnown, bool Own, ImmutableArray<string> Suggested)
{
    /// <summary>
    /// The measures of a vocabulary that a job can move: those that are unchanged where nothing is stated, and those that a modification
    /// states or that are measured after it. What describes the vehicle as it was is not moved.
    /// </summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="ofUse">Whether to name topics of use, or those of modification.</param>
    public static ImmutableArray<Moving> Of(Vocabulary vocabulary, bool ofUse) =>
        [
            .. vocabulary
                .Measures.Values.Where(measure => !measure.IsDate && (measure.IfAbsent is not null || Stands(measure, vocabulary)))
                .OrderBy(measure => measure.Name, StringComparer.Ordinal)
                .Select(measure => new Moving(
                    measure,
                    measure.IfAbsent ?? Fraction.Zero,
                    measure.IfAbsent is null,
                    measure.NeedsOwnRule,
                    [.. measure.Topics.Where(topic => vocabulary.Topics.TryGetValue(topic, out var found) && found.OfUse == ofUse)]
                )),
        ];

    private static bool Stands(Measure measure, Vocabulary vocabulary) =>
        !measure.IsDerived
        && (
            measure.Job.StartsWith("modification.", StringComparison.Ordinal)
            || measure.Job.StartsWith("measured.", StringComparison.Ordinal)
        )
        && !VocabularyIndex.Of(vocabulary).ByJob[measure.Job].Any(other => other.IfAbsent is not null);
}
