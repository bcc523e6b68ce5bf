using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Two sources of one id in a jurisdiction.</summary>
internal static class DuplicateSource
{
    internal static readonly CheckInfo Info = new(
        "duplicate-source",
        "two sources have the same id",
        "A citation must lead to one document.",
        "rename one of the two; an id is never used again for another document"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(jurisdiction => Repeats.Of(jurisdiction.Sources, source => source.Id))
            .Select(source => Info.At(book.Value(source.Mark, "source"), $"'{source.Id}' is already a source"));
}
