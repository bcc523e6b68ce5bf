using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Tiers without a word on what holds beyond them.</summary>
internal static class BeyondMissing
{
    internal static readonly CheckInfo Info = new(
        "beyond-missing",
        "it is not said what holds beyond the tiers",
        "Left out it would be read as not established, whatever the source says.",
        "add 'beyond' with a pathway, or 'beyond: not-established'"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        where pair.Version is { Content: Stated, Like: null } && !book.Has(pair.Version.Mark, "beyond")
        select Info.At(book.Key(pair.Version.Mark, "tiers"), "the version has tiers and does not say what holds beyond them");
}
