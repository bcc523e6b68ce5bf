using System.Buffers;
using System.Collections.Concurrent;
using System.Globalization;
using System.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Answers a fleet on all cores and writes it in the order of its rows, never more of it in memory than a few blocks.</summary>
/// <param name="reader">Has the rows.</param>
/// <param name="answers">Answers them.</param>
/// <param name="before">Answers them by an earlier book; null where none is asked.</param>
/// <param name="effect">Counts what differs; null where no earlier book is asked.</param>
internal sealed class FleetRun(FleetReader reader, FleetAnswers answers, FleetAnswers? before, FleetEffect? effect)
{
    private readonly FleetWriter writer = new(reader.Columns, before is not null);
    private readonly ConcurrentBag<PlainRows> plain = [];

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    /// <summary>The first rows that could not be read.</summary>
    public List<string> Problems { get; } = [];

    /// <summary>Whether it goes on with what another run has begun, whose headers are there.</summary>
    public bool GoesOn { get; init; }

    /// <summary>What is counted.</summary>
    public FleetSummary Summary { get; init; } = new();

    /// <summary>Told once a second which row is the last that is written; null where nobody notes it.</summary>
    public Action<long>? Note { get; init; }

    /// <summary>A clock, by which a second is one.</summary>
    public Func<TimeSpan> Running { get; init; } = () => TimeSpan.Zero;

    /// <summary>
    /// Writes every row that can be read to <paramref name="output"/>, and why the others cannot to <paramref name="rejected"/>.
    /// </summary>
    /// <param name="output">For answers, as UTF-8.</param>
    /// <param name="rejected">For rows that cannot be read; null where nobody keeps them.</param>
    /// <param name="progress">Told how far it is, once a second; null where nobody looks.</param>
    /// <param name="stop">Ends the run.</param>
    public void Run(
        Action<ReadOnlyMemory<byte>> output,
        Action<ReadOnlyMemory<byte>>? rejected,
        Action<string>? progress,
        CancellationToken stop
    )
    {
        var (start, told, earlier) = (Running(), TimeSpan.Zero, Summary.Rows);
        if (!GoesOn)
        {
            output(Encoding.UTF8.GetBytes(writer.Header));
            rejected?.Invoke(Encoding.UTF8.GetBytes(FleetWriter.RejectedHeader));
        }

        foreach (var answered in InOrder(reader.Blocks(), Answer, stop))
        {
            using var block = answered;
            stop.ThrowIfCancellationRequested();
            output(block.Written);
            Count(block, rejected);
            var now = Running() - start;
            if (now - told < Between)
                continue;
            told = now;
            Note?.Invoke(block.Last);
            progress?.Invoke(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Summary.Rows} rows, {(Summary.Rows - earlier) / told.TotalSeconds:F0} a second"
                )
            );
        }
    }

    /// <summary>What is made of each block, on all cores, in their order; never more than a few blocks ahead of what is written.</summary>
    private static IEnumerable<AnsweredBlock> InOrder(
        IEnumerable<FleetBlock> blocks,
        Func<FleetBlock, AnsweredBlock> make,
        CancellationToken stop
    )
    {
        var running = new Queue<Task<AnsweredBlock>>();
        foreach (var block in blocks)
        {
            running.Enqueue(Task.Run(() => make(block), stop));
            if (running.Count > 2 * Environment.ProcessorCount)
                yield return running.Dequeue().GetAwaiter().GetResult();
        }

        while (running.TryDequeue(out var next))
            yield return next.GetAwaiter().GetResult();
    }

    private AnsweredBlock Answer(FleetBlock block)
    {
        var into = new AnsweredBlock(block.First + block.Count - 1);
        if (block is PlainBlock lines && before is null)
        {
            var rows = plain.TryTake(out var idle) ? idle : new PlainRows(reader, answers, writer);
            rows.Answer(lines, into);
            plain.Add(rows);
        }
        else
        {
            foreach (var row in reader.Rows(block).OfType<FleetRow>())
                Answer(row, into);
        }

        if (block is PlainBlock { Bytes: var pooled })
            ArrayPool<byte>.Shared.Return(pooled);
        return into;
    }

    private void Answer(FleetRow row, AnsweredBlock into)
    {
        var (answer, wrong) = answers.Of(row);
        if (answer is null)
        {
            into.Refused.Add((row, wrong!));
            return;
        }

        var earlier = before?.Of(row).Answer;
        var (text, defused) = writer.Row(row, answer, earlier);
        into.Write(text);
        into.Defused += defused;
        into.Count(answer);
        into.Compared.Add((row.Number, earlier, answer));
    }

    private void Count(AnsweredBlock block, Action<ReadOnlyMemory<byte>>? rejected)
    {
        foreach (var (answer, times) in block.Counts)
            Summary.Add(answer, times);
        foreach (var (number, earlier, now) in block.Compared)
            effect?.Add(number, earlier, now);
        Summary.Defused += block.Defused;
        foreach (var (row, wrong) in block.Refused)
        {
            Summary.Reject();
            rejected?.Invoke(Encoding.UTF8.GetBytes(writer.Rejected(row, wrong)));
            if (Problems.Count < Surroundings.MostProblems)
                Problems.Add(wrong.ToString());
        }
    }
}
