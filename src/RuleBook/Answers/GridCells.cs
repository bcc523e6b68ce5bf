using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>
/// <see cref="SameCells"/> in whole numbers: values are thousandths of the base unit and sums are halves of these, on which every bound
/// that is asked for lies or between two of which it lies. Placing and what is left are then integer arithmetic and still exact. Safe for
/// any number of threads.
/// </summary>
internal sealed class GridCells
{
    /// <summary>So many steps a base unit has, of a value that is stated.</summary>
    public const int Thousandths = 1000;

    /// <summary>So many steps a base unit has, of a sum and of what is left.</summary>
    public const int Steps = 2 * Thousandths;

    /// <summary>Values beyond that are not placed: sums and products then stay within 64 bits.</summary>
    public const long Largest = 1_000_000_000;

    private readonly Place[] places;
    private readonly FactSet facts;
    private readonly ImmutableArray<string> measures;

    private GridCells(FactSet facts, ImmutableArray<string> measures, Place[] places) =>
        (this.facts, this.measures, this.places) = (facts, measures, places);

    /// <summary>On the grid; null where something that is added up does not lie on it.</summary>
    internal static GridCells? Of(
        FactSet facts,
        ImmutableArray<string> measures,
        IEnumerable<(Axis Axis, Exact Fixed, ImmutableArray<(int At, Exact Factor)> Terms)> axes
    )
    {
        var places = new List<Place>();
        foreach (var (axis, rest, terms) in axes)
        {
            if (GridSum.Of(rest.Value, [.. terms.Select(term => (term.At, term.Factor.Value))]) is not { } sum)
                return null;
            // Twice a sum is even: an edge between two steps is the odd number between them. What is added to every sum is taken from the
            // edges.
            var edges = axis.Edges.ToArray().Select(edge => Twice(edge.Value * Steps) - 2 * sum.Rest);
            var at = places.FindIndex(place => place.Terms.AsSpan().SequenceEqual(sum.Terms));
            if (at < 0)
                places.Add(new Place(sum.Terms, [.. edges.Order()]));
            else
                places[at] = places[at] with { Edges = [.. places[at].Edges.Union(edges).Order()] };
        }

        var keys = places.Aggregate((UInt128)1, (product, place) => product * (UInt128)(2 * place.Edges.Length + 1));
        return keys > ulong.MaxValue ? null : new GridCells(facts, measures, [.. places]);
    }

    /// <summary>In how many measures they differ.</summary>
    public int Measures => measures.Length;

    /// <summary>The cells in which the values lie, as one number: the same number, the same answer.</summary>
    /// <param name="values">A value in thousandths of the base unit for each measure, none of them beyond <see cref="Largest"/>.</param>
    public ulong Key(ReadOnlySpan<long> values)
    {
        var key = 0ul;
        foreach (ref readonly var place in places.AsSpan())
            key = key * (ulong)(2 * place.Edges.Length + 1) + place.Cell(values);
        return key;
    }

    /// <summary>The limits of a job in the same cells; null where one of them does not lie on the grid.</summary>
    /// <param name="limits">The limits, with what their versions count towards a total.</param>
    public GridLimits? Limits(IEnumerable<(LimitCheck Check, ImmutableArray<string> Parts)> limits)
    {
        var kept = new List<GridLimit>();
        foreach (var (check, parts) in limits.Where(limit => limit.Check is { Limit.Bounds: not null, Measure.IsDate: false }))
        {
            var (terms, rest) = (new List<(int, Fraction)>(), Fraction.Zero);
            if (!Add(check.Measure.Name, parts, Fraction.One, terms, ref rest))
                continue; // it is not known whatever the values are
            if (GridSum.Of(rest, terms) is not { } sum || GridLimit.Of(check, sum) is not { } limit)
                return null;
            kept.Add(limit);
        }

        return new GridLimits(kept);
    }

    private static long Twice(Fraction steps)
    {
        var below = System.Numerics.BigInteger.DivRem(steps.Numerator, steps.Denominator, out var left);
        if (left.Sign < 0)
            below--;
        return (long)(2 * below + (left.IsZero ? 0 : 1));
    }

    private bool Add(
        string measure,
        ImmutableArray<string> parts,
        Fraction factor,
        List<(int At, Fraction Factor)> terms,
        ref Fraction rest
    )
    {
        if (measures.IndexOf(measure) is >= 0 and var at)
        {
            terms.Add((at, factor));
            return true;
        }

        if (facts.Measures.TryGetValue(measure, out var stated))
        {
            if (stated.Value.Exact is not { } exact)
                return false;
            rest += exact * factor;
            return true;
        }

        if (measure == FactSet.TyreLift)
            return Add(FactSet.TyreGrowth, parts, factor / 2, terms, ref rest);
        if (measure != FactSet.TotalLift)
            return false;
        foreach (var part in parts)
            if (!Add(part, parts, factor, terms, ref rest))
                return false;
        return true;
    }

    /// <summary>All axes of one sum of measures, with twice each of their edges.</summary>
    private readonly record struct Place((int At, long Factor)[] Terms, long[] Edges)
    {
        public ulong Cell(ReadOnlySpan<long> values)
        {
            var value = 2 * GridSum.Of(Terms, values);
            var (low, high) = (0, Edges.Length);
            while (low < high)
            {
                var middle = (low + high) >>> 1;
                if (value == Edges[middle])
                    return (ulong)(2 * middle + 1);
                if (value < Edges[middle])
                    high = middle;
                else
                    low = middle + 1;
            }

            return (ulong)(2 * low);
        }
    }
}
