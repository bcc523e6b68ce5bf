using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A comparison in the future.</summary>
internal static class CheckedInFuture
{
    internal static readonly CheckInfo Info = new(
        "checked-in-future",
        "a source is said to be checked on a day to come",
        "Nobody can have compared it yet.",
        "give the day of the comparison"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(place => place.Sources)
            .Where(source => source.Checked.Earliest > book.Today)
            .Select(source => Info.At(book.Value(source.Mark, "checked"), $"checked {source.Checked} is after today"));
}
