using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A typographic quotation mark in a clause or an id.</summary>
internal static class SmartQuotes
{
    internal static readonly CheckInfo Info = new(
        "smart-quotes",
        "a clause has typographic quotation marks",
        "A clause is looked up letter by letter; a text processor put the marks there.",
        "write \" or ' in their place",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from citation in Citations.Of(book).Select(pair => pair.Citation)
        where citation.Clause is { } clause && clause.AsSpan().IndexOfAny("\u2018\u2019\u201c\u201d") >= 0
        select Info.At(book.Value(citation.Mark, "clause"), "the clause has typographic quotation marks");
}
