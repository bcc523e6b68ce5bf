using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An edition that does not come after the one before it.</summary>
internal static class EditionsOutOfOrder
{
    internal static readonly CheckInfo Info = new(
        "editions-out-of-order",
        "an edition does not come after the one before it",
        "Whoever cites an edition must find one state of the book under its name, and the last edition at the end.",
        "list the editions oldest first, each with a name of its own");

    internal static IEnumerable<Problem> Find(Inspected book) => book.Book.Editions
        .Zip(book.Book.Editions.Skip(1))
        .Where(pair => pair.Second.Day < pair.First.Day || Order(pair.Second.Name).CompareTo(Order(pair.First.Name)) <= 0)
        .Select(pair => Info.At(pair.Second.Mark, $"edition {pair.Second.Name} of {pair.Second.Day:yyyy-MM-dd} stands after {pair.First.Name} of {pair.First.Day:yyyy-MM-dd}"));

    private static (int Year, int Month, int Number) Order(string name) =>
        name.Split('.').Select(part => int.TryParse(part, out var number) ? number : 0).ToArray() is [var year, var month, var number] ? (year, month, number) : default;
}
