using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Two entries of papers for a pathway.</summary>
internal static class DuplicateIssued
{
    internal static readonly CheckInfo Info = new(
        "duplicate-issued",
        "what is issued on a pathway is given twice",
        "Only one of the two would be shown.",
        "put all papers of a pathway into one entry"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .SchemeVersions.SelectMany(pair =>
                Repeats.Of(pair.Version.Issued, issued => issued.Pathway.ToString()).Select(_ => pair.Version)
            )
            .Distinct()
            .Select(version => Info.At(book.Key(version.Mark, "issued"), "a pathway has two entries"));
}
