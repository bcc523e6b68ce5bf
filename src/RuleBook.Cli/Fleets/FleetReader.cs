using System.Text;
using nietras.SeparatedValues;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Reads the rows of a fleet one after another, never more of the file than a row.</summary>
internal sealed class FleetReader : IDisposable
{
    private const int LongestHeader = 1 << 20;
    private const int RowsABlock = 1024;
    private const int LargestBlock = 1 << 20;

    private readonly string file;
    private readonly TextReader text;
    private readonly ClosedQuotes? csv;
    private readonly long after;

    /// <param name="file">Name of the input, for places.</param>
    /// <param name="text">The input.</param>
    /// <param name="isJson">Whether each line is a job as JSON (NDJSON); otherwise the input is CSV.</param>
    /// <param name="after">So many rows are passed over.</param>
    public FleetReader(string file, TextReader text, bool isJson, long after = 0)
    {
        (this.file, this.text, this.after) = (file, text, after);
        if (isJson) return;
        var header = HeaderText();
        using (var first = Sep.Reader(Settings).FromText(header))
        {
            if (!Next(first, 0)) throw new InputException(Problem.Error("empty-file", new Mark(file, 1, 1), "the file has no header", "'fleet --template' writes one"));
            Columns = new FleetColumns(file, CellsOf(first.Current));
            Separator = first.Spec.Sep;
        }

        csv = new ClosedQuotes(file, text, Separator.Separator, Columns.Header.Length, header.Count(letter => letter == '\n'));
        for (var passed = 0L; passed < after && csv.Next() is not null; passed++) { }
    }

    /// <summary>The columns; null of NDJSON.</summary>
    public FleetColumns? Columns { get; }

    /// <summary>What parts the cells.</summary>
    public Sep Separator { get; }

    /// <summary>The rows of a CSV file in blocks, in written order.</summary>
    /// <exception cref="InputException">The file cannot be read further.</exception>
    public IEnumerable<FleetBlock> Blocks()
    {
        var number = after + 1;
        while (true)
        {
            var (block, lines) = (new StringBuilder(), new List<int>(RowsABlock));
            while (lines.Count < RowsABlock && block.Length < LargestBlock && csv!.Lines + 1 is var line && csv.Next() is { } row)
            {
                block.Append(row).Append('\n');
                lines.Add(line);
            }

            if (lines.Count == 0) yield break;
            yield return new FleetBlock(block.ToString(), number, lines);
            number += lines.Count;
        }
    }

    /// <summary>What is made of each row of a block; several blocks may be read at once.</summary>
    /// <exception cref="InputException">A row cannot be read.</exception>
    public List<T> Each<T>(FleetBlock block, Func<SepReader.Row, long, int, T> make)
    {
        var made = new List<T>(RowsABlock);
        try
        {
            using var rows = Sep.New(Separator.Separator).Reader(Settings).FromText(block.Text);
            while (rows.MoveNext()) made.Add(make(rows.Current, block.First + made.Count, block.Lines[made.Count]));
            return made;
        }
        catch (Exception broken) when (broken is InvalidDataException or NotSupportedException or ArgumentException)
        {
            throw Broken(block.First + made.Count, broken);
        }
    }

    /// <summary>A row as it is kept; a row of another width says so. Null where it is blank.</summary>
    public FleetRow? Row(SepReader.Row row, long number, int line)
    {
        var (count, cells, width) = (row.ColCount, CellsOf(row), Columns!.Header.Length);
        if (count == 1 && cells[0].Length == 0 && width > 1) return null;
        if (count == 1 && ClosedQuotes.WhatIsWrong(cells[0]) is var (what, tip, column))
            return new FleetRow(number, line, cells, Problem.Error("not-csv", new Mark(file, line, Math.Min(column, width)), what, tip));
        return new FleetRow(number, line, cells, count == width ? null : Problem.Error(
            "wrong-shape", new Mark(file, line, Math.Min(count, width) + 1), $"the row has {count} cells, the header {width}", "quote a cell that holds the separator"));
    }

    /// <summary>The rows in written order.</summary>
    /// <exception cref="InputException">The file cannot be read further.</exception>
    public IEnumerable<FleetRow> Rows() => csv is null ? Lines() : Blocks().SelectMany(block => Each(block, Row)).OfType<FleetRow>();

    public void Dispose()
    {
        text.Dispose();
    }

    private static SepReaderOptions Settings(SepReaderOptions options) => options with { HasHeader = false, Unescape = true, DisableColCountCheck = true };

    /// <summary>The first row as it is written, with its end.</summary>
    private string HeaderText()
    {
        var (header, quoted) = (new StringBuilder(), false);
        while (text.Read() is >= 0 and var letter && header.Length < LongestHeader)
        {
            header.Append((char)letter);
            quoted ^= letter == '"';
            if (letter == '\n' && !quoted) break;
        }

        return header.ToString();
    }

    private static string[] CellsOf(SepReader.Row row)
    {
        var cells = new string[row.ColCount];
        for (var at = 0; at < cells.Length; at++) cells[at] = row[at].ToString();
        return cells;
    }

    private bool Next(SepReader reader, long number)
    {
        try
        {
            return reader.MoveNext();
        }
        catch (Exception broken) when (broken is InvalidDataException or NotSupportedException or ArgumentException)
        {
            throw Broken(number, broken);
        }
    }

    private InputException Broken(long number, Exception broken) => new(Problem.Error(
        "not-csv", new Mark(file, 1, 1), $"{(number == 0 ? "the header" : $"row {number}")} cannot be read: {broken.Message}", "look for a quote that is not closed"));

    private IEnumerable<FleetRow> Lines()
    {
        var (line, number) = (0, 0L); // a row that is passed over is read all the same
        while (Line(line + 1) is { } written)
        {
            line++;
            if (!string.IsNullOrWhiteSpace(written) && ++number > after) yield return new FleetRow(number, line, [written]);
        }
    }

    private string? Line(int number)
    {
        try
        {
            return text.ReadLine();
        }
        catch (DecoderFallbackException)
        {
            throw new InputException(Problem.Error("not-utf-8", new Mark(file, number, 1), "the file is not UTF-8 from about here on", "save it as UTF-8"));
        }
    }
}
