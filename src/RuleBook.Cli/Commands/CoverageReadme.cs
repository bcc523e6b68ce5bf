using RuleBook.Authoring.Files;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>The lines of the README that say what the book holds, one a jurisdiction, between two marks.</summary>
internal static class CoverageReadme
{
    private const string Start = "<!-- coverage -->\n";
    private const string End = "<!-- /coverage -->\n";

    /// <summary>Writes them anew; whether they were other ones.</summary>
    /// <param name="path">The README beside the book.</param>
    /// <param name="book">The book.</param>
    /// <param name="stop">Requested when the process is asked to end.</param>
    /// <exception cref="InputException">There is no README, or the marks are not in it.</exception>
    public static bool Write(string path, Book book, CancellationToken stop)
    {
        var text = File.Exists(path) ? File.ReadAllText(path) : "";
        var first = text.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        var end = text.IndexOf(End, StringComparison.Ordinal);
        if (first < Start.Length || end < first)
            throw new InputException(
                Problem.Error(
                    "missing-key",
                    new Mark(path, 1, 1),
                    "the marks of the coverage are not in it",
                    $"put the lines {Start.Trim()} and {End.Trim()} where the table is to stand"
                )
            );
        var written = $"{text[..first]}{CoverageText.Write(book)}{text[end..]}";
        if (written == text)
            return false;
        WholeFile.Write(path, written, stop);
        return true;
    }
}
