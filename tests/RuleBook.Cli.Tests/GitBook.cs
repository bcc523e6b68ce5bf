using System.Diagnostics;

namespace RuleBook.Cli.Tests;

/// <summary>
/// A repository of its own with what this book says of Australia and New Zealand: a commit without Queensland's amendment of 26 October
/// 2018, one with it, and one in which the file is broken, tagged <c>broken</c>.
/// </summary>
public sealed class GitBook : IDisposable
{
    private const string File = "jurisdictions/au-qld/ride-height.yaml";

    public GitBook()
    {
        foreach (var file in (string[])["jurisdictions", "schema/vocabulary", "schema/reference"])
            Copy(file);
        foreach (var place in Directory.EnumerateDirectories(Full("jurisdictions")).Where(IsElsewhere))
            Directory.Delete(place, recursive: true);
        Git("init", "--quiet", "--initial-branch=main");
        System.IO.File.WriteAllText(Path.Combine(Folder, "README"), "no book yet\n");
        Git("add", "README");
        Commit("empty");
        Git("tag", "empty");
        Git("rm", "--quiet", "README");
        var text = System.IO.File.ReadAllText(Full(File));
        var at = text.IndexOf("      - from: 2018-10-26", StringComparison.Ordinal);
        // What is only announced decides nothing: as if there were no amendment, and its sources are cited all the same.
        System.IO.File.WriteAllText(Full(File), text.Remove(at, "      - from:".Length).Insert(at, "      - announced:"));
        CopyTo(Folder, Old);
        All("without");
        System.IO.File.WriteAllText(Full(File), text);
        All("with");
        System.IO.File.WriteAllText(Full(File), "topic: ride-height\nrules: [\n");
        All("broken");
        Git("tag", "broken");
        Git("reset", "--quiet", "--hard", "HEAD~1");
    }

    /// <summary>The repository, with the amendment in its folder.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("rulebook-git-").FullName;

    /// <summary>A folder with the book without the amendment.</summary>
    public string Old { get; } = Directory.CreateTempSubdirectory("rulebook-old-").FullName;

    public void Dispose()
    {
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories))
            System.IO.File.SetAttributes(file, FileAttributes.Normal);
        Directory.Delete(Folder, recursive: true);
        Directory.Delete(Old, recursive: true);
    }

    private void All(string message)
    {
        Git("add", "--all");
        Commit(message);
    }

    private void Commit(string message) =>
        Git(
            "-c",
            "user.name=Somebody",
            "-c",
            "user.email=somebody@example.org",
            "-c",
            "commit.gpgsign=false",
            "commit",
            "--quiet",
            "--message",
            message
        );

    private void Git(params string[] arguments)
    {
        using var git = Process.Start(new ProcessStartInfo("git", arguments) { WorkingDirectory = Folder })!;
        git.WaitForExit();
        git.ExitCode.ShouldBe(0, string.Join(' ', arguments));
    }

    private static bool IsElsewhere(string place) =>
        Path.GetFileName(place) is var id && id != "nz" && !id.StartsWith("au", StringComparison.Ordinal);

    private string Full(string path) => Path.Combine(Folder, path);

    private void Copy(string folder) => CopyTo(Path.Combine(Invocation.Root, folder), Full(folder));

    internal static void CopyTo(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*.yaml", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            System.IO.File.Copy(file, target, overwrite: true);
        }
    }
}
