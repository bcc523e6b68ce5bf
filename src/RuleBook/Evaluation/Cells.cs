using System.Collections.Immutable;
using Fractions;
using RuleBook.Quantities;
using RuleBook.Rules;

namespace RuleBook.Evaluation;

/// <summary>The cells into which edges cut a measure: each edge itself, and each open stretch between, before and after.</summary>
internal static class Cells
{
    public static ImmutableArray<Option> Of(Measure measure, ImmutableArray<Fraction> edges)
    {
        var options = ImmutableArray.CreateBuilder<Option>(2 * edges.Length + 1);
        options.Add(At(measure, edges[0] - 1, $"under {Show(measure, edges[0])}"));
        for (var i = 0; i < edges.Length; i++)
        {
            options.Add(At(measure, edges[i], Show(measure, edges[i])));
            options.Add(i + 1 < edges.Length
                ? At(measure, (edges[i] + edges[i + 1]) / 2, $"between {Show(measure, edges[i])} and {Show(measure, edges[i + 1])}")
                : At(measure, edges[i] + 1, $"over {Show(measure, edges[i])}"));
        }

        return options.ToImmutable();
    }

    private static Option At(Measure measure, Fraction value, string label) => new(
        label, situation => situation with { Facts = situation.Facts.With(measure.Name, value, label) });

    private static string Show(Measure measure, Fraction value) => new Quantity(value / measure.Unit.ToBase, measure.Unit).ToString();
}
