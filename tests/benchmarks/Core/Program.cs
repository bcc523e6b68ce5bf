// What a verdict costs, beside the same limits written by hand and in two general rule engines. First all are held against each other.
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using RuleBook.Benchmarks;

if (args is ["--assess", ..])
{
    Assessments.Print(Book, args.Length > 1 ? args[1] : "*");
    return 0;
}

if (args is ["--growth"])
{
    Growth.Print(Book);
    return 0;
}

if (args is ["--empty"])
{
    EmptyJobs.Print(Book);
    return 0;
}

var verdicts = new Verdicts();
if (await verdicts.Difference() is { } difference)
{
    Console.Error.WriteLine(difference);
    return 1;
}

Console.WriteLine($"{Verdicts.Count} jobs: all give the same verdicts");
if (args is ["--check"])
    return 0;
if (args is ["--ratios"])
{
    Ratios.Print(verdicts);
    return 0;
}

BenchmarkRunner.Run<Verdicts>(
    DefaultConfig
        .Instance.AddJob(
            BenchmarkDotNet.Jobs.Job.ShortRun.WithToolchain(new InProcessEmitToolchain(TimeSpan.FromMinutes(5), logOutput: true))
        )
        .AddColumn(StatisticColumn.OperationsPerSecond)
        .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "rulebook-benchmarks"))
);
return 0;

/// <summary>The program.</summary>
internal static partial class Program
{
    /// <summary>The folder of the book: run this from the repository's folder.</summary>
    internal static string Book => Directory.GetCurrentDirectory();
}
