using System.Diagnostics;

namespace RuleBook.Mutants;

/// <summary>A class of tests, and how long it takes where its program runs already.</summary>
internal sealed record TestClass(string Project, string Name, double Seconds)
{
    /// <summary>Whether it stands in the folder of tests that is named as the mutant's.</summary>
    public bool IsOf(Mutant mutant) =>
        mutant.File.Split('/') is [_, var project, var folder, _, ..]
        && Name.StartsWith($"{project}.Tests.{folder}.", StringComparison.Ordinal);
}

/// <summary>Runs tests in a process of their own.</summary>
internal static class TestRun
{
    /// <summary>What every run is told: one thread, so that it takes as long as it takes, and no more than one failure.</summary>
    public static readonly string[] Words = ["-noColor", "-noLogo", "-stopOnFail", "-maxThreads", "1"];

    /// <summary>What a class may take before it is known, s.</summary>
    public const double Slowest = 30;

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

    /// <summary>A program of tests, ready to be started.</summary>
    public static ProcessStartInfo Started(Copy copy, string project, string[] words) =>
        new(Path.Combine(copy.Bin(project), project), words)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["DOTNET_GCHeapHardLimit"] = "0x80000000" },
        };

    /// <summary>Six times as long as the class takes, and what a start with all its books and a busy machine may.</summary>
    public static CancellationTokenSource Patience(TestClass each) => new(TimeSpan.FromSeconds(90 + (6 * each.Seconds)));
}
