using System.Globalization;
using Fractions;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>A stretch of a measure on which nothing changes.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Lower">Its lower end; null when unbounded.</param>
/// <param name="Upper">Its upper end; null when unbounded.</param>
public sealed record Cell(Measure Measure, Bound? Lower, Bound? Upper)
{
    /// <summary>In words: <c>at most 50 mm</c>, <c>over 50 mm up to 75 mm</c>, <c>50 mm</c>.</summary>
    public string Label =>
        Measure.IsDate
            ? DateLabel
            : (Lower, Upper) switch
            {
                (null, null) => "any value",
                (null, { } upper) => $"{(upper.Closed ? "at most" : "under")} {Show(upper)}",
                ({ } lower, null) => $"{(lower.Closed ? "at least" : "over")} {Show(lower)}",
                ({ } lower, { } upper) when lower.Value == upper.Value => Show(lower),
                ({ } lower, { } upper) =>
                    $"{(lower.Closed ? "from" : "over")} {Show(lower)} {(upper.Closed ? "up to" : "to under")} {Show(upper)}",
            };

    /// <summary>This cell and a later one, with all between them.</summary>
    public Cell Through(Cell later) => this with { Upper = later.Upper };

    private string DateLabel =>
        (Lower, Upper) switch
        {
            (null, null) => "any day",
            (null, { } upper) => $"{(upper.Closed ? "up to" : "before")} {Day(upper)}",
            ({ } lower, null) => $"{(lower.Closed ? "from" : "after")} {Day(lower)}",
            ({ } lower, { } upper) when lower.Value == upper.Value => Day(lower),
            ({ } lower, { } upper) =>
                $"{(lower.Closed ? "from" : "after")} {Day(lower)} {(upper.Closed ? "up to" : "to before")} {Day(upper)}",
        };

    private string Show(Bound bound) =>
        (bound.Written is null ? bound with { Written = Quantity.Customary(bound.Value, Measure.Unit) } : bound).Show(Measure.Unit);

    private static string Day(Bound bound) =>
        DateOnly.FromDayNumber((int)bound.Value.ToDecimal()).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>The cells into which edges cut a measure: each edge itself, and each open stretch between, before and after.</summary>
internal static class Cells
{
    public static IEnumerable<Cell> Of(Measure measure, Fraction[] edges)
    {
        if (edges.Length == 0)
        {
            yield return new Cell(measure, null, null);
            yield break;
        }

        yield return new Cell(measure, null, new Bound(edges[0], false));
        for (var i = 0; i < edges.Length; i++)
        {
            var edge = new Bound(edges[i], true);
            yield return new Cell(measure, edge, edge);
            if (i + 1 == edges.Length)
                yield return new Cell(measure, edge with { Closed = false }, null);
            else if (!measure.IsDate || edges[i + 1] - edges[i] > 1)
                yield return new Cell(measure, edge with { Closed = false }, new Bound(edges[i + 1], false));
        }
    }
}
