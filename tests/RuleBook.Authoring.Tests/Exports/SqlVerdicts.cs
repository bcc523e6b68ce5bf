using System.Globalization;
using DuckDB.NET.Data;
using Fractions;
using RuleBook.Authoring.Exports;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>What is known of a vehicle, and the ruling that judges it.</summary>
internal sealed record SqlVehicle(string Name, Ruling Ruling, FactSet Facts);

/// <summary>Verdicts of <c>judge.sql</c> as DuckDB gives them, an engine outside of this project.</summary>
internal sealed class SqlVerdicts : IDisposable
{
    private readonly DuckDBConnection connection = new("Data Source=:memory:");
    private readonly Vocabulary vocabulary;
    private readonly Dictionary<Ruling, string> places = [];

    /// <param name="vocabulary">The words.</param>
    /// <param name="rulings">The tables; each is a place of its own.</param>
    public SqlVerdicts(Vocabulary vocabulary, IEnumerable<Ruling> rulings)
    {
        this.vocabulary = vocabulary;
        foreach (var ruling in rulings)
            places[ruling] = $"{ruling.Place} {places.Count}";
        connection.Open();
        Run("SET threads = 2");
        foreach (
            var relation in (Relation[])
                [
                    .. VocabularyRelations.Of(vocabulary),
                    .. JudgingRelations.Of(places.Select(pair => pair.Key with { Place = pair.Value })),
                    .. BookExport.Vehicles,
                ]
        )
        {
            Run(SqlScript.Create(relation));
            Fill(relation);
        }
    }

    /// <summary>What a day or a decimal column holds of a value.</summary>
    public static decimal Decimal(Measure measure, Fraction value) =>
        decimal.Parse(Decimals.Of(measure, value), CultureInfo.InvariantCulture);

    /// <summary>The outcome of each vehicle by its name; null where nothing of it is judged.</summary>
    public Dictionary<string, Outcome?> Judge(IReadOnlyCollection<SqlVehicle> vehicles)
    {
        Run("DELETE FROM vehicles; DELETE FROM stated;");
        using (var rows = connection.CreateAppender("vehicles"))
            foreach (var vehicle in vehicles)
                rows.CreateRow().AppendValue(vehicle.Name).AppendValue(places[vehicle.Ruling]).AppendValue(vehicle.Ruling.First).EndRow();
        using (var rows = connection.CreateAppender("stated"))
            foreach (var vehicle in vehicles)
                State(rows, vehicle);
        using var command = connection.CreateCommand();
        command.CommandText = BookExport.Query;
        using var read = command.ExecuteReader();
        var given = new Dictionary<string, Outcome?>(vehicles.Count, StringComparer.Ordinal);
        while (read.Read())
            given[read.GetString(0)] = read.IsDBNull(4) ? null : new Outcome(Pathway(read.GetString(4)), Pathway(read.GetString(5)));
        return given;
    }

    public void Dispose() => connection.Dispose();

    private static Pathway Pathway(string word) =>
        word switch
        {
            "no-certificate" => Law.Pathway.NoCertificate,
            "certificate" => Law.Pathway.Certificate,
            "approval" => Law.Pathway.Approval,
            "prohibited" => Law.Pathway.Prohibited,
            _ => throw new ArgumentException($"'{word}' is no pathway", nameof(word)),
        };

    /// <summary>What the INSERT statements of the export do, quicker.</summary>
    private void Fill(Relation relation)
    {
        using var rows = connection.CreateAppender(relation.Name);
        foreach (var cells in relation.Rows)
        {
            var row = rows.CreateRow();
            foreach (var (cell, column) in cells.Zip(relation.Columns))
                _ = (cell, column.Type) switch
                {
                    (null, _) => row.AppendNullValue(),
                    (_, ColumnType.Whole) => row.AppendValue(int.Parse(cell, CultureInfo.InvariantCulture)),
                    (_, ColumnType.Decimal or ColumnType.Factor) => row.AppendValue(decimal.Parse(cell, CultureInfo.InvariantCulture)),
                    (_, ColumnType.Day) => row.AppendValue(DateOnly.Parse(cell, CultureInfo.InvariantCulture)),
                    _ => row.AppendValue(cell),
                };
            row.EndRow();
        }
    }

    private void State(DuckDBAppender rows, SqlVehicle vehicle)
    {
        foreach (var (fact, word) in vehicle.Facts.Words)
            rows.CreateRow().AppendValue(vehicle.Name).AppendValue(fact).AppendValue(word).AppendNullValue().AppendNullValue().EndRow();
        foreach (var (condition, met) in vehicle.Facts.Shown)
            rows.CreateRow()
                .AppendValue(vehicle.Name)
                .AppendValue(condition)
                .AppendValue(met ? "met" : "not met")
                .AppendNullValue()
                .AppendNullValue()
                .EndRow();
        foreach (var (name, known) in vehicle.Facts.Measures.Where(pair => vocabulary.Measures.ContainsKey(pair.Key)))
            rows.CreateRow()
                .AppendValue(vehicle.Name)
                .AppendValue(name)
                .AppendNullValue()
                .AppendValue(End(name, known.Value.Low))
                .AppendValue(End(name, known.Value.High))
                .EndRow();
        foreach (
            var unknown in vocabulary.Measures.Values.Where(measure =>
                (measure.IfAbsent is not null || measure.Name == KnownWords.Gvm) && !vehicle.Facts.Measures.ContainsKey(measure.Name)
            )
        )
            rows.CreateRow()
                .AppendValue(vehicle.Name)
                .AppendValue(unknown.Name)
                .AppendNullValue()
                .AppendNullValue()
                .AppendNullValue()
                .EndRow();
    }

    private decimal? End(string measure, Fraction? value) => value is { } known ? Decimal(vocabulary.Measures[measure], known) : null;

    private void Run(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
