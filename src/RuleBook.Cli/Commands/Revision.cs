using System.ComponentModel;
using System.Diagnostics;
using System.Formats.Tar;
using RuleBook.Authoring.Books;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>Opens a book that is named by its folder, or by a git revision of the repository that holds another book.</summary>
internal static class Revision
{
    private const string Code = "not-a-book";

    /// <summary>The book.</summary>
    /// <param name="name">A folder or a revision.</param>
    /// <param name="current">The folder of the current book.</param>
    /// <exception cref="InputException">It is neither, or cannot be read.</exception>
    public static Book Open(string name, string current)
    {
        if (Directory.Exists(Path.Combine(name, "jurisdictions"))) return BookReading.Open(name);
        var commit = Commit(name, current);
        var folder = Directory.CreateTempSubdirectory($"rulebook-revision-{Environment.ProcessId}-").FullName;
        try
        {
            Unpack(name, commit, current, folder);
            return BookReading.Open(folder);
        }
        catch (InputException refused)
        {
            // As git names a file of a revision.
            throw new InputException([.. refused.Problems.Select(problem => problem.Code == Code
                ? Refused(name, "the revision has no folders jurisdictions and schema where the book is")
                : problem with { Mark = problem.Mark with { File = $"{name}:{problem.Mark.File}" } })]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Commit(string name, string current)
    {
        var refused = new InputException(Refused(name, "it is neither a book's folder nor a git revision"));
        if (name.Length == 0 || name.StartsWith('-') || name.AsSpan().ContainsAny('\0', '\n', '\r')) throw refused;
        using var git = Git(name, current, "rev-parse", "--verify", "--quiet", $"{name}^{{commit}}");
        var commit = git.StandardOutput.ReadToEnd().Trim();
        git.WaitForExit();
        return git.ExitCode == 0 && commit.Length >= 40 && commit.All(char.IsAsciiHexDigitLower) ? commit : throw refused;
    }

    /// <summary>Only the YAML files of a book, and no link.</summary>
    private static void Unpack(string name, string commit, string current, string folder)
    {
        using var git = Git(name, current, "archive", "--format=tar", commit, "jurisdictions", "schema");
        using (var tar = new TarReader(git.StandardOutput.BaseStream, leaveOpen: true))
            while (Next(tar) is { } entry)
            {
                var parts = entry.Name.Split('/');
                if (entry.EntryType is not (TarEntryType.RegularFile or TarEntryType.V7RegularFile)) continue;
                if (parts[0] is not ("jurisdictions" or "schema") || parts.Contains("..")) continue;
                var path = Path.Combine([folder, .. parts]);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                entry.ExtractToFile(path, overwrite: true);
            }

        // The blocks that pad an archive are read too: git fails when it cannot write them.
        git.StandardOutput.BaseStream.CopyTo(Stream.Null);
        git.WaitForExit();
        if (git.ExitCode != 0) throw new InputException(Refused(name, "the revision has no folders jurisdictions and schema where the book is"));
    }

    /// <summary>Null at the end, and when git gave nothing at all.</summary>
    private static TarEntry? Next(TarReader tar)
    {
        try
        {
            return tar.GetNextEntry();
        }
        catch (Exception failure) when (failure is EndOfStreamException or InvalidDataException)
        {
            return null;
        }
    }

    private static Process Git(string name, string current, params string[] arguments)
    {
        var start = new ProcessStartInfo("git", arguments)
        {
            WorkingDirectory = current,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        try
        {
            var git = Process.Start(start)!;
            git.StandardInput.Close();
            git.ErrorDataReceived += (_, _) => { };
            git.BeginErrorReadLine();
            return git;
        }
        catch (Exception failure) when (failure is Win32Exception or IOException)
        {
            throw new InputException(Refused(name, "it is not a book's folder, and git cannot be run to look for a revision"));
        }
    }

    private static Problem Refused(string name, string text) =>
        Problem.Error(Code, new Mark(name, 1, 1), text, "name a folder that has jurisdictions/ in it, or a revision such as main~3");
}
