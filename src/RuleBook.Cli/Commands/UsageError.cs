using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>A command line that cannot be read: the line as it was typed, what is wrong, one hint.</summary>
internal sealed record UsageError(IReadOnlyList<string> Lines)
{
    private static readonly char[] Breaks = ['\r', '\n', '\t'];

    /// <summary>Null where the command line can be read.</summary>
    public static UsageError? Of(ParseResult parsed, IReadOnlyList<string> args)
    {
        if (parsed.Action is HelpAction || args is [['[', ..], ..])
            return null; // a directive, such as [suggest], has a line of its own
        var command = parsed.CommandResult.Command;
        var unknown = Unknown(parsed, args) ?? (parsed.UnmatchedTokens is [var first, ..] ? first : null);
        if (unknown is null && parsed.Errors.Count == 0)
            return null;
        string[] known = [.. command.Subcommands.Select(each => each.Name), .. Options(command)];
        var help = $"'{Called(parsed.CommandResult)} --help' tells what there is";
        return new([
            "rulebook" + string.Concat(args.Select(arg => " " + Visible.Of(arg))),
            unknown is null
                ? $"error: {OneLine(parsed.Errors[0].Message).TrimEnd('.')} ({help})"
                : $"error: '{Visible.Of(unknown)}' is not known here "
                    + $"({(Spelling.Nearest(unknown, known) is { } near ? $"did you mean '{near}'? " : "")}{help})",
        ]);
    }

    /// <summary>A word that begins like an option and was taken for a file; a file of that name is written ./--name.</summary>
    private static string? Unknown(ParseResult parsed, IReadOnlyList<string> args) =>
        args.Contains("--")
            ? null
            : parsed
                .CommandResult.Children.OfType<ArgumentResult>()
                .SelectMany(argument => argument.Tokens)
                .Select(token => token.Value)
                .FirstOrDefault(value => value is ['-', '-', _, ..] or ['-', (>= 'a' and <= 'z') or (>= 'A' and <= 'Z'), ..]);

    private static IEnumerable<string> Options(Command command) => command.Options.Select(option => option.Name).Append("--help");

    private static string Called(CommandResult result) =>
        result.Parent is CommandResult parent ? $"{Called(parent)} {result.Command.Name}" : "rulebook";

    private static string OneLine(string message) =>
        Visible.Of(string.Join(' ', message.Split(Breaks, StringSplitOptions.RemoveEmptyEntries)));
}
