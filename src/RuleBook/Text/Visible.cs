using System.Globalization;
using System.Text;

namespace RuleBook.Text;

/// <summary>
/// Text from a book, a job or a file's name, put so that everything in it is seen and nothing in it acts: control characters, line ends,
/// characters that turn the direction of writing and those that cannot be seen become <c>\u{202E}</c>; so do the marks by which a log of
/// continuous integration takes a line for a command.
/// </summary>
internal static class Visible
{
    /// <summary>One line of text; the same text where there is nothing to escape.</summary>
    public static string Of(string text)
    {
        if (IsPlain(text))
            return text;
        var seen = new StringBuilder(text.Length + 16);
        for (var i = 0; i < text.Length; )
        {
            var whole = Rune.TryGetRuneAt(text, i, out var rune);
            if (!whole)
                Escape(seen, text[i]);
            else if (Acts(rune) || IsCommand(text, i))
                Escape(seen, rune.Value);
            else
                seen.Append(rune);
            i += whole ? rune.Utf16SequenceLength : 1;
        }

        return seen.ToString();
    }

    private static void Escape(StringBuilder seen, int value) => seen.Append(CultureInfo.InvariantCulture, $"\\u{{{value:X}}}");

    private static bool IsPlain(string text) =>
        !text.AsSpan().ContainsAnyExceptInRange(' ', '~')
        && !text.Contains("::", StringComparison.Ordinal)
        && !text.Contains("##[", StringComparison.Ordinal);

    /// <summary>The second colon of <c>::</c>, the second sign of <c>##[</c>.</summary>
    private static bool IsCommand(string text, int i) =>
        i > 0
        && ((text[i] == ':' && text[i - 1] == ':') || (text[i] == '#' && text[i - 1] == '#' && i + 1 < text.Length && text[i + 1] == '['));

    private static bool Acts(Rune rune) =>
        Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator =>
                true,
            UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate => true,
            _ => rune.Value
                is 0x34F
                    or 0x115F
                    or 0x1160
                    or 0x17B4
                    or 0x17B5
                    or 0x2800
                    or 0x3164
                    or 0xFFA0
                    or (>= 0xFE00 and <= 0xFE0F)
                    or (>= 0xE0100 and <= 0xE01EF),
        };
}
