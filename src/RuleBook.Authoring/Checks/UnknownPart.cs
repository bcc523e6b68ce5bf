using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A word under measured.total that is no measure.</summary>
internal static class UnknownPart
{
    internal static readonly CheckInfo Info = new(
        "unknown-part",
        "a part of a total is not a measure",
        "What is added up must be known by name.",
        "use measures of the vocabulary; the total is not a part of itself"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        from part in pair.Version.Measured?.Total ?? []
        where part == KnownWords.TotalLift || !book.Book.Vocabulary.Measures.ContainsKey(part)
        select Info.At(
            book.Word(book.Value(pair.Version.Mark, "measured"), "total", part),
            $"'{part}' cannot be added up",
            Spelling.Tip(part, [.. book.Book.Vocabulary.Measures.Keys.Where(name => name != KnownWords.TotalLift)])
        );
}
