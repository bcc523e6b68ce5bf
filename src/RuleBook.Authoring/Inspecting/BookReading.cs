using RuleBook.Authoring.Books;
using RuleBook.Authoring.Checks;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Reads a book from its folder.</summary>
public static class BookReading
{
    /// <summary>
    /// The book in a folder, ready to answer. One with errors is never used: it is refused with what an inspection prints.
    /// </summary>
    /// <exception cref="InputException">It has errors; every one is listed.</exception>
    public static Book Open(string folder) => Open(BookFolder.Load(folder));

    /// <summary>The same of a book that is already read from disk.</summary>
    /// <inheritdoc cref="Open(string)"/>
    public static Book Open(BookFolder folder) => Sound(Inspection.Run(folder, Unhurried));

    /// <summary>The same of the nodes of a book's files.</summary>
    /// <inheritdoc cref="Open(string)"/>
    public static Book Open(IReadOnlyList<BookFile> files, string digest) => Sound(Inspection.Run(files, digest, Unhurried));

    /// <summary>A book as it was, ready to answer: what a later version of the schema began to ask for may lack.</summary>
    /// <inheritdoc cref="Open(string)"/>
    public static Book OpenEarlier(BookFolder folder) => Sound(Inspection.Run(folder, Unhurried), earlier: true);

    /// <summary>The same of the nodes of a book's files.</summary>
    /// <inheritdoc cref="Open(string)"/>
    public static Book OpenEarlier(IReadOnlyList<BookFile> files, string digest) =>
        Sound(Inspection.Run(files, digest, Unhurried), earlier: true);

    /// <summary>Whether a source is due to be compared again is a question for whoever keeps the book, not for its answers.</summary>
    private static DateOnly Unhurried => DateOnly.MaxValue;

    private static Book Sound(InspectionReport report, bool earlier = false)
    {
        Problem[] errors = [.. report.Problems.Where(problem => problem.Severity == Severity.Error && !(earlier && IsAskedLater(problem)))];
        return errors.Length == 0 && report.Book is { } book ? book : throw new InputException(errors);
    }

    /// <summary>Every file of a jurisdiction names it, so that a copied file is caught; those of edition 2026.11.1 do not.</summary>
    private static bool IsAskedLater(Problem problem) => problem.Code == NoJurisdiction.Info.Code && problem.Text == NoJurisdiction.Text;
}
