using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A version without sources.</summary>
internal static class NoSource
{
    internal static readonly CheckInfo Info = new(
        "no-source",
        "a version cites nothing",
        "Every number that a person sees can be followed to its source.",
        "add 'sources' with the document and the clause"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Versions.Select(pair => (pair.Version.Mark, pair.Version.Sources))
            .Concat(book.SchemeVersions.Select(pair => (pair.Version.Mark, pair.Version.Sources)))
            .Where(version => version.Sources.IsEmpty)
            .Select(version => Info.At(version.Mark, "the version cites no source"));
}
