using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Two entries of coverage for a topic.</summary>
internal static class DuplicateCoverage
{
    internal static readonly CheckInfo Info = new(
        "duplicate-coverage",
        "the coverage of a topic is given twice",
        "Two statements about one topic can contradict.",
        "keep one of the two"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(jurisdiction => Repeats.Of(jurisdiction.Coverage, coverage => coverage.Topic))
            .Select(coverage => Info.At(coverage.Mark, $"the coverage of '{coverage.Topic}' is already given"));
}
