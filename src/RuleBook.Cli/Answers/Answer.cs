using RuleBook.Authoring.Files;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>Gives an answer on the console, or to a file as plain text: composed aside first, so that nothing is half written.</summary>
internal static class Answer
{
    private const int FileWidth = 100;

    /// <summary>A terminal that has fewer columns breaks the lines by itself.</summary>
    private const int Narrowest = 24;

    /// <param name="surroundings">Where to write.</param>
    /// <param name="file">The file; null for the console.</param>
    /// <param name="write">Writes to the console it is given, or returns the text to write.</param>
    public static void Give(Surroundings surroundings, string? file, Func<IAnsiConsole, string?> write)
    {
        Paths.Given("--output", file);
        var profile = surroundings.Console.Profile;
        using var aside = new StringWriter { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = file is null && profile.Capabilities.Ansi ? AnsiSupport.Yes : AnsiSupport.No,
                ColorSystem = file is null ? (ColorSystemSupport)profile.Capabilities.ColorSystem : ColorSystemSupport.NoColors,
                Out = new AnsiConsoleOutput(aside),
            }
        );
        console.Profile.Width = file is null ? Math.Max(profile.Width, Narrowest) : FileWidth;
        var text = write(console) ?? string.Join('\n', aside.ToString().Split('\n').Select(line => line.TrimEnd()));
        if (file is null)
            surroundings.Out.Write(text);
        else
            WholeFile.Write(file, text, surroundings.Stop);
    }
}
