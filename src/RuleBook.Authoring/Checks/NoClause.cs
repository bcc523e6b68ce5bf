using System.Text.RegularExpressions;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A primary or secondary source cited without a place in it.</summary>
internal static partial class NoClause
{
    internal static readonly CheckInfo Info = new(
        "no-clause",
        "a citation names no clause",
        "A reader could not find the figure in the document.",
        "add 'clause'; of a document that has none say 'clauses: none' in sources.yaml, or in its note that it was 'not read'"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in Citations.Of(book)
        where pair.Citation.Clause is null
        let source = book.Book.Source(pair.Jurisdiction, pair.Citation.Cite)
        where source is { ReadAs: ReadAs.Primary or ReadAs.Secondary, HasClauses: true } && !SaysSo().IsMatch(source.Note ?? "")
        select Info.At(pair.Citation.Mark, $"'{pair.Citation.Cite}' is cited without a clause");

    [GeneratedRegex(
        @"\b(no|without|lacks?|not)\b[^.;]*\b(clauses?|sections?|pages?|numbers?|numbered|paginated)\b|unnumbered"
            + @"|\b(no|none)\b[^.;]*\bwas read|not read|read, not",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex SaysSo();
}
