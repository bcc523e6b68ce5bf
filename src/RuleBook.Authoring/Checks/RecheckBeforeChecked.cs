using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Dates of a source the wrong way round.</summary>
internal static class RecheckBeforeChecked
{
    internal static readonly CheckInfo Info = new(
        "recheck-before-checked",
        "a source is overdue before it is checked",
        "It would be overdue at once.",
        "a year after 'checked' is the habit"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(place => place.Sources)
            .Where(source => source.RecheckAfter.Latest <= source.Checked.Earliest)
            .Select(source =>
                Info.At(
                    book.Value(source.Mark, "recheck-after"),
                    $"recheck-after {source.RecheckAfter} is not after checked {source.Checked}"
                )
            );
}
