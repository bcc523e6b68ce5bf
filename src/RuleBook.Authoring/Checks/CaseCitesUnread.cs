using RuleBook.Authoring.Cases;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A case whose answer is from a document that was read in part only, and not from a part that was read.</summary>
internal static class CaseCitesUnread
{
    internal static readonly CheckInfo Info = new(
        "case-cites-unread",
        "a case stands on a part of a document that nobody has read",
        "A case is to hold the book against its source; where the source was not read there, it only repeats the book.",
        "cite what was read: name its part under 'clause', or the document that quotes it",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Book book, IEnumerable<Case> cases) =>
        from one in cases
        where one.Because.Source is not null
        let source = book.Source(one.Jurisdiction, one.Because.Source!)
        where source is not null && !source.WasRead(one.Because.Clause)
        select Info.At(
            one.Because.Mark,
            $"of '{one.Because.Source}' only these parts were read: {string.Join("; ", source.PartsRead!.Value)}"
        );
}
