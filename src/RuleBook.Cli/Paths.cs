using RuleBook.Text;

namespace RuleBook.Cli;

/// <summary>Paths that are given on the command line.</summary>
internal static class Paths
{
    /// <summary>The path as given; null where none was.</summary>
    /// <exception cref="InputException">
    /// It is empty, or holds a character that no path has: an unset variable of a script names nothing.
    /// </exception>
    public static string? Given(string option, string? path) =>
        path is null || (path.Trim().Length > 0 && !path.Contains('\0', StringComparison.Ordinal))
            ? path
            : throw new InputException(
                Problem.Error(
                    "empty-path",
                    new Mark(option, 1, 1),
                    "the path that is given is empty",
                    "name a file or folder; a variable of a script may be unset"
                )
            );
}
