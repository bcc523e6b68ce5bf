using System.Globalization;
using nietras.SeparatedValues;

namespace RuleBook.Benchmarks;

/// <summary>
/// The package RulesEngine over a fleet on all cores, for its time alone: every row by the sixteen lines of Queensland, lengths in whole
/// millimetres, and only the verdicts counted, not written.
/// </summary>
internal static class RulesOverRows
{
    private const int AtOnce = 10_000;

    public static void Judge(string file)
    {
        var engine = new ByRulesEngine();
        using var reader = Sep.Reader().FromFile(file);
        foreach (var jobs in Jobs(reader).Chunk(AtOnce))
            Parallel.ForEach(jobs, job => engine.JudgeAsync(job).AsTask().GetAwaiter().GetResult());
    }

    private static IEnumerable<Job> Jobs(SepReader reader)
    {
        while (reader.MoveNext())
        {
            var row = reader.Current;
            yield return new Job(
                row[3].ToString(),
                row[4].Span is "yes",
                3200,
                Millimetres(row[6].Span),
                Millimetres(row[7].Span),
                0,
                100,
                0
            );
        }
    }

    private static int Millimetres(ReadOnlySpan<char> cell) => (int)decimal.Parse(cell[..cell.IndexOf(' ')], CultureInfo.InvariantCulture);
}
