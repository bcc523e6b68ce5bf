using System.Globalization;
using nietras.SeparatedValues;

namespace RuleBook.Benchmarks;

/// <summary>The relations of <c>rulebook export --for csv</c>.</summary>
internal sealed class Relations(string folder)
{
    private readonly Dictionary<(string, string), ILookup<string, Dictionary<string, string>>> read = [];

    /// <summary>The rows of a relation in which a column has a value.</summary>
    public IEnumerable<Dictionary<string, string>> Of(string relation, string column, string value)
    {
        if (!read.TryGetValue((relation, column), out var rows))
            read[(relation, column)] = rows = Rows(Path.Combine(folder, $"{relation}.csv")).ToLookup(row => row[column]);
        return rows[value];
    }

    /// <summary>What a cell says; null where it is empty.</summary>
    public static decimal? Number(string cell) => cell.Length == 0 ? null : decimal.Parse(cell, CultureInfo.InvariantCulture);

    private static List<Dictionary<string, string>> Rows(string file)
    {
        using var reader = Sep.Reader(options => options with { Unescape = true }).FromFile(file);
        var (names, rows) = (reader.Header.ColNames, new List<Dictionary<string, string>>());
        foreach (var row in reader)
        {
            var cells = new Dictionary<string, string>();
            for (var at = 0; at < names.Count; at++)
                cells[names[at]] = row[at].ToString();
            rows.Add(cells);
        }

        return rows;
    }
}
