using System.Globalization;
using System.Text;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// The rows of a CSV file, with every line that cannot be one replaced by a cell that says so: a quote that is never closed would take the lines behind it
/// along. A row may go over several lines only where they are as wide as the header together; otherwise its first line is bad and the next begins a row.
/// </summary>
/// <param name="file">Name of the input, for places.</param>
/// <param name="text">What follows the header.</param>
/// <param name="separator">What parts cells.</param>
/// <param name="width">How many cells the header has.</param>
/// <param name="linesBefore">How many lines the header takes.</param>
internal sealed class ClosedQuotes(string file, TextReader text, char separator, int width, int linesBefore)
{
    private const char Sign = '\u0001';
    private const int MostLines = 100;
    private const int LongestRow = 1 << 20;

    private readonly Stack<string> again = new();
    private int read = linesBefore;

    /// <summary>Why a line could not be a row, and the number of the cell; null of a row that this class did not replace.</summary>
    public static (string Text, string Tip, int Column)? WhatIsWrong(string cell) => cell switch
    {
        [Sign, 'q', .. var column] when int.TryParse(column, CultureInfo.InvariantCulture, out var number) =>
            ("a quote in the row is not closed", "close it; a quote inside of a quoted cell is written twice", number),
        [Sign, 'l', .. var column] when int.TryParse(column, CultureInfo.InvariantCulture, out var number) =>
            ($"the row has more than {LongestRow} characters", "look for a line end that is missing", number),
        _ => null,
    };

    /// <summary>How many lines the header and the rows given so far take.</summary>
    public int Lines { get; private set; } = linesBefore;

    /// <summary>The next row without its end; null where there is none.</summary>
    /// <exception cref="InputException">The file is not UTF-8.</exception>
    public string? Next()
    {
        var next = Row();
        if (next is not null) Lines += 1 + next.AsSpan().Count('\n');
        return next;
    }

    private string? Row()
    {
        if (Line() is not { } first) return null;
        if (first.Length > LongestRow) return $"{Sign}l1";
        if (!first.Contains('"') || IsClosed(first)) return first;
        var (taken, whole, open) = (new List<string>(), new StringBuilder(first), true);
        while (open && taken.Count < MostLines && whole.Length <= LongestRow && Line() is { } next)
        {
            taken.Add(next);
            whole.Append('\n').Append(next);
            open ^= !IsClosed(next);
        }

        if (!open && whole.Length <= LongestRow && whole.ToString() is var joined && Cells(joined) == width) return joined;
        for (var i = taken.Count - 1; i >= 0; i--) again.Push(taken[i]);
        return $"{Sign}q{string.Create(CultureInfo.InvariantCulture, $"{Cells(first)}")}";
    }

    private string? Line()
    {
        if (again.TryPop(out var back)) return back;
        try
        {
            read++;
            return text.ReadLine();
        }
        catch (DecoderFallbackException)
        {
            throw new InputException(Problem.Error("not-utf-8", new Mark(file, read, 1), "the file is not UTF-8 from about here on", "save it as UTF-8"));
        }
    }

    private static bool IsClosed(string line) => (line.AsSpan().Count('"') & 1) == 0;

    /// <summary>How many cells there are, up to the end or to where a quote is open.</summary>
    private int Cells(string line)
    {
        var (count, quoted) = (1, false);
        foreach (var letter in line)
        {
            quoted ^= letter == '"';
            if (letter == separator && !quoted) count++;
        }

        return count;
    }
}
