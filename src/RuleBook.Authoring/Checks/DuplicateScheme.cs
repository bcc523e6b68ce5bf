using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Two schemes of one name in a jurisdiction.</summary>
internal static class DuplicateScheme
{
    internal static readonly CheckInfo Info = new(
        "duplicate-scheme",
        "two schemes have the same id",
        "A scheme is found by its id.",
        "rename one of the two"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(jurisdiction => Repeats.Of(jurisdiction.Schemes, scheme => scheme.Name))
            .Select(scheme => Info.At(book.Value(scheme.Mark, "scheme"), $"'{scheme.Name}' is already a scheme"));
}
