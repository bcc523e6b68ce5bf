using System.Numerics;
using System.Runtime.CompilerServices;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// A measure cut into cells by every bound that some rule sets on it: below the first edge, at it, between it and the next, and so on.
/// Whatever the rules can tell apart about the measure is its cell.
/// </summary>
/// <remarks>
/// An axis takes one column of the table for each <see cref="EdgesOfColumn"/> edges: a column is one set of at most 64 cells.
/// </remarks>
internal sealed class Axis
{
    private const int EdgesOfColumn = 31;

    private readonly Exact[] edges;
    private readonly long[] steps;

    public Axis(string measure, MeasureSum sum, IReadOnlyCollection<Fraction> bounds, Grid grid, int column)
    {
        (Measure, Sum, Column) = (measure, sum, column);
        Fraction[] ordered = [.. bounds.Distinct().Order()];
        edges = [.. ordered.Select(Exact.Of)];
        steps = new long[edges.Length];
        IsOnGrid = sum.Times <= Grid.Times;
        for (var i = 0; i < steps.Length; i++)
            IsOnGrid &= grid.Holds(ordered[i], out steps[i]);
        Columns = Math.Max(1, (edges.Length + EdgesOfColumn - 1) / EdgesOfColumn);
    }

    /// <summary>Name of the measure.</summary>
    public string Measure { get; }

    /// <summary>How it is known.</summary>
    public MeasureSum Sum { get; }

    /// <summary>Its first column.</summary>
    public int Column { get; }

    /// <summary>Index of the movement that shows on it; -1 where none does.</summary>
    public int Movement { get; set; } = -1;

    /// <summary>How many columns it takes.</summary>
    public int Columns { get; }

    /// <summary>How many cells there are: <c>2k + 1</c> for k edges.</summary>
    public int Cells => 2 * edges.Length + 1;

    public ReadOnlySpan<Exact> Edges => edges;

    /// <summary>Whether all its edges lie on the grid of the table.</summary>
    public bool IsOnGrid { get; }

    /// <summary>The cell of a value: odd at an edge, even between two.</summary>
    public int Place(in Exact value)
    {
        var (low, high) = (0, edges.Length);
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            var side = value.CompareTo(in edges[middle]);
            if (side == 0)
                return 2 * middle + 1;
            if (side < 0)
                high = middle;
            else
                low = middle + 1;
        }

        return 2 * low;
    }

    /// <summary>The cell of a value on the grid, without a branch for each edge.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Place(long at)
    {
        var cell = 0;
        foreach (var edge in steps)
            cell += (int)(edge - at - 1 >>> 63) + (int)(edge - at >>> 63); // one where at >= edge, another where at > edge
        return cell;
    }

    /// <summary>One of its columns and the cell in it, as a bit, of a value at an edge.</summary>
    public (int Column, ulong Cell) At(Exact edge)
    {
        var cell = Place(edge);
        var column = cell / 2 / EdgesOfColumn;
        return (column, Mask(column, cell, cell));
    }

    /// <summary>All cells of one of its columns.</summary>
    public ulong All(int column) => Mask(column, 0, Cells - 1);

    /// <summary>Puts what is known into a row.</summary>
    public void Put(Span<ulong> row, in ExactRange known)
    {
        var (first, last) = known.On(this);
        for (var i = 0; i < Columns; i++)
            row[Column + i] = Mask(i, first, last);
    }

    /// <summary>Puts a value on the grid into a row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Put(Span<ulong> row, long at)
    {
        var cell = Place(at);
        if (Columns == 1)
            row[Column] = 1ul << cell;
        else
            PutCell(row, cell);
    }

    private void PutCell(Span<ulong> row, int cell)
    {
        for (var i = 0; i < Columns; i++)
            row[Column + i] = Mask(i, cell, cell);
    }

    /// <summary>
    /// The values from the least to the greatest of the cells that are possible on a row; null where its columns leave none that is common.
    /// </summary>
    public ExactRange? On(ReadOnlySpan<ulong> row)
    {
        var (first, last) = (0, Cells - 1);
        for (var i = 0; i < Columns; i++)
        {
            var (possible, start) = (row[Column + i], 2 * EdgesOfColumn * i);
            if (possible == 0)
                return null;
            var (low, high) = (BitOperations.TrailingZeroCount(possible), BitOperations.Log2(possible));
            if (low > 0)
                first = Math.Max(first, start + low);
            if (high < BitOperations.Log2(All(i)))
                last = Math.Min(last, start + high);
        }

        return first > last
            ? null
            : new ExactRange(
                first == 0 ? null : edges[(first - 1) / 2],
                (first & 1) == 0,
                last == Cells - 1 ? null : edges[last / 2],
                (last & 1) == 0
            );
    }

    /// <summary>The tests that pass just within the bounds; at most two, since the two ends may lie in different columns.</summary>
    public IEnumerable<Test> Within(Bounds bounds)
    {
        var first = bounds.Lower is { } lower ? Place(Exact.Of(lower.Value)) + (lower.Closed ? 0 : 1) : 0;
        var last = bounds.Upper is { } upper ? Place(Exact.Of(upper.Value)) - (upper.Closed ? 0 : 1) : Cells - 1;
        for (var i = 0; i < Columns; i++)
            if (Mask(i, first, last) is var passes && (passes != All(i) || first > last))
                yield return new Test((ushort)(Column + i), first > last ? 0 : passes);
    }

    /// <summary>
    /// The bounds within which a test on one of its columns passes, the reverse of <see cref="Within"/>; null where nothing passes.
    /// </summary>
    public Bounds? BoundsOf(in Test test)
    {
        if (test.Passes == 0)
            return null;
        var column = test.Column - Column;
        var start = 2 * EdgesOfColumn * column;
        var (first, last, end) = (
            BitOperations.TrailingZeroCount(test.Passes),
            BitOperations.Log2(test.Passes),
            BitOperations.Log2(All(column))
        );
        return new Bounds(
            first == 0 ? null : End(start + first, start + first - 1),
            last == end ? null : End(start + last, start + last + 1)
        );
    }

    /// <summary>The first and the last edge that a column tells apart.</summary>
    public (Exact First, Exact Last) Span(int column) =>
        (edges[EdgesOfColumn * column], edges[Math.Min(EdgesOfColumn * (column + 1), edges.Length) - 1]);

    /// <summary>The end at a cell: closed where the cell is an edge, otherwise open at the edge beside it.</summary>
    private Bound End(int cell, int beside) =>
        (cell & 1) == 1 ? new Bound(edges[cell / 2].Value, true) : new Bound(edges[beside / 2].Value, false);

    /// <summary>
    /// The cells from <paramref name="first"/> to <paramref name="last"/> as one column sees them; it lumps what lies outside of its edges.
    /// </summary>
    public ulong Mask(int column, int first, int last)
    {
        var start = 2 * EdgesOfColumn * column;
        var most = 2 * Math.Min(EdgesOfColumn, edges.Length - EdgesOfColumn * column);
        var (low, high) = (Math.Clamp(first - start, 0, most), Math.Clamp(last - start, 0, most));
        return (ulong.MaxValue >> (63 - (high - low))) << low;
    }
}
