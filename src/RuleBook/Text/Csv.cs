using System.Globalization;

namespace RuleBook.Text;

/// <summary>Rows of comma-separated values (RFC 4180), safe to open in a spreadsheet: no cell is taken for a formula.</summary>
internal static class Csv
{
    /// <summary>The row with its line end.</summary>
    public static string Row(IEnumerable<string> cells) => string.Join(',', cells.Select(Cell)) + "\r\n";

    /// <summary>
    /// One cell; a text that a spreadsheet would run (it begins with <c>= + - @</c> and is no number) gets an apostrophe before it.
    /// </summary>
    public static string Cell(string text)
    {
        var seen = Visible.Of(text);
        if (
            seen.Length > 0
            && "=+-@".Contains(seen[0], StringComparison.Ordinal)
            && !decimal.TryParse(seen, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        )
            seen = "'" + seen;
        return seen.AsSpan().IndexOfAny(",\"") < 0 ? seen : $"\"{seen.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
