using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Authoring.Walk;

/// <summary>Where a limit changes sides: the points at which the weighted sum of the measures equals a value.</summary>
/// <param name="Weights">By axis.</param>
/// <param name="Value">In base units.</param>
internal sealed record LimitBoundary(ImmutableArray<Fraction> Weights, Fraction Value)
{
    /// <summary>Whether the plane bears on an axis.</summary>
    public bool On(int axis) => !Weights[axis].IsZero;

    /// <summary>
    /// The value on <paramref name="axis"/> at which the plane lies, the earlier axes given; the later ones have no weight.
    /// </summary>
    public Fraction At(int axis, ReadOnlySpan<Fraction> earlier)
    {
        var rest = Value;
        for (var i = 0; i < axis; i++)
            if (!Weights[i].IsZero)
                rest -= Weights[i] * earlier[i];
        return (rest / Weights[axis]).Reduce();
    }

    /// <summary>Where this plane and another one meet, seen without an axis; null when they are parallel in it.</summary>
    public LimitBoundary? Meet(LimitBoundary other, int axis)
    {
        var factor = Weights[axis] / other.Weights[axis];
        var met = new LimitBoundary(
            [.. Weights.Zip(other.Weights, (left, right) => (left - right * factor).Reduce())],
            (Value - other.Value * factor).Reduce()
        );
        return met.Weights.All(weight => weight.IsZero) ? null : met.Scaled();
    }

    /// <summary>The same plane with the first weight 1, so that equal planes are told to be equal.</summary>
    public LimitBoundary Scaled()
    {
        var first = Weights.First(weight => !weight.IsZero);
        return new LimitBoundary([.. Weights.Select(weight => (weight / first).Reduce())], (Value / first).Reduce());
    }

    public bool Equals(LimitBoundary? other) => other is not null && Value == other.Value && Weights.SequenceEqual(other.Weights);

    public override int GetHashCode() => Weights.Aggregate(Value.GetHashCode(), HashCode.Combine);
}
