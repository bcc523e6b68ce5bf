using System.Diagnostics;

namespace RuleBook.Benchmarks;

/// <summary>The command, run as anybody runs it.</summary>
internal sealed class Command : IAsyncDisposable
{
    public const int Port = 8329;

    private readonly Process process;

    private Command(Process process) => this.process = process;

    public string Root { get; } = $"http://127.0.0.1:{Port}/";

    /// <summary>Renders the site once.</summary>
    public static async Task<TimeSpan> BuildAsync(string command, string folder)
    {
        var watch = Stopwatch.StartNew();
        using var process = Start(command, "site", Path.Combine(folder, "site"));
        await process.WaitForExitAsync();
        return process.ExitCode == 0 ? watch.Elapsed : throw new InvalidOperationException($"the command ended with {process.ExitCode}");
    }

    /// <summary>Renders the site and serves it until disposed of.</summary>
    public static async Task<Command> ServeAsync(string command, string folder)
    {
        var serving = new Command(Start(command, "site", Path.Combine(folder, "site"), "--preview", "--port", $"{Port}"));
        while (await serving.process.StandardOutput.ReadLineAsync() is { } line)
            if (line.StartsWith(serving.Root, StringComparison.Ordinal))
                return serving;
        throw new InvalidOperationException("the preview did not start");
    }

    public async ValueTask DisposeAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
    }

    private static Process Start(string command, params string[] arguments) =>
        Process.Start(new ProcessStartInfo("dotnet", [command, .. arguments]) { RedirectStandardOutput = true })!;
}
