using System.Numerics;
using System.Runtime.Intrinsics;

namespace RuleBook.Tables;

/// <summary>
/// Many rows of one table, column by column: a byte for each cell, so that the runtime's vector types compare 64 rows at once. Fill it with
/// <see cref="Set"/>, judge it with <see cref="DecisionTable.Judge(Batch, Span{byte})"/>, fill it again. Not safe for several threads at
/// once.
/// </summary>
public sealed class Batch
{
    /// <summary>Stands for a column that is not known.</summary>
    internal const byte Unknown = byte.MaxValue;

    private readonly Dictionary<int, ulong[]> open = [];

    /// <summary>A batch of <paramref name="rows"/> rows of a table.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is not at least one row.</exception>
    public Batch(DecisionTable table, int rows)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rows);
        (Table, Rows) = (table, rows);
        var whole = (rows + Vector512<byte>.Count - 1) / Vector512<byte>.Count * Vector512<byte>.Count;
        Columns = new byte[table.Width][];
        for (var column = 0; column < Columns.Length; column++)
            Columns[column] = new byte[whole];
    }

    /// <summary>The table.</summary>
    public DecisionTable Table { get; }

    /// <summary>How many rows it holds.</summary>
    public int Rows { get; }

    internal byte[][] Columns { get; }

    /// <summary>
    /// Rows on which a column is not known that some rule of a topic touched tests: they are judged one by one, in three-valued logic.
    /// </summary>
    internal IReadOnlyDictionary<int, ulong[]> Open => open;

    /// <summary>Puts a row of the table at an index from 0 to <see cref="Rows"/> - 1.</summary>
    /// <exception cref="ArgumentException">It is a row of another table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The batch has no such index.</exception>
    public void Set(int at, Row row)
    {
        if (row.Table != Table)
            throw new ArgumentException("a row of another table", nameof(row));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)at, (uint)Rows, nameof(at));
        var cells = row.Cells;
        for (var column = 1; column < cells.Length; column++)
        {
            var possible = cells[column];
            Columns[column][at] = BitOperations.IsPow2(possible) ? (byte)BitOperations.TrailingZeroCount(possible) : Unknown;
        }

        if (Table.FitsLanes(cells))
            open.Remove(at);
        else
            open[at] = cells.ToArray();
    }
}
