using System.Numerics;
using Fractions;

namespace RuleBook.Answers;

/// <summary>A sum on the grid of <see cref="GridCells"/>.</summary>
/// <param name="Rest">What does not vary, in steps.</param>
/// <param name="Terms">Which value is added, and how many steps a thousandth of it counts.</param>
internal sealed record GridSum(long Rest, (int At, long Factor)[] Terms)
{
    /// <summary>Null where something of it does not lie on the grid.</summary>
    public static GridSum? Of(Fraction rest, IEnumerable<(int At, Fraction Factor)> terms)
    {
        (int At, long? Factor)[] factors =
        [
            .. terms.Select(term => (term.At, Whole(term.Factor * (GridCells.Steps / GridCells.Thousandths)))),
        ];
        return Whole(rest * GridCells.Steps) is { } steps && factors.All(term => term.Factor is not null)
            ? new GridSum(steps, [.. factors.Select(term => (term.At, term.Factor!.Value))])
            : null;
    }

    /// <summary>A number that is whole and not too large; null of any other.</summary>
    public static long? Whole(Fraction value) =>
        value.Denominator.IsOne && BigInteger.Abs(value.Numerator) < GridCells.Largest * GridCells.Steps ? (long)value.Numerator : null;

    public long Of(ReadOnlySpan<long> values) => Rest + Of(Terms, values);

    public static long Of((int At, long Factor)[] terms, ReadOnlySpan<long> values)
    {
        var sum = 0L;
        foreach (var (at, factor) in terms)
            sum += values[at] * factor;
        return sum;
    }
}

/// <summary>A limit on the grid: its ends in steps, null where there is none.</summary>
internal sealed record GridLimit(LimitCheck Check, GridSum Sum, long? Lower, long? Upper)
{
    /// <summary>Null where an end does not lie on the grid.</summary>
    public static GridLimit? Of(LimitCheck check, GridSum sum)
    {
        var (lower, upper) = (Steps(check.Limit.Bounds!.Lower?.Value), Steps(check.Limit.Bounds.Upper?.Value));
        return lower is null != check.Limit.Bounds.Lower is null || upper is null != check.Limit.Bounds.Upper is null
            ? null
            : new GridLimit(check, sum, lower, upper);
    }

    /// <summary>
    /// What <see cref="LimitCheck.Margin"/> and <see cref="LimitCheck.Bound"/> are, in steps; null where <see cref="TightestLimits"/>
    /// passes it over.
    /// </summary>
    public (long Margin, long Bound)? Left(ReadOnlySpan<long> values)
    {
        var value = Sum.Of(values);
        if (value == 0 || (Upper is null && Lower < 0 && value >= 0))
            return null;
        return (Lower, Upper) switch
        {
            (null, { } upper) => (upper - value, upper),
            ({ } lower, null) => (value - lower, lower),
            ({ } lower, { } upper) => value - lower < upper - value ? (value - lower, lower) : (upper - value, upper),
            _ => null,
        };
    }

    /// <summary>Whether another says the same of every row.</summary>
    public bool IsSame(GridLimit other) =>
        Check.Measure == other.Check.Measure
        && (Lower, Upper, Sum.Rest) == (other.Lower, other.Upper, other.Sum.Rest)
        && Check.Limit.Bounds == other.Check.Limit.Bounds
        && Sum.Terms.AsSpan().SequenceEqual(other.Sum.Terms);

    private static long? Steps(Fraction? bound) => bound is { } value ? GridSum.Whole(value * GridCells.Steps) : null;
}

/// <summary>The limits of a job, of which one is the tightest.</summary>
internal sealed class GridLimits
{
    private readonly GridLimit[] limits;

    /// <summary>Of limits that are the same to every row the first is kept.</summary>
    internal GridLimits(IEnumerable<GridLimit> limits)
    {
        var kept = new List<GridLimit>();
        foreach (var limit in limits)
            if (!kept.Any(limit.IsSame))
                kept.Add(limit);
        this.limits = [.. kept];
    }

    /// <summary>The limits that can be the tightest, in their order.</summary>
    public IEnumerable<LimitCheck> Checks => limits.Select(limit => limit.Check);

    /// <summary>
    /// The index of the limit to which the values come nearest in proportion, -1 where there is none, and what is left to it.
    /// </summary>
    /// <param name="values">A value in thousandths of the base unit for each measure.</param>
    public (int At, long Left) Tightest(ReadOnlySpan<long> values)
    {
        var (best, left, of) = (-1, 0L, 1L);
        for (var at = 0; at < limits.Length; at++)
        {
            if (limits[at].Left(values) is not var (margin, bound))
                continue;
            var proportion = bound == 0 ? GridCells.Steps : Math.Abs(bound);
            if (best < 0 || Product(margin, of) < Product(left, proportion))
                (best, left, of) = (at, margin, proportion);
        }

        return (best, left);
    }

    private static Int128 Product(long left, long right)
    {
        var high = Math.BigMul(left, right, out var low);
        return new Int128((ulong)high, (ulong)low);
    }
}
