using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>One way in which all could be.</summary>
/// <param name="Words">By fact.</param>
/// <param name="Measures">By measure, in base units.</param>
/// <param name="Unmet">Conditions known not to be met; all others hold or are still to be shown.</param>
/// <param name="Versions">By rule, the version in force.</param>
internal sealed record World(
    ImmutableDictionary<string, string> Words,
    ImmutableDictionary<string, Fraction> Measures,
    ImmutableHashSet<string> Unmet,
    ImmutableArray<int> Versions
)
{
    /// <summary>
    /// The measure; tyre lift is half of the growth and total lift the sum of <paramref name="parts"/> unless they are given themselves.
    /// </summary>
    public Fraction? Measure(string name, ImmutableArray<string> parts) =>
        Measures.TryGetValue(name, out var value)
            ? value
            : name switch
            {
                FactSet.TyreLift => Measure(FactSet.TyreGrowth, parts) / 2,
                FactSet.TotalLift => parts.Aggregate((Fraction?)Fraction.Zero, (sum, part) => sum + Measure(part, parts)),
                _ => null,
            };
}
