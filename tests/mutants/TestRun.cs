using System.Diagnostics;
using System.Globalization;

namespace RuleBook.Mutants;

/// <summary>A class of tests, and how long it takes by itself.</summary>
internal sealed record TestClass(string Project, string Name, double Seconds);

/// <summary>How a run of some tests ended.</summary>
/// <param name="Failed">Whether a test failed, or the process broke or did not end in time.</param>
/// <param name="By">The classes with a test that failed.</param>
internal sealed record TestRun(bool Failed, IReadOnlyList<TestClass> By)
{
    /// <summary>What a class may take by itself, s, before it is known: for six times as long, and 20 s, it is waited.</summary>
    private const double Slowest = 12;

    /// <summary>Runs classes of one project in a process of their own, until the first failure.</summary>
    public static async Task<TestRun> OfAsync(Copy copy, IReadOnlyList<TestClass> classes, int mutant, string? reached = null)
    {
        var project = classes[0].Project;
        var start = Started(copy, project, ["-noColor", "-noLogo", "-stopOnFail", "-maxThreads", "1"]);
        foreach (var each in classes)
            (_, _) = (Add(start, "-class"), Add(start, each.Name));
        start.Environment[MutatedProject.Acting] = mutant.ToString(CultureInfo.InvariantCulture);
        start.Environment[MutatedProject.Reached] = reached;
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x80000000";
        using var process = Process.Start(start)!;
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20 + (6 * classes.Sum(each => each.Seconds))));
        try
        {
            var errors = process.StandardError.ReadToEndAsync(patience.Token);
            var said = await process.StandardOutput.ReadToEndAsync(patience.Token).ConfigureAwait(false);
            await errors.ConfigureAwait(false);
            await process.WaitForExitAsync(patience.Token).ConfigureAwait(false);
            string[] failures = [.. said.Split('\n').Where(line => line.Contains("[FAIL]", StringComparison.Ordinal))];
            return new(
                process.ExitCode != 0 && !said.Contains("Total: 0,", StringComparison.Ordinal),
                [.. classes.Where(each => failures.Any(line => line.Contains($"{each.Name}.", StringComparison.Ordinal)))]
            );
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            return new(true, []);
        }
    }

    /// <summary>The classes of a project's tests.</summary>
    public static async Task<IReadOnlyList<TestClass>> ClassesAsync(Copy copy, string project)
    {
        using var process = Process.Start(Started(copy, project, ["-list", "classes", "-noColor"]))!;
        var said = await process.StandardOutput.ReadToEndAsync().ConfigureAwait(false);
        return
        [
            .. said.Split('\n', StringSplitOptions.TrimEntries)
                .Where(name => name.StartsWith(project, StringComparison.Ordinal) && !name.Contains(".Browser.", StringComparison.Ordinal))
                .Select(name => new TestClass(project, name, Slowest)),
        ];
    }

    private static ProcessStartInfo Started(Copy copy, string project, string[] words) =>
        new(Path.Combine(copy.Bin(project), project), words) { RedirectStandardOutput = true, RedirectStandardError = true };

    private static bool Add(ProcessStartInfo start, string word)
    {
        start.ArgumentList.Add(word);
        return true;
    }
}
