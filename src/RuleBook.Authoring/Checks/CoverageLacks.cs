using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>State and lacks that do not go together.</summary>
internal static class CoverageLacks
{
    internal static readonly CheckInfo Info = new(
        "coverage-lacks",
        "it is not said what lacks",
        "Whoever wants to help, or to know how far to trust the book, needs it.",
        "add 'lacks' where the state is partial or none; leave it out where it is complete"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from coverage in place.Coverage
        where coverage.State == "complete" == coverage.Lacks is not null
        let wrong = coverage.Lacks is null ? "and 'lacks' is missing" : "yet 'lacks' is given"
        select Info.At(coverage.Mark, $"the state of '{coverage.Topic}' is {coverage.State}, {wrong}");
}
