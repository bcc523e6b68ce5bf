using System.Globalization;
using RuleBook.Cli.Commands;
using Spectre.Console;

namespace RuleBook.Cli.Tests;

/// <summary>What the command printed and returned.</summary>
internal sealed record Invocation(int Code, string Out, string Error)
{
    /// <summary>What was printed, with every run of blanks and line ends as one blank.</summary>
    public string Words => string.Join(' ', Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The project's root: the folder with RuleBook.sln.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Runs the command in this process, as on a fixed day, on a console of a given width.</summary>
    public static Task<Invocation> Of(string[] args, int width = 80, bool colour = false) => Of(args, width, colour, each => each);

    /// <summary>The same, looked at by somebody, on a clock that goes on by so many seconds each time that it is read.</summary>
    public static Task<Invocation> Watched(string[] args, double seconds, Action read)
    {
        var times = 0;
        return Of(args, 80, false, each => each with { IsWatched = true, Running = Next });

        TimeSpan Next()
        {
            read();
            return TimeSpan.FromSeconds(times++ * seconds);
        }
    }

    private static async Task<Invocation> Of(string[] args, int width, bool colour, Func<Surroundings, Surroundings> changed)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var error = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = colour ? AnsiSupport.Yes : AnsiSupport.No,
                ColorSystem = colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
                Out = new AnsiConsoleOutput(output),
            }
        );
        console.Profile.Width = width;
        var code = await CommandLine.RunAsync(args, changed(new Surroundings(output, error, console, new DateOnly(2026, 11, 25), Root)));
        return new Invocation(code, output.ToString(), error.ToString());
    }

    /// <summary>Assesses a job given as text, from a file of its own.</summary>
    public static async Task<Invocation> Assess(string job, params string[] options)
    {
        var file = Path.Combine(Path.GetTempPath(), $"job-{Guid.NewGuid():N}.yaml");
        await File.WriteAllTextAsync(file, job);
        try
        {
            return await Of(["assess", file, .. options]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>Answers a fleet given as text, from the file named.</summary>
    public static async Task<Invocation> Fleet(string file, string text, params string[] options)
    {
        await File.WriteAllTextAsync(file, text);
        return await Of(["fleet", file, .. options]);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RuleBook.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
