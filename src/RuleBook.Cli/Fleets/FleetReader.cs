using System.Text;
using nietras.SeparatedValues;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Reads the rows of a fleet in blocks, never more of the file than a block or the longest row.</summary>
internal sealed class FleetReader : IDisposable
{
    private const int RowsABlock = 1024;
    private const int LargestBlock = 1 << 20;

    private readonly string file;
    private readonly Stream stream;
    private readonly ByteLines text;
    private readonly ClosedQuotes? csv;
    private readonly long after;
    private int line; // so many are read

    /// <param name="file">Name of the input, for places.</param>
    /// <param name="stream">The input.</param>
    /// <param name="isJson">Whether each line is a job as JSON (NDJSON); otherwise the input is CSV.</param>
    /// <param name="after">So many rows are passed over.</param>
    public FleetReader(string file, Stream stream, bool isJson, long after = 0)
    {
        (this.file, this.stream, this.after, text) = (file, stream, after, new ByteLines(stream));
        if (isJson)
            return;
        var header = HeaderText();
        Sep? told = header is ['s' or 'S', 'e' or 'E', 'p' or 'P', '=', var sign, '\n'] ? Parting(sign) : null; // as spreadsheets write it
        using (var first = (told?.Reader(Settings) ?? Sep.Reader(Settings)).FromText(told is null ? header : HeaderText()))
        {
            if (!first.MoveNext())
                throw new InputException(
                    Problem.Error(
                        "empty-file",
                        new Mark(file, Math.Max(line, 1), 1),
                        "the file has no header",
                        "'fleet --template' writes one"
                    )
                );
            Columns = new FleetColumns(file, CellsOf(first.Current), told is null ? 1 : 2);
            Separator = first.Spec.Sep;
        }

        csv = new ClosedQuotes(text, Separator.Separator, Columns.Header.Length);
    }

    /// <summary>The columns; null of NDJSON.</summary>
    public FleetColumns? Columns { get; }

    /// <summary>What parts the cells.</summary>
    public Sep Separator { get; }

    /// <summary>The rows in blocks, in written order.</summary>
    public IEnumerable<FleetBlock> Blocks() =>
        csv is null
            ? Lines().Chunk(RowsABlock).Select(rows => new JsonBlock(rows))
            : CsvBlocks().Select(block => Behind(block, after)).OfType<FleetBlock>();

    /// <summary>The rows in written order, without blank ones.</summary>
    public IEnumerable<FleetRow> Rows() => Blocks().SelectMany(Rows).OfType<FleetRow>();

    /// <summary>The rows of a block; several blocks may be read at once. Null of a blank row.</summary>
    public IEnumerable<FleetRow?> Rows(FleetBlock block) =>
        block switch
        {
            JsonBlock json => (IEnumerable<FleetRow?>)json.Rows,
            QuotedBlock quoted => Rows(quoted),
            PlainBlock plain => Rows(plain),
            _ => throw new ArgumentException("no such block", nameof(block)),
        };

    /// <summary>A row without quotes as it is kept; null where it is blank.</summary>
    public FleetRow? Row(ReadOnlySpan<byte> row, long number, int on)
    {
        var (written, broken) = ByteLines.Text(row);
        if (broken is { } at)
            written = ClosedQuotes.NotUtf8(1 + written.AsSpan(0, at).Count(Separator.Separator));
        else if (written.Length > ByteLines.LongestRow)
            written = ClosedQuotes.TooLong;
        return Row(written.Split(Separator.Separator), number, on);
    }

    public void Dispose() => stream.Dispose();

    private static SepReaderOptions Settings(SepReaderOptions options) =>
        options with
        {
            HasHeader = false,
            Unescape = true,
            DisableColCountCheck = true,
        };

    private IEnumerable<FleetBlock> CsvBlocks()
    {
        var number = 1L;
        while (true)
        {
            FleetBlock block = csv!.Owes || text.Plain() is not { } plain ? Quoted(number) : Plain(plain, number);
            if (block.Count == 0)
                yield break;
            yield return block;
            number += block.Count;
        }
    }

    private PlainBlock Plain((byte[] Pooled, int Length) plain, long number)
    {
        var bytes = plain.Pooled.AsSpan(0, plain.Length);
        var block = new PlainBlock(plain.Pooled, plain.Length, number, bytes.Count((byte)'\n') + (bytes[^1] == '\n' ? 0 : 1), line + 1);
        line += block.Count;
        return block;
    }

    private QuotedBlock Quoted(long number)
    {
        var (block, lines) = (new StringBuilder(), new List<int>(RowsABlock));
        while (lines.Count < RowsABlock && block.Length < LargestBlock && csv!.Next() is { } row)
        {
            block.Append(row).Append('\n');
            lines.Add(line + 1);
            line += 1 + row.AsSpan().Count('\n');
        }

        return new QuotedBlock(block.ToString(), number, lines);
    }

    /// <summary>What of a block comes behind so many rows; null where nothing does.</summary>
    private static FleetBlock? Behind(FleetBlock block, long rows)
    {
        if (block.First > rows)
            return block;
        if (block.First + block.Count - 1 <= rows)
            return null;
        var passed = (int)(rows - block.First + 1);
        if (block is PlainBlock plain)
        {
            var from = 0;
            for (var at = 0; at < passed; at++)
                from += plain.Bytes.AsSpan(from, plain.Length - from).IndexOf((byte)'\n') + 1;
            plain.Bytes.AsSpan(from, plain.Length - from).CopyTo(plain.Bytes);
            return plain with { Length = plain.Length - from, First = rows + 1, Count = plain.Count - passed, Line = plain.Line + passed };
        }

        var quoted = (QuotedBlock)block;
        var start = 0;
        for (var at = 0; at < passed; at++)
        for (var lines = quoted.Lines[at + 1] - quoted.Lines[at]; lines > 0; lines--)
            start = quoted.Text.IndexOf('\n', start) + 1;
        return quoted with
        {
            Text = quoted.Text[start..],
            First = rows + 1,
            Lines = [.. quoted.Lines.Skip(passed)],
            Count = quoted.Count - passed,
        };
    }

    private List<FleetRow?> Rows(PlainBlock block)
    {
        var rows = new List<FleetRow?>(block.Count);
        var left = block.Bytes.AsSpan(0, block.Length);
        while (!left.IsEmpty)
            rows.Add(Row(NextLine(ref left), block.First + rows.Count, block.Line + rows.Count));
        return rows;
    }

    /// <summary>Takes the first line off, without its end.</summary>
    public static ReadOnlySpan<byte> NextLine(ref Span<byte> left)
    {
        var at = left.IndexOf((byte)'\n');
        var taken = at < 0 ? left : left[..at];
        left = at < 0 ? default : left[(at + 1)..];
        return taken is [.., (byte)'\r'] ? taken[..^1] : taken;
    }

    private List<FleetRow?> Rows(QuotedBlock block)
    {
        var made = new List<FleetRow?>(block.Count);
        using var rows = Separator.Reader(Settings).FromText(block.Text);
        while (rows.MoveNext())
            made.Add(Row(CellsOf(rows.Current), block.First + made.Count, block.Lines[made.Count]));
        return made;
    }

    /// <summary>A row as it is kept; a row of another width says so. Null where it is blank.</summary>
    private FleetRow? Row(string[] cells, long number, int on)
    {
        var (count, width) = (cells.Length, Columns!.Header.Length);
        if (width > 1 && Array.TrueForAll(cells, string.IsNullOrWhiteSpace))
            return null;
        if (count == 1 && ClosedQuotes.WhatIsWrong(cells[0]) is var (what, tip, column))
            return new FleetRow(number, on, cells, Problem.Error("not-csv", new Mark(file, on, Math.Min(column, width)), what, tip));
        return new FleetRow(
            number,
            on,
            cells,
            count == width
                ? null
                : Problem.Error(
                    "wrong-shape",
                    new Mark(file, on, Math.Min(count, width) + 1),
                    $"the row has {count} cells, the header {width}",
                    "quote a cell that holds the separator"
                )
        );
    }

    /// <summary>The first row as it is written; a header may go over several lines.</summary>
    private string HeaderText()
    {
        var header = new StringBuilder();
        do
        {
            if (text.Line() is not var (written, broken))
                break;
            line++;
            if (broken is { } at)
                throw new InputException(
                    Problem.Error("not-utf-8", new Mark(file, line, at + 1), "the header is not UTF-8", "save the file as UTF-8")
                );
            header.Append(written).Append('\n');
        } while (header.Length < ByteLines.LongestRow && (Quotes(header) & 1) != 0);
        return header.ToString();
    }

    private static int Quotes(StringBuilder text)
    {
        var count = 0;
        foreach (var part in text.GetChunks())
            count += part.Span.Count('"');
        return count;
    }

    private static string[] CellsOf(SepReader.Row row)
    {
        var cells = new string[row.ColCount];
        for (var at = 0; at < cells.Length; at++)
            cells[at] = row[at].ToString();
        return cells;
    }

    private Sep Parting(char sign)
    {
        try
        {
            return new Sep(sign);
        }
        catch (ArgumentException)
        {
            throw new InputException(
                Problem.Error(
                    "not-csv",
                    new Mark(file, 1, 5),
                    $"'{sign}' cannot part the cells",
                    "part them by a comma, a semicolon, a bar or a tab"
                )
            );
        }
    }

    private IEnumerable<FleetRow> Lines()
    {
        var number = 0L; // a row that is passed over is read all the same
        while (text.Line() is var (written, broken))
        {
            line++;
            if (string.IsNullOrWhiteSpace(written) || ++number <= after)
                continue;
            var wrong =
                broken is { } at
                    ? Problem.Error("not-utf-8", new Mark(file, line, at + 1), "the line is not UTF-8", "save the file as UTF-8")
                : written.Length > ByteLines.LongestRow
                    ? Problem.Error(
                        "not-json",
                        new Mark(file, line, 1),
                        $"the line has more than {ByteLines.LongestRow} characters",
                        "a line is one job"
                    )
                : null;
            yield return new FleetRow(number, line, [written], wrong);
        }
    }
}
