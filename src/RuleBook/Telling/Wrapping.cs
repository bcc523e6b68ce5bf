namespace RuleBook.Telling;

/// <summary>How many lines texts take where words are wrapped.</summary>
internal static class Wrapping
{
    /// <summary>Of several texts that each begin a line.</summary>
    public static int Lines(IEnumerable<string> texts, int width) => texts.Sum(text => Lines(text, width));

    private static int Lines(string text, int width)
    {
        var (lines, column) = (1, 0);
        foreach (var word in text.Split(' '))
        {
            var after = column == 0 ? word.Length : column + 1 + word.Length;
            if (column > 0 && after > width)
                (lines, column) = (lines + 1, word.Length);
            else
                column = after;
        }

        return lines;
    }
}
