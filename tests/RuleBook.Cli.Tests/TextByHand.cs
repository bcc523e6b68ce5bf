using System.Globalization;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using Spectre.Console;

namespace RuleBook.Cli.Tests;

/// <summary>An invented place and its book, and what a text of the command reads like on a wide page without colours.</summary>
internal static class TextByHand
{
    internal static readonly DateOnly Day = new(2026, 11, 25);
    internal static readonly Mark Line7 = new("jurisdictions/xa/ride-height.yaml", 7, 3);
    internal static readonly Outcome Free = new(Pathway.NoCertificate, Pathway.NoCertificate);
    internal static readonly Outcome Certified = new(Pathway.Certificate, Pathway.Certificate);

    internal static readonly Jurisdiction Isle = new()
    {
        Id = "xa",
        Name = "The isle",
        Registers = true,
        Ask = new Authority("The isle's office", null),
        Mark = Line7,
    };

    internal static readonly Book IsleBook = new() { Digest = "sha256:0123456789abcdef", Jurisdictions = [Isle] };

    internal static string Told(Action<Page> write) =>
        Told(console =>
        {
            write(new Page(console));
            return null;
        });

    internal static string Told(Func<IAnsiConsole, string?> write)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Out = new AnsiConsoleOutput(output),
            }
        );
        console.Profile.Width = 400;
        write(console);
        return string.Join('\n', output.ToString().TrimEnd('\n').Split('\n').Select(line => line.TrimEnd()));
    }
}
