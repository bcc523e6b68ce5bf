using System.Globalization;
using System.Text;
using RuleBook.Text;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// Text from a book or a file, put so that Markdown shows it and does nothing else: no markup, no link, no mention, no HTML.
/// </summary>
internal static class Markdown
{
    private const string Plain = " ,;%-/=.";

    /// <summary>For running text and table cells.</summary>
    public static string Escaped(string text)
    {
        var escaped = new StringBuilder();
        foreach (var rune in Visible.Of(text).EnumerateRunes())
            if (Rune.IsLetterOrDigit(rune) || Plain.Contains((char)Math.Min(rune.Value, char.MaxValue), StringComparison.Ordinal))
                escaped.Append(rune);
            else if (Rune.IsWhiteSpace(rune))
                escaped.Append(' ');
            else
                escaped.Append(CultureInfo.InvariantCulture, $"&#{rune.Value};");
        return escaped.Replace("www.", "www&#46;").Replace("WWW.", "WWW&#46;").ToString();
    }

    /// <summary>As code in running text.</summary>
    public static string Code(string text) => $"<code>{Escaped(text)}</code>";

    /// <summary>As a block, its fence longer than any run of the same mark inside.</summary>
    public static string Block(string language, string text)
    {
        var longest = text.Split('\n').Select(line => line.TrimStart().TakeWhile(mark => mark == '`').Count()).Max();
        var fence = new string('`', Math.Max(3, longest + 1));
        var lines = text.TrimEnd('\n').Split('\n').Select(Visible.Of);
        return $"{fence}{language}\n{string.Join('\n', lines)}\n{fence}\n";
    }
}
