using System.Text;
using Fractions;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// Amounts of one column as whole thousandths of its measure's unit, such as <c>45.3 mm</c>. What a measure plausibly is is a range, so
/// that whatever lies between two such amounts that were read as a job reads them is one too; any other text is left to the reader of jobs.
/// </summary>
internal sealed class PlainColumn
{
    private const int MostDecimals = 3;

    private readonly Measure measure;
    private readonly byte[] unit;
    private readonly bool isBase;
    private long least = long.MaxValue;
    private long most = long.MinValue;

    public PlainColumn(Measure measure) =>
        (this.measure, unit, isBase) = (measure, Encoding.UTF8.GetBytes(measure.Unit.Symbol), measure.Unit.ToBase == 1);

    /// <summary>The amount; null where it is not written so, or beyond what was read so far.</summary>
    public long? Read(ReadOnlySpan<byte> cell) => Parse(cell) is { } amount && amount >= least && amount <= most ? amount : null;

    /// <summary>Takes note of an amount that was read as a job reads it.</summary>
    public void Extend(ReadOnlySpan<byte> cell)
    {
        if (Parse(cell) is not { } amount || !measure.Plausible.Contains(new Fraction(amount, GridCells.Thousandths)))
            return;
        (least, most) = (Math.Min(least, amount), Math.Max(most, amount));
    }

    private long? Parse(ReadOnlySpan<byte> cell)
    {
        if (!isBase)
            return null;
        var (amount, at) = (0L, 0);
        for (; at < cell.Length && cell[at] is >= (byte)'0' and <= (byte)'9' && amount < GridCells.Largest; at++)
            amount = 10 * amount + cell[at] - '0';
        if (at == 0)
            return null;
        var (point, decimals) = (at < cell.Length && cell[at] == '.', 0);
        if (point)
            for (at++; at < cell.Length && cell[at] is >= (byte)'0' and <= (byte)'9' && decimals < MostDecimals; at++, decimals++)
                amount = 10 * amount + cell[at] - '0';
        if (point && decimals == 0)
            return null;
        for (; decimals < MostDecimals; decimals++)
            amount *= 10;
        if (at < cell.Length && cell[at] == ' ')
            at++;
        return amount <= GridCells.Largest && unit.Length > 0 && cell[at..].SequenceEqual(unit) ? amount : null;
    }
}
