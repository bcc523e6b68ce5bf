using RuleBook.Text;
using YamlDotNet.Core;
using Mark = RuleBook.Text.Mark;

namespace RuleBook.Yaml;

/// <summary>Says in the maintainer's words what the parser stumbled over.</summary>
internal static class YamlSyntax
{
    internal static Problem Explain(YamlException error, string text, string file)
    {
        var written = text.TrimEnd();
        var mark = new Mark(file, (int)Math.Max(error.Start.Line, 1), (int)Math.Max(error.Start.Column, 1));
        if (YamlCharacters.Place(written, written.Length, file) is var end && mark > end)
            mark = end;
        if (Tab(text, mark, error.Message.Has("tab")) is { } tab)
            return YamlProblems.Tab(tab);
        return YamlProblems.Syntax(mark, Lower(error.Message), Tip(error.Message));
    }

    /// <summary>A bracket after which nothing could be read any more.</summary>
    internal static Problem Unclosed(Mark bracket, bool isList) =>
        YamlProblems.Syntax(bracket, $"the bracket of line {bracket.Line} is not closed", isList ? "close it with ]" : "close it with }");

    private static string Lower(string message) =>
        message.Length > 0 ? char.ToLowerInvariant(message[0]) + message[1..].TrimEnd('.') : "this cannot be read as YAML";

    private static string Tip(string message) =>
        message switch
        {
            _ when message.Has("mapping values are not allowed") => "a text with ': ' in it must be quoted; or the indentation is off",
            _ when message.Has("block") || message.Has("indent") =>
                "check that keys of one mapping start in the same column, and that a list's dashes line up",
            _ when message.Has("flow") || message.Has("',' or") =>
                "check that every { and [ is closed, and that entries are separated by commas",
            _ when message.Has("quoted") || message.Has("end of stream") || message.Has("end of document") =>
                "check that every quotation mark is closed",
            _ when message.Has("start any token") => "a text that begins with @, `, % or another special character must be quoted",
            _ when message.Has("simple key") => "a key needs a colon and a space after it",
            _ when message.Has("invalid mapping") =>
                "a text with ': ' in it must be quoted; or the line stands further in than those beside it",
            _ => "a text with special characters must be quoted",
        };

    private static bool Has(this string message, string part) => message.Contains(part, StringComparison.OrdinalIgnoreCase);

    /// <summary>
    /// The tab in the indentation of the line at <paramref name="mark"/> or beside it; where the parser names a tab but only the mapping's
    /// start, the first one from there on.
    /// </summary>
    private static Mark? Tab(string text, Mark mark, bool isNamed)
    {
        var lines = text.Split('\n');
        var from = Math.Max(mark.Line - 1, 1);
        var to = isNamed ? lines.Length : Math.Min(mark.Line + 1, lines.Length);
        for (var number = from; number <= to; number++)
        {
            var line = lines[number - 1].AsSpan();
            var indentation = line[..(line.Length - line.TrimStart(" \t").Length)];
            if (indentation.IndexOf('\t') is var column and >= 0)
                return mark with { Line = number, Column = column + 1 };
        }

        return null;
    }
}
