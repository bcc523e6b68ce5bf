using RuleBook.Authoring.Checks;
using RuleBook.Text;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Runs the semantic checks, and leaves out what only follows from a file or value that could not be read.</summary>
internal static class Meanings
{
    internal static IEnumerable<Problem> Find(Inspected book, IReadOnlySet<string> unread, IReadOnlyCollection<Problem> misread)
    {
        var silent = Folders(unread);
        var doubtful = Folders(misread.Select(problem => problem.Mark.File));
        return CheckList
            .Semantic.Where(check => check.Leans < Leaning.OnAllFiles || unread.Count == 0)
            .Where(check => check.Leans < Leaning.OnAllValues || misread.Count == 0)
            .SelectMany(check => Found(check, book).Where(problem => check.Leans != Leaning.OnValues || !In(doubtful, problem)))
            .Where(problem => !In(silent, problem));
    }

    /// <summary>What a check finds; where it fails itself, that it did: no book is so bad that an inspection would not end.</summary>
    internal static IReadOnlyList<Problem> Found(Check check, Inspected book)
    {
        try
        {
            return [.. check.Find(book)];
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return
            [
                Problem.Error(
                    "check-failed",
                    new Mark("jurisdictions", 1, 1),
                    $"the check '{check.Info.Code}' failed on this book ({fault.GetType().Name}: {fault.Message})",
                    "mend the other problems first; if it stays, report it with the book"
                ),
            ];
        }
    }

    private static string[] Folders(IEnumerable<string> files) =>
        [.. files.Select(file => file[..(file.LastIndexOf('/') + 1)]).Distinct(StringComparer.Ordinal)];

    private static bool In(string[] folders, Problem problem) =>
        folders.Any(folder => problem.Mark.File.StartsWith(folder, StringComparison.Ordinal));
}
