using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A nation, or a place of appointment, that the book lacks.</summary>
internal static class UnknownJurisdiction
{
    internal static readonly CheckInfo Info = new(
        "unknown-jurisdiction",
        "a jurisdiction is named that is not in the book",
        "Nothing could be followed there.",
        "correct the id, or add its folder"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.Where(place => place.Within is not null && book.Book.Jurisdiction(place.Within) is null)
            .Select(place => At(book.Value(place.Mark, "within"), place.Within!))
            .Concat(
                from pair in book.SchemeVersions
                from id in pair.Version.AcceptsAppointedIn ?? []
                where book.Book.Jurisdiction(id) is null
                select At(book.Word(pair.Version.Mark, "accepts-appointed-in", id), id)
            );

    private static Problem At(Mark mark, string id) => Info.At(mark, $"there is no jurisdiction '{id}' in the book");
}
