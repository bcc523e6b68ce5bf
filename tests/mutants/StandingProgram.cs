using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace RuleBook.Mutants;

/// <summary>A program of tests that stays, and runs one class after another, each with a mutant; it starts anew where it broke.</summary>
internal sealed class StandingProgram(Copy copy, string project) : IDisposable
{
    private Process? process;

    /// <summary>Runs a class with a mutant.</summary>
    /// <returns>
    /// The test that failed, or that the program broke or did not end in time; null where all hold. And the numbers of the places reached.
    /// </returns>
    public async Task<(string? Failed, IReadOnlyCollection<int> Reached)> RunAsync(TestClass each, int mutant)
    {
        process ??= Start();
        using var patience = TestRun.Patience(each);
        try
        {
            await process
                .StandardInput.WriteLineAsync(
                    string.Create(CultureInfo.InvariantCulture, $"{mutant} {string.Join(' ', TestRun.Words)} -class {each.Name}")
                )
                .ConfigureAwait(false);
            var failed = "";
            while (await process.StandardOutput.ReadLineAsync(patience.Token).ConfigureAwait(false) is { } line)
                if (line.EndsWith(" [FAIL]", StringComparison.Ordinal))
                {
                    failed = line.Trim();
                }
                else if (line.StartsWith(StartupHook.Ended, StringComparison.Ordinal))
                {
                    var words = line[StartupHook.Ended.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
                    return (
                        words[0] == "0" ? null : failed,
                        [.. words.Skip(1).Select(word => int.Parse(word, CultureInfo.InvariantCulture))]
                    );
                }
        }
        catch (Exception broken) when (broken is OperationCanceledException or IOException) { }

        Dispose();
        return ("broke or took too long", []);
    }

    public void Dispose()
    {
        process?.Kill(entireProcessTree: true);
        process?.Dispose();
        process = null;
    }

    private Process Start()
    {
        var start = TestRun.Started(copy, project, []);
        start.RedirectStandardInput = true;
        start.Environment[StartupHook.Variable] = typeof(StartupHook).Assembly.Location;
        var started = Process.Start(start)!;
        started.ErrorDataReceived += (_, _) => { };
        started.BeginErrorReadLine();
        return started;
    }
}

/// <summary>Programs of all projects for as many workers as ask at a time.</summary>
internal sealed class StandingPrograms(Copy copy) : IDisposable
{
    private readonly ConcurrentBag<IReadOnlyDictionary<string, StandingProgram>> idle = [];

    /// <summary>One of each project, by its name, for one worker.</summary>
    public IReadOnlyDictionary<string, StandingProgram> Taken() =>
        idle.TryTake(out var some) ? some : Copy.Tests.ToDictionary(each => each, each => new StandingProgram(copy, each));

    /// <summary>They are for the next worker.</summary>
    public void Return(IReadOnlyDictionary<string, StandingProgram> some) => idle.Add(some);

    public void Dispose()
    {
        foreach (var program in idle.SelectMany(programs => programs.Values))
            program.Dispose();
    }
}
