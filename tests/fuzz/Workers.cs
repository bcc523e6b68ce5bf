using System.Diagnostics;

namespace RuleBook.Fuzz;

/// <summary>Several processes, each with a seed of its own, since processor time and memory are counted for a process.</summary>
internal static class Workers
{
    /// <summary>Runs them; what they find is told at once, their tallies at the end, together.</summary>
    /// <returns>0 without findings, else 1.</returns>
    public static async Task<int> RunAsync(int count, int seconds, int seed)
    {
        var workers = Enumerable.Range(0, count).Select(worker => Start(seconds, seed + worker)).ToArray();
        var told = await Task.WhenAll(workers.Select(ListenAsync)).ConfigureAwait(false);
        Console.Write(Tally.Table(Tally.Together(told.SelectMany(each => each.Tallies)), told.Sum(each => each.Findings)));
        return workers.All(worker => worker.ExitCode == 0) ? 0 : 1;
    }

    private static Process Start(int seconds, int seed)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        foreach (var word in (string[])[Environment.GetCommandLineArgs()[0], $"{seconds}", "--seed", $"{seed}", "--tallies"])
            start.ArgumentList.Add(word);
        if (!Path.GetFileNameWithoutExtension(start.FileName).Equals("dotnet", StringComparison.OrdinalIgnoreCase))
            start.ArgumentList.RemoveAt(0);
        return Process.Start(start)!;
    }

    private static async Task<(List<Tally> Tallies, int Findings)> ListenAsync(Process worker)
    {
        var (tallies, findings) = (new List<Tally>(), 0);
        while (await worker.StandardOutput.ReadLineAsync().ConfigureAwait(false) is { } line)
            if (Tally.Read(line) is { } tally)
                tallies.Add(tally);
            else
            {
                findings += line.StartsWith("FOUND", StringComparison.Ordinal) ? 1 : 0;
                Console.WriteLine(line);
            }

        await worker.WaitForExitAsync().ConfigureAwait(false);
        return (tallies, findings);
    }
}
