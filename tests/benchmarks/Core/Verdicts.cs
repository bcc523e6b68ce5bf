using BenchmarkDotNet.Attributes;
using RuleBook.Tables;

namespace RuleBook.Benchmarks;

/// <summary>The same jobs put to each; a figure is that of one job.</summary>
[MemoryDiagnoser]
public class Verdicts
{
    internal const int Count = 4096;

    private readonly Job[] jobs = Job.Some(Count);
    private readonly ByTable table = new(Program.Book);
    private readonly ByRulesEngine rulesEngine = new();
    private readonly ByNRules rules = new();
    private readonly byte[] outcomes = new byte[Count];
    private readonly Row[] rows;
    private readonly Batch batch;

    public Verdicts()
    {
        rows = [.. jobs.Select(table.Placed)];
        batch = new Batch(table.Table, Count);
        table.Place(batch, jobs);
    }

    [Benchmark(Baseline = true, Description = "written by hand in C#", OperationsPerInvoke = Count)]
    public int ByHand()
    {
        var sum = 0;
        foreach (var job in jobs)
            sum += (int)HandWritten.Judge(job).Worst;
        return sum;
    }

    [Benchmark(Description = "table, placed and judged one by one", OperationsPerInvoke = Count)]
    public int Placed()
    {
        var sum = 0;
        foreach (var job in jobs)
            sum += (int)table.Judge(job).Worst;
        return sum;
    }

    [Benchmark(Description = "table, judged one by one", OperationsPerInvoke = Count)]
    public int Judged()
    {
        var sum = 0;
        foreach (var row in rows)
            sum += (int)table.Table.Judge(row).Worst;
        return sum;
    }

    [Benchmark(Description = "table, placed and judged by columns", OperationsPerInvoke = Count)]
    public void PlacedByColumns()
    {
        table.Place(batch, jobs);
        table.Table.Judge(batch, outcomes);
    }

    [Benchmark(Description = "table, judged by columns", OperationsPerInvoke = Count)]
    public void JudgedByColumns() => table.Table.Judge(batch, outcomes);

    [Benchmark(Description = "RulesEngine", OperationsPerInvoke = Count)]
    public async Task<int> ByRulesEngine()
    {
        var sum = 0;
        foreach (var job in jobs)
            sum += (int)(await rulesEngine.JudgeAsync(job)).Worst;
        return sum;
    }

    [Benchmark(Description = "NRules", OperationsPerInvoke = Count)]
    public int ByNRules()
    {
        var sum = 0;
        foreach (var job in jobs)
            sum += (int)rules.Judge(job).Worst;
        return sum;
    }

    /// <summary>The first job on which one of them gives another verdict than the code written by hand; null where all agree.</summary>
    internal async Task<string?> Difference()
    {
        table.Table.Judge(batch, outcomes);
        for (var at = 0; at < Count; at++)
        {
            var (job, byHand) = (jobs[at], HandWritten.Judge(jobs[at]));
            var all = new[] { table.Judge(job), Outcome.Unpack(outcomes[at]), await rulesEngine.JudgeAsync(job), rules.Judge(job) };
            if (all.Any(each => each != byHand))
                return $"{job}: by hand {byHand}; table, columns, RulesEngine, NRules: {string.Join("; ", all)}";
        }

        return null;
    }
}
