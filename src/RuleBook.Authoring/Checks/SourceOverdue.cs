using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A source whose day to be compared again has passed.</summary>
internal static class SourceOverdue
{
    internal static readonly CheckInfo Info = new(
        "source-overdue",
        "a source is overdue for a comparison",
        "Every verdict that leans on it says so.",
        "compare it with the document as it stands, then move 'checked' and 'recheck-after'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(place => place.Sources)
            .Where(source => source.RecheckAfter.Latest < book.Today && source.RecheckAfter.Latest > source.Checked.Earliest)
            .Select(source =>
                Info.At(book.Value(source.Mark, "recheck-after"), $"'{source.Id}' was to be compared again after {source.RecheckAfter}")
            );
}
