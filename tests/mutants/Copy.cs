using System.Diagnostics;

namespace RuleBook.Mutants;

/// <summary>A copy of the tree with the built tests, in which a mutant may write and delete what it likes.</summary>
internal sealed class Copy : IDisposable
{
    /// <summary>The projects with tests that run here; those of the pages in the browser do not see the mutants.</summary>
    public static readonly string[] Tests = ["RuleBook.Tests", "RuleBook.Authoring.Tests", "RuleBook.Site.Tests", "RuleBook.Cli.Tests"];

    private readonly string folder;

    /// <param name="root">The tree, built. The copy stands beside it: tests look there for what the project is given.</param>
    public Copy(string root)
    {
        folder = Path.Combine(Path.GetDirectoryName(root)!, $"mutants-{Environment.ProcessId}");
        Directory.CreateDirectory(folder);
        Shell(root, $"git ls-files -zco --exclude-standard | xargs -0 cp --parents -t '{folder}'");
        // Some tests ask git for the last commit.
        Shell(folder, "git init -q && git add -A && git -c user.name=mutants -c user.email=mutants@localhost commit -qm mutants");
        foreach (var test in Tests)
        {
            Shell(root, $"mkdir -p '{Bin(test)}' && cp -r tests/{test}/bin/Debug/net10.0/. '{Bin(test)}'");
            // A program that stands is not to be ended ten seconds after its first run.
            File.WriteAllText(Path.Combine(Bin(test), "xunit.runner.json"), """{ "shutdownForegroundThreadWaitSeconds": 1000000 }""");
        }
    }

    /// <summary>The folder in which a test project's program stands.</summary>
    public string Bin(string test) => Path.Combine(folder, "tests", test, "bin", "Debug", "net10.0");

    /// <summary>The projects with tests that may see a change of an assembly.</summary>
    public IEnumerable<string> TestsOf(IEnumerable<string> assemblies) =>
        Tests.Where(test => assemblies.Any(assembly => File.Exists(Path.Combine(Bin(test), assembly))));

    /// <summary>Where a project's assembly stands: the first is written, the others are links to it.</summary>
    public void Put(string assembly, Action<string> write)
    {
        string[] places = [.. Tests.Select(test => Path.Combine(Bin(test), assembly)).Where(File.Exists)];
        write(places[0]);
        foreach (var other in places.Skip(1))
            File.Copy(places[0], Emptied(other));

        static string Emptied(string place)
        {
            File.Delete(place);
            return place;
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static void Shell(string at, string line)
    {
        using var shell = Process.Start(new ProcessStartInfo("bash", ["-c", line]) { WorkingDirectory = at })!;
        shell.WaitForExit();
        if (shell.ExitCode != 0)
            throw new InvalidOperationException($"{line} ended with {shell.ExitCode}");
    }
}
