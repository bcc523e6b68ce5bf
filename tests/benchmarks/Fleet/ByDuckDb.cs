using DuckDB.NET.Data;

namespace RuleBook.Benchmarks;

/// <summary>The exported limits and query in DuckDB.</summary>
internal sealed class ByDuckDb : IDisposable
{
    private static readonly (string Column, string Fact)[] Words =
    [
        ("vehicle.category", "category"),
        ("vehicle.four-wheel-drive", "four-wheel-drive"),
        ("vehicle.stability-control", "stability-control"),
    ];

    private static readonly (string Column, string Fact)[] Measures =
    [
        ("modification.suspension-lift", "suspension-lift"),
        ("modification.body-lift", "body-lift"),
    ];

    private readonly DuckDBConnection connection = new("Data Source=:memory:");
    private readonly string query;

    public ByDuckDb(string folder)
    {
        Command.RuleBook("export", folder, "--on", "2026-11-27");
        connection.Open();
        Run($"SET temp_directory = '{folder}'");
        Run(File.ReadAllText(Path.Combine(folder, "tables.sql")));
        query = File.ReadAllText(Path.Combine(folder, "judge.sql"));
    }

    /// <summary>Reads a fleet and judges it.</summary>
    public void Judge(string file)
    {
        Run($"CREATE TABLE fleet AS SELECT * FROM read_csv('{file}', header = true, all_varchar = true)");
        Run("INSERT INTO vehicles SELECT job, \"registered-in\", CAST(\"on\" AS DATE) FROM fleet");
        foreach (var (column, fact) in Words)
            Run($"INSERT INTO stated SELECT job, '{fact}', \"{column}\", NULL, NULL FROM fleet");
        foreach (var (column, fact) in Measures)
            Run(
                $"INSERT INTO stated SELECT job, '{fact}', NULL, CAST(replace(\"{column}\", ' mm', '') AS DECIMAL(18, 8)), "
                    + $"CAST(replace(\"{column}\", ' mm', '') AS DECIMAL(18, 8)) FROM fleet"
            );
        Run($"CREATE TABLE verdicts AS {query}");
    }

    /// <summary>The rows of which the command says something else.</summary>
    public List<string> Differences(string told)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            $"SELECT v.vehicle, v.place, v.verdict, t.verdict FROM verdicts v JOIN read_csv('{told}', header = true, all_varchar = "
            + "true) t ON t.job = v.vehicle WHERE replace(v.verdict, ' ', '-') <> t.verdict";
        using var read = command.ExecuteReader();
        var differ = new List<string>();
        while (read.Read())
            differ.Add($"{read.GetString(0)} in {read.GetString(1)}: DuckDB {read.GetString(2)}, the command {read.GetString(3)}");
        return differ;
    }

    public void Dispose() => connection.Dispose();

    private void Run(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
