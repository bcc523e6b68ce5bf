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
    private const int FewRows = 64;
    private const int LongestPlain = 1024;

    private readonly FleetWriter writer = new(reader.Columns, before is not null);

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    /// <summary>The first rows that could not be read.</summary>
    public List<string> Problems { get; } = [];

    /// <summary>Whether it goes on with what another run has begun, whose headers are there.</summary>
    public bool GoesOn { get; init; }

    /// <summary>What is counted.</summary>
    public FleetSummary Summary { get; init; } = new();

    /// <summary>Told every few seconds which row is the last that is written; null where nobody notes it.</summary>
    public Action<long>? Note { get; init; }

    /// <summary>Writes every row that can be read to <paramref name="output"/>, and why the others cannot to <paramref name="rejected"/>.</summary>
    /// <param name="output">For answers.</param>
    /// <param name="rejected">For rows that cannot be read; null where nobody keeps them.</param>
    /// <param name="progress">Told how far it is, once a second; null where nobody looks.</param>
    /// <param name="stop">Ends the run.</param>
    public void Run(TextWriter output, TextWriter? rejected, Action<string>? progress, CancellationToken stop)
    {
        var (watch, told, earlier) = (Stopwatch.StartNew(), TimeSpan.Zero, Summary.Rows);
        if (!GoesOn)
        {
            output.Write(writer.Header);
            rejected?.Write(FleetWriter.RejectedHeader);
        }

        foreach (var (number, each) in reader.Columns is null ? InOrder(reader.Rows().Chunk(Block / 8), Lines, stop) : InOrder(reader.Blocks(), block => reader.Each(block, One), stop))
        {
            if (each is not { } one) continue;
            Write(number, one, output, rejected);
            if (Summary.Rows % Block != 0 && (Summary.Rows % FewRows != 0 || watch.Elapsed - told < Between)) continue;
            stop.ThrowIfCancellationRequested();
            if (watch.Elapsed - told < Between) continue;
            told = watch.Elapsed;
            Note?.Invoke(number);
            progress?.Invoke(string.Create(CultureInfo.InvariantCulture, $"{Summary.Rows} rows, {(Summary.Rows - earlier) / told.TotalSeconds:F0} a second"));
        }
    }

    /// <summary>What is made of each block, on all cores, in their order; never more than a few blocks ahead of what is written.</summary>
    private static IEnumerable<(long Number, Told? Told)> InOrder<T>(IEnumerable<T> blocks, Func<T, List<(long, Told?)>> make, CancellationToken stop)
    {
        var running = new Queue<Task<List<(long, Told?)>>>();
        foreach (var block in blocks)
        {
            running.Enqueue(Task.Run(() => make(block), stop));
            if (running.Count <= 2 * Environment.ProcessorCount) continue;
            foreach (var one in running.Dequeue().GetAwaiter().GetResult()) yield return one;
        }

        while (running.TryDequeue(out var next))
            foreach (var one in next.GetAwaiter().GetResult()) yield return one;
    }

    private List<(long Number, Told? Told)> Lines(FleetRow[] rows) => [.. rows.Select(row => (row.Number, (Told?)One(row)))];

    /// <summary>A row of CSV, null where it is blank. One that states what a row before it stated, and is plain, costs a look and a copy.</summary>
    private (long Number, Told? Told) One(SepReader.Row row, long number, int line)
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
                return (number, new Told(null, known, earlier, null, plain, known.Defused));
        }

        return (number, reader.Row(row, number, line) is { } read ? One(read) : null);
    }

    private Told One(FleetRow row)
    {
        var (answer, wrong) = answers.Of(row);
        if (answer is null) return new Told(row, null, null, wrong, "", 0);
        var earlier = before?.Of(row).Answer;
        var (text, defused) = writer.Row(row, answer, earlier);
        return new Told(null, answer, earlier, null, text, defused);
    }

    private void Write(long number, Told told, TextWriter output, TextWriter? rejected)
    {
        if (told.Answer is { } answer)
        {
            output.Write(told.Text);
            Summary.Add(answer);
            effect?.Add(number, told.Before, answer);
            Summary.Defused += told.Defused;
            return;
        }

        Summary.Reject();
        rejected?.Write(writer.Rejected(told.Row!, told.Wrong!));
        if (Problems.Count < Surroundings.MostProblems) Problems.Add(told.Wrong!.ToString());
    }

    /// <summary>What became of a row: its answers and text, or the row and why it could not be read.</summary>
    private readonly record struct Told(FleetRow? Row, Answered? Answer, Answered? Before, Problem? Wrong, string Text, int Defused);
}
