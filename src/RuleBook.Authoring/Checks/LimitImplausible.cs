using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>A limit or a test at a value that no vehicle has.</summary>
internal static class LimitImplausible
{
    internal static readonly CheckInfo Info = new(
        "limit-implausible",
        "a limit lies where no vehicle is",
        "A slip of the point or of the unit (5 mm, 500 mm, 50 in) makes a limit that never binds or never holds.",
        "compare the figure and its unit with the source; where the source means it, widen the measure's plausible range in the vocabulary",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var tiers = book.TierLists.SelectMany(tiers => tiers).ToArray();
        var limits = tiers
            .SelectMany(tier => tier.Limits)
            .Concat(book.Adoptions.SelectMany(pair => pair.Adoption.Exceptions).SelectMany(change => change.Limits));
        var tests = tiers.Select(tier => tier.When).Concat(book.Rules.Select(rule => rule.For)).SelectMany(predicate => predicate.Tests);
        return limits
            .Select(limit => (Measure: limit.Measure, limit.Bounds, limit.Mark))
            .Concat(tests.Select(test => (Measure: test.Fact, test.Bounds, test.Mark)))
            .SelectMany(range => Ends(range.Bounds).Select(bound => (range.Measure, bound, range.Mark)))
            .Where(end =>
                book.Book.Vocabulary.Measures.TryGetValue(end.Measure, out var measure) && !measure.Plausible.Contains(end.bound.Value)
            )
            .Select(end =>
                Info.At(
                    end.Mark,
                    $"{end.bound.Show(book.Book.Vocabulary.Measures[end.Measure].Unit)} is no plausible {book.Book.Vocabulary.Measures[end.Measure].Title}"
                )
            );
    }

    private static IEnumerable<Bound> Ends(Bounds? bounds) => new[] { bounds?.Lower, bounds?.Upper }.OfType<Bound>();
}
