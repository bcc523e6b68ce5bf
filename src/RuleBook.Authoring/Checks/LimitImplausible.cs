using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A limit or a test at a value that no vehicle has.</summary>
internal static class LimitImplausible
{
    internal static readonly CheckInfo Info = new(
        "limit-implausible",
        "a limit lies where no vehicle is",
        "A slip of the point or of the unit (5 mm, 500 mm, 50 in) makes a limit that never binds or never holds.",
        "compare the figure and its unit with the source; where the source means it, widen the measure's plausible range in the vocabulary",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from figure in book.Figures
        let measure = book.Book.Vocabulary.Measures.GetValueOrDefault(figure.Measure)
        where measure is not null && !measure.Plausible.Contains(figure.Bound.Value)
        select Info.At(figure.Mark, $"{figure.Bound.Show(measure.Unit)} is no plausible {measure.Title}");
}
