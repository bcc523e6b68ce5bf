using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>Something that is not known on a row, with what each of its options puts there.</summary>
internal abstract class Unknown
{
    /// <summary>How many options there are.</summary>
    public abstract int Count { get; }

    /// <summary>The columns on which it bears.</summary>
    public abstract IEnumerable<int> Columns { get; }

    /// <summary>For a reader.</summary>
    public abstract Opening Opening { get; }

    /// <summary>Puts the options from one to another.</summary>
    public abstract void Put(Row row, int first, int last);
}

/// <summary>A word, or which version of a rule is in force.</summary>
internal sealed class UnknownBit(int column, int count, Func<Opening> opening) : Unknown
{
    public override int Count => count;

    public override IEnumerable<int> Columns => [column];

    public override Opening Opening => opening();

    public override void Put(Row row, int first, int last) => row.SetCells(column, (ulong.MaxValue >> (63 - (last - first))) << first);
}

/// <summary>
/// A measure of which only a range is known, or nothing: a stretch for each cell into which all edges cut it. Most measures turn out to
/// decide nothing, so it is cut when the options are first asked for.
/// </summary>
internal sealed class UnknownMeasure(Measure measure, int slot, Func<ImmutableArray<Cell>> cut, ImmutableArray<int> columns) : Unknown
{
    private ExactRange[]? ranges;

    public override int Count => Ranges.Length;

    public override IEnumerable<int> Columns => columns;

    public override Opening Opening => new(measure.Job, OpeningKind.Measure, [.. cut().Select(cell => new Option("", cell))]);

    public override void Put(Row row, int first, int last) => row.Set(slot, Ranges[first].Through(Ranges[last]));

    private ExactRange[] Ranges =>
        ranges ??= [
            .. cut()
                .Select(cell => new ExactRange(
                    cell.Lower is { } lower ? Exact.Of(lower.Value) : null,
                    cell.Lower is { Closed: false },
                    cell.Upper is { } upper ? Exact.Of(upper.Value) : null,
                    cell.Upper is { Closed: false }
                )),
        ];
}
