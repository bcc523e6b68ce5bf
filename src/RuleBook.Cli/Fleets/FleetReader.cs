using System.Text;
using nietras.SeparatedValues;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Reads the rows of a fleet one after another, never more of the file than a row.</summary>
internal sealed class FleetReader : IDisposable
{
    private const int LongestHeader = 1 << 20;

    private readonly string file;
    private readonly TextReader text;
    private readonly SepReader? csv;
    private readonly int linesBefore;

    /// <param name="file">Name of the input, for places.</param>
    /// <param name="text">The input.</param>
    /// <param name="isJson">Whether each line is a job as JSON (NDJSON); otherwise the input is CSV.</param>
    public FleetReader(string file, TextReader text, bool isJson)
    {
        (this.file, this.text) = (file, text);
        if (isJson) return;
        var header = HeaderText();
        using (var first = Sep.Reader(Settings).FromText(header))
        {
            if (!Next(first, 0)) throw new InputException(Problem.Error("empty-file", new Mark(file, 1, 1), "the file has no header", "'fleet --template' writes one"));
            Columns = new FleetColumns(file, CellsOf(first.Current));
            Separator = first.Spec.Sep;
        }

        linesBefore = header.Count(letter => letter == '\n');
        csv = Sep.New(Separator.Separator).Reader(Settings).From(text);
    }

    /// <summary>The columns; null of NDJSON.</summary>
    public FleetColumns? Columns { get; }

    /// <summary>What parts the cells.</summary>
    public Sep Separator { get; }

    /// <summary>What is made of each row of a CSV file, in written order, on all cores.</summary>
    /// <exception cref="InputException">The file cannot be read further.</exception>
    public IEnumerable<T> Each<T>(SepReader.RowFunc<T> make)
    {
        using var each = csv!.ParallelEnumerate(make).GetEnumerator();
        for (var number = 1L; ; number++)
        {
            T made;
            try
            {
                if (!each.MoveNext()) yield break;
                made = each.Current;
            }
            catch (Exception broken) when (Cause(broken) is InvalidDataException or NotSupportedException or ArgumentException)
            {
                throw Broken(number, Cause(broken));
            }

            yield return made;
        }
    }

    /// <summary>A row as it is kept; a row of another width says so. Null where it is blank.</summary>
    public FleetRow? Row(SepReader.Row row)
    {
        var (line, count, cells, width) = (row.LineNumberFrom + linesBefore, row.ColCount, CellsOf(row), Columns!.Header.Length);
        if (count == 1 && cells[0].Length == 0 && width > 1) return null;
        return new FleetRow(row.RowIndex + 1L, line, cells, count == width ? null : Problem.Error(
            "wrong-shape", new Mark(file, line, Math.Min(count, width) + 1), $"the row has {count} cells, the header {width}", "quote a cell that holds the separator"));
    }

    /// <summary>The rows in written order.</summary>
    /// <exception cref="InputException">The file cannot be read further.</exception>
    public IEnumerable<FleetRow> Rows() => csv is null ? Lines() : CsvRows(csv);

    public void Dispose()
    {
        csv?.Dispose();
        text.Dispose();
    }

    private static SepReaderOptions Settings(SepReaderOptions options) => options with { HasHeader = false, Unescape = true, DisableColCountCheck = true };

    private static Exception Cause(Exception broken) => broken is AggregateException { InnerException: { } inner } ? inner : broken;

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

    private IEnumerable<FleetRow> CsvRows(SepReader reader)
    {
        for (var number = 1L; Next(reader, number); number++)
            if (Row(reader.Current) is { } row) yield return row;
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
        var (line, number) = (0, 0L);
        while (Line(line + 1) is { } written)
        {
            line++;
            if (!string.IsNullOrWhiteSpace(written)) yield return new FleetRow(++number, line, [written]);
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
