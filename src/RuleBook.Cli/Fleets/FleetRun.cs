using System.Diagnostics;
using System.Globalization;
using nietras.SeparatedValues;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Answers a fleet on all cores and writes it in the order of its rows, never more of it in memory than a few blocks.</summary>
/// <param name="reader">Has the rows.</param>
/// <param name="answers">Answers them.</param>
/// <param name="before">Answers them by an earlier book; null where none is asked.</param>
/// <param name="effect">Counts what differs; null where no earlier book is asked.</param>
internal sealed class FleetRun(FleetReader reader, FleetAnswers answers, FleetAnswers? before, FleetEffect? effect)
{
    private const int Block = 8192;
    private const int LongestPlain = 1024;

    private readonly FleetWriter writer = new(reader.Columns, before is not null);

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    /// <summary>The first rows that could not be read.</summary>
    public List<Problem> Problems { get; } = [];

    /// <summary>Writes every row that can be read to <paramref name="output"/>, and why the others cannot to <paramref name="rejected"/>.</summary>
    /// <param name="output">For answers.</param>
    /// <param name="rejected">For rows that cannot be read; null where nobody keeps them.</param>
    /// <param name="progress">Told how far it is, once a second; null where nobody looks.</param>
    /// <param name="stop">Ends the run.</param>
    public FleetSummary Run(TextWriter output, TextWriter? rejected, Action<string>? progress, CancellationToken stop)
    {
        var summary = new FleetSummary();
        var (watch, told) = (Stopwatch.StartNew(), TimeSpan.Zero);
        output.Write(writer.Header);
        rejected?.Write(FleetWriter.RejectedHeader);
        foreach (var each in reader.Columns is null ? Lines(stop) : reader.Each(One))
        {
            if (each is not { } one) continue;
            Write(one, output, rejected, summary);
            if (summary.Rows % Block != 0) continue;
            stop.ThrowIfCancellationRequested();
            if (progress is null || watch.Elapsed - told < Between) continue;
            told = watch.Elapsed;
            progress(string.Create(CultureInfo.InvariantCulture, $"{summary.Rows} rows, {summary.Rows / told.TotalSeconds:F0} a second"));
        }

        return summary;
    }

    private IEnumerable<Told?> Lines(CancellationToken stop)
    {
        foreach (var rows in reader.Rows().Chunk(Block))
        {
            var done = new Told[rows.Length];
            Parallel.For(0, rows.Length, new ParallelOptions { CancellationToken = stop }, at => done[at] = One(rows[at]));
            foreach (var one in done) yield return one;
        }
    }

    /// <summary>A row of CSV, null where it is blank. One that states what a row before it stated, and is plain, costs a look and a copy.</summary>
    private Told? One(SepReader.Row row)
    {
        if (row.ColCount == reader.Columns!.Header.Length && row.Span.Length <= LongestPlain)
        {
            Span<char> stated = stackalloc char[LongestPlain + reader.Columns.Asked.Length];
            var length = 0;
            foreach (var at in reader.Columns.Asked)
            {
                var cell = row[at].Span;
                cell.CopyTo(stated[length..]);
                stated[length + cell.Length] = '\0';
                length += cell.Length + 1;
            }

            var earlier = before?.Known(stated[..length]);
            if (answers.Known(stated[..length]) is { } known && (before is null || earlier is not null)
                && reader.Separator.Separator == ',' && writer.Plain(row, known, earlier) is { } plain)
                return new Told(row.RowIndex + 1L, null, known, earlier, null, plain, known.Defused);
        }

        return reader.Row(row) is { } read ? One(read) : null;
    }

    private Told One(FleetRow row)
    {
        var (answer, wrong) = answers.Of(row);
        if (answer is null) return new Told(row.Number, row, null, null, wrong, "", 0);
        var earlier = before?.Of(row).Answer;
        var (text, defused) = writer.Row(row, answer, earlier);
        return new Told(row.Number, null, answer, earlier, null, text, defused);
    }

    private void Write(Told told, TextWriter output, TextWriter? rejected, FleetSummary summary)
    {
        if (told.Answer is { } answer)
        {
            output.Write(told.Text);
            summary.Add(answer);
            effect?.Add(told.Number, told.Before, answer);
            summary.Defused += told.Defused;
            return;
        }

        summary.Reject();
        rejected?.Write(writer.Rejected(told.Row!, told.Wrong!));
        if (Problems.Count < Surroundings.MostProblems) Problems.Add(told.Wrong!);
    }

    /// <summary>What became of a row: its answers and text, or the row and why it could not be read.</summary>
    private readonly record struct Told(long Number, FleetRow? Row, Answered? Answer, Answered? Before, Problem? Wrong, string Text, int Defused);
}
