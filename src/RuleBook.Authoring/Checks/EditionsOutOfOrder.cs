using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An edition that does not come after the one before it.</summary>
internal static class EditionsOutOfOrder
{
    internal static readonly CheckInfo Info = new(
        "editions-out-of-order",
        "an edition does not come after the one before it",
        "Whoever cites an edition must find one state of the book under its name, and the last edition at the end.",
        "list the editions oldest first, each with a name of its own"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Editions.Zip(book.Book.Editions.Skip(1))
            .Where(pair => !pair.Second.Follows(pair.First))
            .Select(pair =>
                Info.At(
                    pair.Second.Mark,
                    $"edition {pair.Second.Name} of {pair.Second.Day:yyyy-MM-dd} stands after {pair.First.Name} of "
                        + $"{pair.First.Day:yyyy-MM-dd}"
                )
            );
}
