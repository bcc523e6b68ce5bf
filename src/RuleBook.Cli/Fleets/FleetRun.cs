using System.Diagnostics;
using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Answers a fleet in blocks: each block on all cores, written in the order of its rows before the next is read.</summary>
internal sealed class FleetRun(FleetReader reader, FleetAnswers answers, FleetWriter writer)
{
    private const int Block = 8192;

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
        foreach (var rows in reader.Rows().Chunk(Block))
        {
            var done = new Told[rows.Length];
            Parallel.For(0, rows.Length, new ParallelOptions { CancellationToken = stop }, at => done[at] = One(rows[at]));
            for (var at = 0; at < rows.Length; at++) Write(done[at], rows[at], output, rejected, summary);
            if (progress is null || watch.Elapsed - told < Between) continue;
            told = watch.Elapsed;
            progress(string.Create(CultureInfo.InvariantCulture, $"{summary.Rows} rows, {summary.Rows / told.TotalSeconds:F0} a second"));
        }

        return summary;
    }

    private Told One(FleetRow row)
    {
        var (answer, wrong) = answers.Of(row);
        return answer is null ? new Told(null, wrong, "", 0) : writer.Row(row, answer) is var (text, defused) ? new Told(answer, null, text, defused) : default;
    }

    private void Write(Told told, FleetRow row, TextWriter output, TextWriter? rejected, FleetSummary summary)
    {
        if (told.Answer is { } answer)
        {
            output.Write(told.Text);
            summary.Add(answer);
            summary.Defused += told.Defused;
            return;
        }

        summary.Reject();
        rejected?.Write(writer.Rejected(row, told.Wrong!));
        if (Problems.Count < Surroundings.MostProblems) Problems.Add(told.Wrong!);
    }

    private readonly record struct Told(Answered? Answer, Problem? Wrong, string Text, int Defused);
}
