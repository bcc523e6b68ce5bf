using System.Text.RegularExpressions;

namespace RuleBook.Cli.Tests;

/// <summary>The help of every command, read as a reader does: a sentence on what it is for, and one on each thing that it takes.</summary>
public sealed partial class HelpTests
{
    [Fact]
    public async Task Every_command_says_what_it_is_for_and_what_each_argument_and_option_takes()
    {
        var commands = await AtAndBelow([]);
        commands.Count.ShouldBeGreaterThan(23);
        commands.ShouldBeUnique();
    }

    private static async Task<List<string>> AtAndBelow(string[] command)
    {
        var help = await Invocation.Of([.. command, "--help"], width: 200);
        var told = $"rulebook {string.Join(' ', command)}";
        help.Code.ShouldBe(0, told);
        var sections = help
            .Out.Split("\n\n", StringSplitOptions.RemoveEmptyEntries)
            .Select(section => section.Trim('\n').Split('\n'))
            .ToDictionary(lines => lines[0], lines => lines[1..]);
        sections["Description:"].ShouldHaveSingleItem(told).ShouldMatch("^  [A-Z].{10}", told);
        var below = new List<string> { told };
        foreach (var (title, lines) in sections.Where(section => section.Key is "Arguments:" or "Options:" or "Commands:"))
        foreach (var line in lines)
        {
            var entry = Entry().Match(line);
            entry.Success.ShouldBeTrue($"{told}, {title} {line}");
            if (title == "Options:" && entry.Groups["takes"].Value.Split('|') is { Length: > 1 } choices)
                foreach (var choice in choices)
                    entry.Groups["text"].Value.ShouldMatch($"(?i)\\b{choice}\\b", $"{told}, {line}");
            if (title == "Commands:")
                below.AddRange(await AtAndBelow([.. command, entry.Groups["name"].Value]));
        }

        return below;
    }

    /// <summary>
    /// The name, what it takes, and after two blanks a text of its own that begins with a capital or a name of the trade.
    /// </summary>
    [GeneratedRegex(
        @"^  (?<name>(-\?, -h, )?[-a-z]+|(?=<))( ?<(?<takes>[A-Za-z=]+(\|[A-Za-z]+)*)>)*( \(REQUIRED\))?"
            + @"  +(?<text>[A-Z][-A-Za-z,':/]* .*[^ ,])$"
    )]
    private static partial Regex Entry();
}
