using System.Globalization;
using System.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// The rows of a CSV file, with every line that cannot be one replaced by a cell that says so: a quote that is never closed would take the
/// lines behind it along. A row may go over several lines only where they are as wide as the header together; otherwise its first line is
/// bad and the next begins a row.
/// </summary>
/// <param name="text">What follows the header.</param>
/// <param name="separator">What parts cells.</param>
/// <param name="width">How many cells the header has.</param>
internal sealed class ClosedQuotes(ByteLines text, char separator, int width)
{
    private const char Sign = '\u0001';
    private const int MostLines = 100;

    private readonly Stack<string> again = new();

    /// <summary>Why a line could not be a row, and the number of the cell; null of a row that this class did not replace.</summary>
    public static (string Text, string Tip, int Column)? WhatIsWrong(string cell) =>
        cell switch
        {
            [Sign, 'q', .. var column] when int.TryParse(column, CultureInfo.InvariantCulture, out var number) => (
                "a quote in the row is not closed",
                "close it; a quote inside of a quoted cell is written twice",
                number
            ),
            [Sign, 'l', .. var column] when int.TryParse(column, CultureInfo.InvariantCulture, out var number) => (
                $"the row has more than {ByteLines.LongestRow} characters",
                "look for a line end that is missing",
                number
            ),
            [Sign, 'u', .. var column] when int.TryParse(column, CultureInfo.InvariantCulture, out var number) => (
                "the row is not UTF-8",
                "save the file as UTF-8",
                number
            ),
            _ => null,
        };

    /// <summary>What stands for a line that is too long.</summary>
    public const string TooLong = "\u0001l1";

    /// <summary>Whether lines that were looked at are still to be given.</summary>
    public bool Owes => again.Count > 0;

    /// <summary>What stands for a line that is not UTF-8, from a cell on.</summary>
    public static string NotUtf8(int cell) => string.Create(CultureInfo.InvariantCulture, $"{Sign}u{cell}");

    /// <summary>The next row without its end; null where there is none.</summary>
    public string? Next()
    {
        if (Line() is not { } first)
            return null;
        if (first.Length > ByteLines.LongestRow)
            return TooLong;
        if (!first.Contains('"') || IsClosed(first))
            return first;
        var (taken, whole, open) = (new List<string>(), new StringBuilder(first), true);
        while (open && taken.Count < MostLines && whole.Length <= ByteLines.LongestRow && Line() is { } next)
        {
            taken.Add(next);
            if (next is [Sign, ..])
                break;
            whole.Append('\n').Append(next);
            open ^= !IsClosed(next);
        }

        if (!open && whole.Length <= ByteLines.LongestRow && whole.ToString() is var joined && Cells(joined) == width)
            return joined;
        for (var i = taken.Count - 1; i >= 0; i--)
            again.Push(taken[i]);
        return $"{Sign}q{string.Create(CultureInfo.InvariantCulture, $"{Cells(first)}")}";
    }

    private string? Line()
    {
        if (again.TryPop(out var back))
            return back;
        return text.Line() switch
        {
            null => null,
            (var line, null) => line,
            (var line, { } broken) => NotUtf8(Cells(line[..broken])),
        };
    }

    private static bool IsClosed(string line) => (line.AsSpan().Count('"') & 1) == 0;

    /// <summary>How many cells there are, up to the end or to where a quote is open.</summary>
    private int Cells(string line)
    {
        var (count, quoted) = (1, false);
        foreach (var letter in line)
        {
            quoted ^= letter == '"';
            if (letter == separator && !quoted)
                count++;
        }

        return count;
    }
}
