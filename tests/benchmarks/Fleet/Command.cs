using System.Diagnostics;

namespace RuleBook.Benchmarks;

/// <summary>The built command, from outside: run this from the repository's folder.</summary>
internal static class Command
{
    public static void Run(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", ["src/RuleBook.Cli/bin/Release/net10.0/RuleBook.Cli.dll", .. arguments])
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
}
