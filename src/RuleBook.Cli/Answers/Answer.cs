using RuleBook.Cli.Commands;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>Gives an answer on the console, or to a file as plain text.</summary>
internal static class Answer
{
    private const int FileWidth = 100;

    /// <param name="surroundings">Where to write.</param>
    /// <param name="file">The file; null for the console.</param>
    /// <param name="write">Writes to the console it is given, or returns the text to write.</param>
    public static void Give(Surroundings surroundings, string? file, Func<IAnsiConsole, string?> write)
    {
        if (file is null)
        {
            if (write(surroundings.Console) is { } text) surroundings.Out.Write(text);
            return;
        }

        using var aside = new StringWriter { NewLine = "\n" };
        var plain = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Out = new AnsiConsoleOutput(aside) });
        plain.Profile.Width = FileWidth;
        WholeFile.Write(file, write(plain) ?? aside.ToString());
    }
}
