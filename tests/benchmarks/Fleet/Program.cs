// A fleet from CSV to CSV: by the command, by the exported query in DuckDB, by a general rule engine, and only read. First the two have to
// say the same of every row.
using System.Diagnostics;
using System.Globalization;
using nietras.SeparatedValues;
using RuleBook.Benchmarks;

var rows = args is [var count, ..] ? int.Parse(count, CultureInfo.InvariantCulture) : 100_000;
var folder = Directory.CreateTempSubdirectory("rulebook-fleet-").FullName;
try
{
    var (file, told) = (Path.Combine(folder, "fleet.csv"), Path.Combine(folder, "told.csv"));
    Vehicles.Write(file, rows);
    using var duck = new ByDuckDb(Path.Combine(folder, "export"));
    Measure("the command, from CSV to CSV", () => Command.Run("fleet", file, "--output", told));
    Measure("DuckDB, from CSV to verdicts", () => duck.Judge(file));
    Measure("RulesEngine, from CSV to verdicts", () => RulesOverRows.Judge(file));
    Measure(
        "only reading the CSV",
        () =>
        {
            using var reader = Sep.Reader().FromFile(file);
            var length = 0L;
            foreach (var row in reader)
                length += row[0].Span.Length;
        }
    );
    var differ = duck.Differences(told);
    Console.WriteLine(
        $"{rows} rows, {differ.Count} of them with another verdict{string.Concat(differ.Take(5).Select(each => $"\n  {each}"))}"
    );
    return differ.Count == 0 ? 0 : 1;
}
finally
{
    Directory.Delete(folder, recursive: true);
}

void Measure(string what, Action run)
{
    var watch = Stopwatch.StartNew();
    run();
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: {watch.Elapsed.TotalSeconds:F2} s, {rows / watch.Elapsed.TotalSeconds:F0} rows a second"
        )
    );
}
