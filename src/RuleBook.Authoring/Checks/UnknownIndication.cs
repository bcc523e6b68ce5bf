using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An indication that leads nowhere.</summary>
internal static class UnknownIndication
{
    internal static readonly CheckInfo Info = new(
        "unknown-indication",
        "an indication leads to a rule that is not in the book",
        "Nothing could be shown.",
        "correct the id (jurisdiction/topic/rule), or leave it out"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        let indication = (pair.Version.Content as NotEstablished)?.Indication
        where indication is not null && book.Book.Rule(indication) is null
        select Info.At(book.Value(book.Value(pair.Version.Mark, "not-established"), "indication"), $"there is no rule '{indication}'");
}
