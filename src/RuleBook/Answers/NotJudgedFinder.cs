using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Finds the changes that the job states and that no rule of the place speaks of, on whatever topic.</summary>
internal static class NotJudgedFinder
{
    public static ImmutableArray<NotJudged> Of(Book book, Jurisdiction place, FactSet facts, IReadOnlyCollection<ResolvedVersion> versions) =>
    [
        .. book.Vocabulary.Measures.Values
            .Where(measure => measure.NeedsOwnRule && facts.Measure(measure.Name, FactSet.PartsOf(null)).Exact is not { IsZero: true })
            .Where(measure => !versions.Any(version => Covering.Speaks(version, measure.Name) && Judge.Binds(version, facts) != Truth.No))
            .OrderBy(measure => measure.Name, StringComparer.Ordinal)
            .Select(measure => new NotJudged(measure.Job, measure.Title, place.Ask.Name)),
    ];
}
