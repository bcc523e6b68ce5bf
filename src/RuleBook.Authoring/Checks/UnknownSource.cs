using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A citation that leads nowhere.</summary>
internal static class UnknownSource
{
    internal static readonly CheckInfo Info = new(
        "unknown-source",
        "a source is cited that is not listed",
        "A reader could not open it.",
        "add it to sources.yaml, or correct the id; another jurisdiction's source is cited as jurisdiction/id"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in Citations.Of(book)
        where book.Book.Source(pair.Jurisdiction, pair.Citation.Cite) is null
        let near = Spelling.Nearest(pair.Citation.Cite, Known(book, pair.Jurisdiction))
        select Info.At(
            book.Value(pair.Citation.Mark, "cite"),
            $"no source '{pair.Citation.Cite}' is listed",
            near is null ? null : $"did you mean '{near}'?"
        );

    private static IEnumerable<string> Known(Inspected book, string jurisdiction) =>
        book
            .Book.Jurisdictions.SelectMany(place => place.Sources)
            .Select(source => source.Jurisdiction == jurisdiction ? source.Id : $"{source.Jurisdiction}/{source.Id}");
}
