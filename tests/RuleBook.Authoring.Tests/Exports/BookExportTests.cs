using System.Text;
using DuckDB.NET.Data;
using RuleBook.Authoring.Exports;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>What is exported runs in an engine as it is, says what it does not judge, and is written whole or not at all.</summary>
public sealed class BookExportTests
{
    private static readonly Lazy<BookExport> Export = new(() => BookExport.Sql(TestBook.Book, new DateOnly(2026, 11, 27)));

    /// <summary>
    /// The 50 mm of Queensland: National Code of Practice VSB 14, LS 2.4.1 table, adopted; second hand (au/forum-vsi8-13-2 for the same
    /// figure).
    /// </summary>
    [Fact]
    public void In_Queensland_50_mm_of_suspension_are_free_and_a_tenth_more_is_not()
    {
        using var connection = Opened();
        State(connection, ("on the limit", "suspension-lift", "50"), ("a tenth over", "suspension-lift", "50.1"));
        var given = Verdicts(connection);
        given["on the limit"].Verdict.ShouldBe("no-certificate");
        given["a tenth over"].Verdict.ShouldNotBe("no-certificate");
    }

    [Fact]
    public void What_nobody_judges_is_said()
    {
        using var connection = Opened();
        State(
            connection,
            ("misspelt", "suspensionlift", "45"),
            ("beside", "suspension-lift", "45"),
            ("beside", "suspension-travel-lost", "10"),
            ("unchanged", "suspension-lift", "0")
        );
        Run(connection, "INSERT INTO vehicles VALUES ('before', 'au-qld', DATE '1999-01-01')");
        var given = Verdicts(connection);
        given["misspelt"].ShouldBe(("not judged", 1, "suspensionlift"));
        given["beside"].ShouldBe(("no-certificate", 1, "suspension-travel-lost")); // a condition of the rule asks for it, no limit
        given["unchanged"].ShouldBe(("nothing to judge", 0, null));
        given["before"].Verdict.ShouldBe("no limits for this place and day");
    }

    [Fact]
    public void A_bound_of_the_limits_is_a_row_with_its_standing_and_source()
    {
        using var connection = Opened();
        using var read = Query(
            connection,
            "SELECT high, unit, closed, exact, standing, source FROM limits WHERE rule = "
                + "'au-qld/ride-height/raise-four-wheel-drive' AND pathway = 'no-certificate' AND measure = 'suspension-lift' AND "
                + "high IS NOT NULL"
        );
        read.Read().ShouldBeTrue();
        (read.GetDecimal(0), read.GetString(1), read.GetString(2), read.GetString(3)).ShouldBe((50m, "mm", "yes", "yes"));
        read.GetString(4).ShouldNotBeEmpty();
        read.GetString(5).ShouldContain("/");
    }

    /// <summary>
    /// Read by DuckDB, which shares no code with the writer: table by table the same rows and types as its own INSERTs gave.
    /// </summary>
    [Fact]
    public async Task The_Parquet_files_are_the_tables_of_the_SQL_statements()
    {
        var stop = TestContext.Current.CancellationToken;
        using var folder = new TemporaryFolder();
        var target = Path.Combine(folder.Path, "out");
        ExportFolder.Write(await BookExport.ParquetAsync(TestBook.Book, new DateOnly(2026, 11, 27), stop), target, stop);
        await using var connection = Opened();
        var files = Directory.GetFiles(target, "*.parquet");
        files.Length.ShouldBeGreaterThan(10);
        foreach (var (name, file) in files.Select(file => (Path.GetFileNameWithoutExtension(file), file)))
        {
            var read = $"read_parquet('{file}')";
            Ask(connection, $"SELECT count(*) FROM ((FROM {name} EXCEPT ALL FROM {read}) UNION ALL (FROM {read} EXCEPT ALL FROM {name}))")
                .ShouldBe(0L, name);
            Types(connection, read).ShouldBe(Types(connection, name), name);
        }
    }

    [Fact]
    public void An_export_replaces_an_export_and_nothing_else()
    {
        using var folder = new TemporaryFolder();
        var (target, export) = (Path.Combine(folder.Path, "out"), new BookExport([new("judge.sql", "one"), new("README.txt", "")], []));
        ExportFolder.Write(export, target, TestContext.Current.CancellationToken);
        ExportFolder.Write(
            export with
            {
                Files = [new("judge.sql", "two"), new("README.txt", "")],
            },
            target,
            TestContext.Current.CancellationToken
        );
        File.ReadAllText(Path.Combine(target, "judge.sql")).ShouldBe("two");
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([target]);

        folder.Write("out/letter.odt", "mine");
        Refused("out").ShouldBe(Stranger("letter.odt"));
        File.ReadAllText(Path.Combine(target, "judge.sql")).ShouldBe("two");
        Refused("out/letter.odt").ShouldBe("this is a file (name a folder)");
        Refused("no/out").ShouldBe($"there is no folder '{folder.Path}/no' (make it first, or check its name)");
        folder.Write("notes/README.txt", "mine");
        Refused("notes").ShouldBe(Stranger("README.txt"));
        folder.Write("queries/judge.sql", "mine");
        Refused("queries").ShouldBe(Stranger("judge.sql"));
        folder.Write("model/xa.dmn", "");
        folder.Write("model/README.txt", "");
        folder.Write("model/more.sql/a.sql", "");
        Refused("model").ShouldBe(Stranger("more.sql"));
        Directory.CreateSymbolicLink(Path.Combine(folder.Path, "link"), target);
        Refused("link").ShouldBe(Stranger("it is a link"));
        Directory.CreateDirectory(Path.Combine(folder.Path, "empty"));
        ExportFolder.Write(export, Path.Combine(folder.Path, "empty") + "/", TestContext.Current.CancellationToken);
        File.ReadAllText(Path.Combine(folder.Path, "empty", "judge.sql")).ShouldBe("one");

        static string Stranger(string what) => $"the folder holds what is no export: {what} (name a new folder, or an export to replace)";

        string Refused(string name)
        {
            var path = Path.Combine(folder.Path, name);
            var told = Should.Throw<InputException>(() => ExportFolder.Write(export, path)).Message;
            told.ShouldStartWith($"{path}:1:1: error not-writable: ");
            return told[$"{path}:1:1: error not-writable: ".Length..];
        }
    }

    [Fact]
    public void A_run_that_is_ended_leaves_what_was_there()
    {
        using var folder = new TemporaryFolder();
        var target = Path.Combine(folder.Path, "out");
        var export = new BookExport([new("judge.sql", "one"), new("README.txt", "")], []);
        ExportFolder.Write(export, target, TestContext.Current.CancellationToken);
        Should.Throw<OperationCanceledException>(() =>
            ExportFolder.Write(export with { Files = [new("judge.sql", "two")] }, target, new CancellationToken(true))
        );
        File.ReadAllText(Path.Combine(target, "judge.sql")).ShouldBe("one");
        Directory.GetFileSystemEntries(folder.Path).ShouldBe([target]);
    }

    /// <summary>A wagon with stability control for each name, and what is stated of it.</summary>
    private static void State(DuckDBConnection connection, params (string Vehicle, string Fact, string Value)[] stated)
    {
        foreach (var vehicle in stated.Select(each => each.Vehicle).Distinct())
            Run(
                connection,
                $"INSERT INTO vehicles VALUES ('{vehicle}', 'au-qld', DATE '2026-11-27'); INSERT INTO stated VALUES "
                    + string.Join(
                        ", ",
                        new[]
                        {
                            ("category", "MC"),
                            ("four-wheel-drive", "yes"),
                            ("stability-control", "yes"),
                            ("registered", "yes"),
                        }.Select(word => $"('{vehicle}', '{word.Item1}', '{word.Item2}', NULL, NULL)")
                    )
            );
        foreach (var (vehicle, fact, value) in stated)
            Run(connection, $"INSERT INTO stated VALUES ('{vehicle}', '{fact}', NULL, {value}, {value})");
    }

    private static Dictionary<string, (string Verdict, long Left, string? First)> Verdicts(DuckDBConnection connection)
    {
        using var read = Query(connection, Text("judge.sql"));
        var given = new Dictionary<string, (string, long, string?)>();
        while (read.Read())
            given[read.GetString(0)] = (read.GetString(3), Convert.ToInt64(read.GetValue(6)), read.IsDBNull(7) ? null : read.GetString(7));
        return given;
    }

    private static DuckDBConnection Opened()
    {
        var connection = new DuckDBConnection("Data Source=:memory:");
        connection.Open();
        Run(connection, Text("tables.sql"));
        return connection;
    }

    private static string Text(string name) => Encoding.UTF8.GetString(Export.Value.Files.Single(file => file.Name == name).Bytes.Span);

    private static object? Ask(DuckDBConnection connection, string sql)
    {
        using var read = Query(connection, sql);
        return read.Read() ? read.GetValue(0) : null;
    }

    private static string Types(DuckDBConnection connection, string table) =>
        $"{Ask(connection, $"SELECT string_agg(column_name || ' ' || column_type, ', ') FROM (DESCRIBE FROM {table})")}";

    private static void Run(DuckDBConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static DuckDBDataReader Query(DuckDBConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteReader();
    }
}
