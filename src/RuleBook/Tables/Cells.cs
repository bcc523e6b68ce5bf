using System.Collections.Immutable;
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
    public string Label => (Lower, Upper) switch
    {
        (null, null) => "any value",
        (null, { } upper) => $"{(upper.Closed ? "at most" : "under")} {Show(upper)}",
        ({ } lower, null) => $"{(lower.Closed ? "at least" : "over")} {Show(lower)}",
        ({ } lower, { } upper) when lower.Value == upper.Value => Show(lower),
        ({ } lower, { } upper) => $"{(lower.Closed ? "from" : "over")} {Show(lower)} {(upper.Closed ? "up to" : "to under")} {Show(upper)}",
    };

    /// <summary>This cell and a later one, with all between them.</summary>
    public Cell Through(Cell later) => this with { Upper = later.Upper };

    private string Show(Bound bound) => bound.Show(Measure.Unit);
}

/// <summary>The cells into which edges cut a measure: each edge itself, and each open stretch between, before and after.</summary>
internal static class Cells
{
    public static ImmutableArray<Option> Of(Measure measure, ImmutableArray<Fraction> edges)
    {
        var options = ImmutableArray.CreateBuilder<Option>(2 * edges.Length + 1);
        options.Add(At(new Cell(measure, null, new Bound(edges[0], false)), edges[0] - 1));
        for (var i = 0; i < edges.Length; i++)
        {
            var edge = new Bound(edges[i], true);
            options.Add(At(new Cell(measure, edge, edge), edges[i]));
            options.Add(i + 1 < edges.Length
                ? At(new Cell(measure, edge with { Closed = false }, new Bound(edges[i + 1], false)), (edges[i] + edges[i + 1]) / 2)
                : At(new Cell(measure, edge with { Closed = false }, null), edges[i] + 1));
        }

        return options.ToImmutable();
    }

    private static Option At(Cell cell, Fraction witness) => new(
        cell.Label, situation => situation with { Facts = situation.Facts.With(cell.Measure.Name, witness, cell.Label) }, cell);
}
