// A fleet from CSV to CSV: by the command, by a general rule engine, and by the exported query in DuckDB. All have to say the same of
// every row.
using System.Diagnostics;
using System.Globalization;
using nietras.SeparatedValues;
using RuleBook.Benchmarks;

if (args is ["rules", var input, var relations, var output])
{
    RulesOverRows.Judge(input, relations, output);
    return 0;
}

var rows = args is [var count, ..] ? int.Parse(count, CultureInfo.InvariantCulture) : 100_000;
var folder = Directory.CreateTempSubdirectory("rulebook-fleet-").FullName;
try
{
    var (file, told, rules, csv) = (Named("fleet.csv"), Named("told.csv"), Named("rules.csv"), Named("csv"));
    Vehicles.Write(file, rows);
    Command.RuleBook("export", csv, "--for", "csv", "--on", "2026-11-27");
    using var duck = new ByDuckDb(Named("sql"));
    Measure("the command", () => Command.RuleBook("fleet", file, "--output", told));
    Measure("RulesEngine", () => Command.Run(Environment.GetCommandLineArgs()[0], "rules", file, csv, rules));
    if (rows <= 1_000_000)
        Measure("DuckDB, verdicts only", () => duck.Judge(file));
    var differ = (rows <= 1_000_000 ? duck.Differences(told) : []).Concat(Differences(told, rules)).ToList();
    Console.WriteLine($"{rows} rows, {differ.Count} with another verdict{string.Concat(differ.Take(5).Select(each => $"\n  {each}"))}");
    return differ.Count == 0 ? 0 : 1;
}
finally
{
    Directory.Delete(folder, recursive: true);
}

string Named(string name) => Path.Combine(folder, name);

void Measure(string what, Action run)
{
    var (start, watch) = (Command.Processor(), Stopwatch.StartNew());
    run();
    var (wall, used) = (watch.Elapsed.TotalSeconds, (Command.Processor() - start).TotalSeconds);
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: {wall:F2} s on the clock, {used:F2} s of processor time, {rows / wall:F0} rows a second"
        )
    );
}

// The rows stand in the same order in both.
static IEnumerable<string> Differences(string told, string rules)
{
    using var one = Sep.Reader(options => options with { Unescape = true }).FromFile(told);
    using var other = Sep.Reader().FromFile(rules);
    while (one.MoveNext() | other.MoveNext())
    {
        var (command, engine) = (Said(one.Current), Said(other.Current));
        if (command != engine)
            yield return $"the command {command}, RulesEngine {engine}";
    }

    static string Said(SepReader.Row row) => $"{row["job"]}: {row["verdict"]}, {row["headline"]}";
}
