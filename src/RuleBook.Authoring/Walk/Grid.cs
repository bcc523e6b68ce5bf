using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// A witness of every cell and boundary into which planes cut a space: one axis after the other is cut where a plane lies, or where two
/// meet that bear on a later axis, so that nothing changes inside a cell (cylindrical decomposition of a linear arrangement).
/// </summary>
internal sealed class Grid
{
    private readonly Axes axes;
    private readonly ImmutableArray<LimitBoundary>[] cuts;

    /// <summary>By axis, the witnesses where no plane leans on an earlier axis; null for the others.</summary>
    private readonly Fraction[]?[] alone;

    public Grid(Axes axes)
    {
        this.axes = axes;
        cuts = new ImmutableArray<LimitBoundary>[axes.Measures.Length];
        IEnumerable<LimitBoundary> left = axes.Planes;
        for (var axis = cuts.Length - 1; axis >= 0; axis--)
        {
            var here = left.Where(plane => plane.On(axis)).Distinct().ToImmutableArray();
            cuts[axis] = here;
            left = left.Where(plane => !plane.On(axis)).Concat(Meets(here, axis)).Distinct().ToArray();
        }

        alone =
        [
            .. cuts.Select(
                (planes, axis) =>
                    planes.All(plane => Enumerable.Range(0, axis).All(earlier => !plane.On(earlier)))
                        ? Along(axis, new Fraction[axis]).ToArray()
                        : null
            ),
        ];
    }

    /// <summary>The witnesses, a value for each axis; of an open cell the one nearest to its lower end by absolute size.</summary>
    /// <param name="within">Only those inside; null for all.</param>
    public IEnumerable<Fraction[]> Points(SumRange? within = null) => Points(0, new Fraction[cuts.Length], within);

    /// <summary>The witnesses on one axis, the earlier ones given; in ascending order.</summary>
    private IEnumerable<Fraction> Along(int axis, Fraction[] earlier)
    {
        var step = axes.Step(axis);
        var edges = cuts[axis]
            .Select(plane => plane.At(axis, earlier))
            .Where(edge => axes.Negative(axis) || !edge.IsNegative)
            .Distinct()
            .Order()
            .ToArray();
        if (edges.Length == 0)
            yield break;
        if (axes.GoesBelow(axis, edges[0]))
            yield return edges[0] - step;
        for (var i = 0; i < edges.Length; i++)
        {
            yield return edges[i];
            if (i + 1 == edges.Length)
                yield return edges[i] + step;
            else if (Between(edges[i], edges[i + 1], step, axes.Measures[axis].IsDate) is { } inside)
                yield return inside;
        }
    }

    private IEnumerable<Fraction[]> Points(int axis, Fraction[] at, SumRange? within)
    {
        if (axis == cuts.Length)
        {
            yield return [.. at];
            yield break;
        }

        foreach (var value in alone[axis] ?? Along(axis, at))
        {
            at[axis] = value;
            if (within?.Holds(axis, at) == false)
                continue;
            foreach (var point in Points(axis + 1, at, within))
                yield return point;
        }
    }

    private static Fraction? Between(Fraction low, Fraction high, Fraction step, bool whole)
    {
        if (high - low <= step)
            return whole ? null : (low + high) / 2;
        return high.IsPositive ? low + step : high - step;
    }

    private static IEnumerable<LimitBoundary> Meets(ImmutableArray<LimitBoundary> planes, int axis) =>
        planes.SelectMany((plane, at) => planes.Skip(at + 1).Select(other => plane.Meet(other, axis))).OfType<LimitBoundary>();
}
