using System.Globalization;
using Parquet;
using Parquet.Schema;

namespace RuleBook.Authoring.Exports;

/// <summary>A relation as a file of Apache Parquet; numbers are exact decimals there too.</summary>
internal static class ParquetTable
{
    /// <summary>The bytes of the file.</summary>
    public static async Task<ReadOnlyMemory<byte>> OfAsync(Relation relation, CancellationToken stop)
    {
        DataField[] fields = [.. relation.Columns.Select(Field)];
        using var bytes = new MemoryStream();
        var writer = await ParquetWriter.CreateAsync(new ParquetSchema(fields), bytes, cancellationToken: stop).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            using var rows = writer.CreateRowGroup();
            for (var at = 0; at < fields.Length; at++)
                await WriteAsync(rows, fields[at], relation.Columns[at].Type, [.. relation.Rows.Select(row => row[at])], stop)
                    .ConfigureAwait(false);
            rows.CompleteValidate();
        }

        return bytes.ToArray();
    }

    private static DataField Field(Column column) =>
        column.Type switch
        {
            ColumnType.Whole => new DataField<int?>(column.Name),
            ColumnType.Decimal => new DecimalDataField(column.Name, Decimals.Digits, Decimals.Places, isNullable: true),
            ColumnType.Factor => new DecimalDataField(column.Name, 2, 1, isNullable: true),
            ColumnType.Day => new DataField<DateOnly?>(column.Name),
            _ => new DataField<string>(column.Name),
        };

    private static Task WriteAsync(ParquetRowGroupWriter rows, DataField field, ColumnType type, string?[] cells, CancellationToken stop) =>
        type switch
        {
            ColumnType.Whole => rows.WriteAsync<int>(field, Each(cells, int.Parse), cancellationToken: stop),
            ColumnType.Decimal or ColumnType.Factor => rows.WriteAsync<decimal>(field, Each(cells, decimal.Parse), cancellationToken: stop),
            ColumnType.Day => rows.WriteAsync<DateOnly>(field, Each(cells, DateOnly.Parse), cancellationToken: stop),
            _ => rows.WriteAsync(field, cells!),
        };

    private static ReadOnlyMemory<T?> Each<T>(string?[] cells, Func<string, IFormatProvider, T> parse)
        where T : struct => Array.ConvertAll(cells, cell => cell is null ? (T?)null : parse(cell, CultureInfo.InvariantCulture));
}
