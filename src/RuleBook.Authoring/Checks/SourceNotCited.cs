using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A source that nothing leans on.</summary>
internal static class SourceNotCited
{
    internal static readonly CheckInfo Info = new(
        "source-not-cited",
        "a listed source is cited nowhere",
        "A source that carries nothing is kept up for nothing, and hides that a fact may have lost its source.",
        "cite it, or take it out"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var cited = Citations
            .Of(book)
            .Select(pair => book.Book.Source(pair.Jurisdiction, pair.Citation.Cite))
            .OfType<Source>()
            .Select(source => (source.Jurisdiction, source.Id))
            .ToHashSet();
        return book
            .Book.Jurisdictions.SelectMany(place => place.Sources)
            .Where(source => !cited.Contains((source.Jurisdiction, source.Id)))
            .Select(source => Info.At(book.Value(source.Mark, "source"), $"'{source.Id}' is cited nowhere"));
    }
}
