using RuleBook.InForce;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A figure that none of the citations carries.</summary>
internal static class FigureWithoutSource
{
    internal static readonly CheckInfo Info = new(
        "figure-without-source",
        "no citation carries a figure",
        "Every figure that a person sees can be followed to its source; this one is told as without any.",
        "name it under 'carries' of the citation that states it, cite what states it, or write not-established",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        where Parts.CanBeTraced(book, pair.Rule, pair.Version)
        let evidence = new Evidence(book.Book, [new WrittenVersion(pair.Rule, pair.Version)])
        from figure in Parts.Figures(pair.Version)
        where evidence.Of(figure.Part).Basis is null
        select Info.At(figure.Limit.Mark, $"no citation carries '{figure.Part}'");
}
