using System.Diagnostics;
using System.Globalization;

namespace RuleBook.Benchmarks;

/// <summary>Built programs, from outside: run this from the repository's folder.</summary>
internal static class Command
{
    /// <summary>The command as it is built, or the native one that the environment names.</summary>
    public static void RuleBook(params string[] arguments) =>
        Run(Environment.GetEnvironmentVariable("RULEBOOK_COMMAND") ?? "src/RuleBook.Cli/bin/Release/net10.0/RuleBook.Cli.dll", arguments);

    public static void Run(string program, params string[] arguments)
    {
        var managed = program.EndsWith(".dll", StringComparison.Ordinal);
        var start = new ProcessStartInfo(managed ? "dotnet" : program, managed ? [program, .. arguments] : arguments)
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{said.Result}{error}");
    }

    /// <summary>What this program and those that it started and that have ended took of the processors; Linux tells the latter.</summary>
    public static TimeSpan Processor()
    {
        var ticks = File.ReadAllText("/proc/self/stat").Split(' ')[15..17].Sum(each => long.Parse(each, CultureInfo.InvariantCulture));
        return Environment.CpuUsage.TotalTime + TimeSpan.FromMilliseconds(10 * ticks);
    }
}
