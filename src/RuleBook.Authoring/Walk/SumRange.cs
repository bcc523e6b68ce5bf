using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Authoring.Walk;

/// <summary>The points at which the weighted sum of the measures lies between two values, both included.</summary>
/// <param name="Weights">By axis.</param>
/// <param name="Low">In base units.</param>
/// <param name="High">In base units.</param>
internal sealed record SumRange(ImmutableArray<Fraction> Weights, Fraction Low, Fraction High)
{
    private readonly int last = Enumerable.Range(0, Weights.Length).Last(axis => !Weights[axis].IsZero);

    /// <summary>Whether a point may lie inside, its measures known up to an axis.</summary>
    public bool Holds(int axis, Fraction[] at)
    {
        if (axis != last)
            return true;
        var sum = Fraction.Zero;
        for (var i = 0; i <= last; i++)
            sum += Weights[i] * at[i];
        return sum >= Low && sum <= High;
    }
}
