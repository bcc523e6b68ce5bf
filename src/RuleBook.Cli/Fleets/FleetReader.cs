using System.Text;
using nietras.SeparatedValues;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Reads the rows of a fleet one after another, never more of the file than a row.</summary>
internal sealed class FleetReader : IDisposable
{
    private readonly string file;
    private readonly TextReader text;
    private readonly SepReader? csv;

    /// <param name="file">Name of the input, for places.</param>
    /// <param name="text">The input.</param>
    /// <param name="isJson">Whether each line is a job as JSON (NDJSON); otherwise the input is CSV.</param>
    public FleetReader(string file, TextReader text, bool isJson)
    {
        (this.file, this.text) = (file, text);
        if (isJson) return;
        csv = Sep.Reader(options => options with { HasHeader = false, Unescape = true, DisableColCountCheck = true }).From(text);
        if (!Next(csv, 0)) throw new InputException(Problem.Error("empty-file", new Mark(file, 1, 1), "the file has no header", "'fleet --template' writes one"));
        Columns = new FleetColumns(file, CellsOf(csv.Current));
    }

    /// <summary>The columns; null of NDJSON.</summary>
    public FleetColumns? Columns { get; }

    /// <summary>The rows in written order.</summary>
    /// <exception cref="InputException">The file cannot be read further.</exception>
    public IEnumerable<FleetRow> Rows() => csv is null ? Lines() : CsvRows(csv, Columns!.Header.Length);

    public void Dispose()
    {
        csv?.Dispose();
        text.Dispose();
    }

    private IEnumerable<FleetRow> CsvRows(SepReader reader, int width)
    {
        for (var number = 1L; Next(reader, number); number++)
        {
            var row = reader.Current;
            var (line, count, cells) = (row.LineNumberFrom, row.ColCount, CellsOf(row));
            if (count == 1 && cells[0].Length == 0 && width > 1) continue;
            yield return new FleetRow(number, line, cells, count == width ? null : Problem.Error(
                "wrong-shape", new Mark(file, line, Math.Min(count, width) + 1), $"the row has {count} cells, the header {width}", "quote a cell that holds the separator"));
        }
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
            throw new InputException(Problem.Error("not-csv", new Mark(file, 1, 1), $"{(number == 0 ? "the header" : $"row {number}")} cannot be read: {broken.Message}", "look for a quote that is not closed"));
        }
    }

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
