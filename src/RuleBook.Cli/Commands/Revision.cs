using System.Globalization;
using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Packing;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>Opens a book that is named by its folder, or by a git revision of the repository that holds another book.</summary>
internal static class Revision
{
    private const string Code = "not-a-book";

    /// <summary>The book.</summary>
    /// <param name="name">A folder, a packed book or a revision.</param>
    /// <param name="current">The folder of the current book.</param>
    /// <exception cref="InputException">It is neither, or cannot be read.</exception>
    public static Book Open(string name, string current)
    {
        if (name.Trim().Length == 0)
            throw new InputException(Refused("(empty)", "no book is named: a variable of a script may be unset"));
        if (Directory.Exists(Path.Combine(name, "jurisdictions")))
            return BookReading.OpenEarlier(BookFolder.Load(name));
        if (File.Exists(name) && name.EndsWith(PackedBook.Extension, StringComparison.Ordinal))
            return PackedBook.Read(Inputs.Bytes(name), name).Open();
        var files = Files(name, Commit(name, current), current, "jurisdictions", "schema");
        try
        {
            return BookReading.OpenEarlier(BookFolder.Of(files));
        }
        catch (InputException refused)
        {
            // As git names a file of a revision.
            throw new InputException([
                .. refused.Problems.Select(problem =>
                    problem.Code == Code
                        ? Refused(name, "the revision has no folders jurisdictions and schema where the book is")
                        : problem with
                        {
                            Mark = problem.Mark with { File = $"{name}:{problem.Mark.File}" },
                        }
                ),
            ]);
        }
    }

    /// <summary>The files of the cases that are kept beside a book; none beside a packed one.</summary>
    /// <inheritdoc cref="Open(string, string)"/>
    public static IReadOnlyList<BookBytes> Cases(string name, string current)
    {
        if (Directory.Exists(Path.Combine(name, "jurisdictions")))
            return CaseFolder.Within(name) is var folder && Directory.Exists(folder)
                ?
                [
                    .. Directory
                        .GetFiles(folder, "*.yaml", SearchOption.AllDirectories)
                        .Select(file => new BookBytes(Path.GetRelativePath(name, file).Replace('\\', '/'), Inputs.Bytes(file))),
                ]
                : [];
        return File.Exists(name) ? [] : Files(name, Commit(name, current), current, "tests/cases");
    }

    private static string Commit(string name, string current)
    {
        var refused = new InputException(Refused(name, "it is neither a book's folder nor a git revision"));
        if (name.Contains('\0', StringComparison.Ordinal))
            throw refused; // what git is given would end there
        using var git = Git.Start(name, current, "rev-parse", "--verify", "--quiet", $"{name}^{{commit}}");
        var commit = git.Output.ReadToEnd().Trim();
        return git.Ended() && commit.All(char.IsAsciiHexDigitLower) ? commit : throw refused;
    }

    /// <summary>
    /// The YAML files of some folders as they are stored: no attribute of the repository has a say in what is left out or rewritten, and no
    /// link is followed.
    /// </summary>
    private static List<BookBytes> Files(string name, string commit, string current, params string[] folders)
    {
        var listed = Listed(name, commit, current, folders);
        using var git = Git.Start(name, current, "cat-file", "--batch");
        var asked = Task.Run(() =>
        {
            foreach (var (_, blob) in listed)
                git.Input.Write($"{blob}\n");
            git.Input.Close();
        });
        var files = listed.ConvertAll(file => new BookBytes(file.Path, Content(name, git.Bytes)));
        asked.GetAwaiter().GetResult();
        return git.Ended() ? files : throw new InputException(Refused(name, "the revision cannot be read from the repository"));
    }

    private static List<(string Path, string Blob)> Listed(string name, string commit, string current, string[] folders)
    {
        using var git = Git.Start(name, current, ["ls-tree", "-r", "-z", commit, "--", .. folders]);
        var files = new List<(string, string)>();
        foreach (var entry in git.Output.ReadToEnd().Split('\0', StringSplitOptions.RemoveEmptyEntries))
        {
            // Mode, kind, name of the content; after a tab the path.
            if (entry.Split('\t', 2) is not [var about, var path] || about.Split(' ') is not [var mode, "blob", var blob])
                continue;
            if (mode == "120000")
                throw new InputException(BookProblems.Link(path));
            if (path.EndsWith(".yaml", StringComparison.Ordinal))
                files.Add((path, blob));
        }

        return git.Ended() ? files : throw new InputException(Refused(name, "the revision cannot be read from the repository"));
    }

    /// <summary>One answer of <c>cat-file --batch</c>: a line with name, kind and size, the content, a line end.</summary>
    private static byte[] Content(string name, Stream git)
    {
        var head = new StringBuilder();
        for (var next = git.ReadByte(); next is not ('\n' or -1) && head.Length < 200; next = git.ReadByte())
            head.Append((char)next);
        if (
            head.ToString().Split(' ') is not [_, "blob", var size]
            || !int.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var length)
            || length > BookFolder.MostBytes
        )
            throw new InputException(Refused(name, $"a file of the revision is missing or too large ({head})"));
        var content = new byte[length];
        git.ReadExactly(content);
        git.ReadByte();
        return content;
    }

    internal static Problem Refused(string name, string text) =>
        Problem.Error(Code, new Mark(name, 1, 1), text, "name a folder that has jurisdictions/ in it, or a revision such as main~3");
}
