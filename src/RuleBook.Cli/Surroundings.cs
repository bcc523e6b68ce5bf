using System.Diagnostics;
using System.Reflection;
using Spectre.Console;

namespace RuleBook.Cli;

/// <summary>What a command may touch: where it writes, and the one place that reads the clock.</summary>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="Console">Standard output as a console that knows its width and colours.</param>
/// <param name="Today">The day on which the command runs.</param>
/// <param name="Folder">The folder from which a book is looked for.</param>
internal sealed record Surroundings(TextWriter Out, TextWriter Error, IAnsiConsole Console, DateOnly Today, string Folder)
{
    /// <summary>More columns than that are no terminal's.</summary>
    private const int Widest = 1000;

    /// <summary>The most problems of an input that are printed.</summary>
    public const int MostProblems = 100;

    /// <summary>To whom a fault is reported.</summary>
    public const string ReportTo = "the maintainers, as an issue of the repository that the command came from";

    /// <summary>The version of the command, without the commit from which it was built.</summary>
    public static string Version { get; } =
        typeof(Surroundings).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0]
        ?? "unknown";

    /// <summary>Standard input, read line by line.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>Requested when the process is asked to end: what is being written is taken back.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>How long it runs already.</summary>
    public Func<TimeSpan> Running { get; init; } = FromNow();

    /// <summary>Whether somebody looks at standard error while it runs.</summary>
    public bool IsWatched { get; init; }

    public static Surroundings OfTheProcess(CancellationToken stop)
    {
#pragma warning disable RS0030 // the command's entry point is the one place that reads the clock
        var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
#pragma warning restore RS0030
        var profile = AnsiConsole.Console.Profile;
        if (
            System.Console.IsOutputRedirected
            && int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), out var columns)
            && columns is > 0 and <= Widest
        )
            profile.Width = columns;
        if (Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 })
            profile.Capabilities.Ansi = false; // no-color.org; bold is left out too
        return new(System.Console.Out, System.Console.Error, AnsiConsole.Console, today, Directory.GetCurrentDirectory())
        {
            Stop = stop,
            In = System.Console.In,
            IsWatched = !System.Console.IsErrorRedirected,
        };
    }

    private static Func<TimeSpan> FromNow()
    {
        var watch = Stopwatch.StartNew();
        return () => watch.Elapsed;
    }
}
