using System.Text;

namespace RuleBook.Authoring.Exports;

/// <summary>Relations as ANSI SQL that makes and fills them.</summary>
internal static class SqlScript
{
    private const int RowsAStatement = 500;

    /// <summary>The statements, each ended by a semicolon.</summary>
    public static string Of(IEnumerable<Relation> relations)
    {
        var text = new StringBuilder();
        foreach (var relation in relations)
        {
            text.Append(Create(relation));
            foreach (var rows in relation.Rows.Chunk(RowsAStatement))
            {
                text.Append("INSERT INTO ").Append(relation.Name).Append(" VALUES\n");
                text.AppendJoin(",\n", rows.Select(row => $"  ({string.Join(", ", row.Zip(relation.Columns, Literal))})")).Append(";\n");
            }
        }

        return text.ToString();
    }

    /// <summary>The statement that makes an empty relation.</summary>
    public static string Create(Relation relation) =>
        $"CREATE TABLE {relation.Name} ({string.Join(", ", relation.Columns.Select(column => $"{column.Name} {Type(column.Type)}"))});\n";

    private static string Type(ColumnType type) =>
        type switch
        {
            ColumnType.Whole => "INTEGER",
            ColumnType.Decimal => $"DECIMAL({Decimals.Digits}, {Decimals.Places})",
            ColumnType.Factor => "DECIMAL(2, 1)",
            ColumnType.Day => "DATE",
            _ => "VARCHAR(500)",
        };

    private static string Literal(string? cell, Column column) =>
        (cell, column.Type) switch
        {
            (null, _) => "NULL",
            (_, ColumnType.Text) => $"'{cell.Replace("'", "''", StringComparison.Ordinal)}'",
            (_, ColumnType.Day) => $"DATE '{cell}'",
            _ => cell,
        };
}
