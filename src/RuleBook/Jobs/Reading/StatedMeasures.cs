using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Collects the measures that a job states, wherever the vocabulary says they stand.</summary>
internal sealed class StatedMeasures(Vocabulary vocabulary)
{
    /// <summary>Factors by which a decimal point that slipped changes a figure.</summary>
    private static readonly int[] Shifts = [10, 100, 1000];

    private readonly Dictionary<string, Quantity> known = [];
    private readonly HashSet<string> unknown = [];

    public ImmutableDictionary<string, Quantity> Known => known.ToImmutableDictionary();

    public ImmutableHashSet<string> Unknown => [.. unknown];

    /// <summary>Reads every measure of the vocabulary that stands under <paramref name="path"/>.</summary>
    public void ReadAll(Fields fields, string path)
    {
        foreach (var (key, measure) in VocabularyIndex.Of(vocabulary).Stated[path])
        {
            if (fields.Node(key) is not { } node)
                continue;
            if (node is Scalar { Text: "unknown" })
                unknown.Add(measure.Name);
            else if (fields.QuantityOf(node, measure.Unit.Dimension) is { } quantity)
                Keep(fields, measure, node, quantity);
        }
    }

    private void Keep(Fields fields, Measure measure, Node node, Quantity quantity)
    {
        if (quantity.Amount.IsNegative && measure.BelowZero != BelowZero.Stated)
            fields.Add("negative", node.Mark, $"'{quantity}' is negative", $"{measure.Title} is zero or more");
        else if (!quantity.Amount.IsPositive && measure.Possible.Low is { IsPositive: true })
            return;
        else if (!measure.Possible.Contains(quantity.Base))
            fields.Add(
                "impossible",
                node.Mark,
                $"no vehicle has a {measure.Title} of {quantity}",
                Tip(measure, measure.Possible, quantity)
            );
        else if (!measure.Plausible.Contains(quantity.Base))
            fields.Problems.Add(
                Problem.Warning(
                    "implausible",
                    node.Mark,
                    $"a {measure.Title} of {quantity} is hardly possible",
                    Tip(measure, measure.Plausible, quantity)
                )
            );
        known[measure.Name] = quantity;
    }

    /// <summary>The range, and the same digits with the point elsewhere where that would lie in it.</summary>
    private static string Tip(Measure measure, Interval range, Quantity quantity)
    {
        var meant =
            Shifts
                .SelectMany(factor => new[] { quantity.Base * factor, quantity.Base / factor })
                .Where(value => measure.Plausible.Contains(value))
                .Select(value => $"; was {new Quantity(value / quantity.Unit.ToBase, quantity.Unit)} meant?")
                .FirstOrDefault()
            ?? "";
        return (range.Low, range.High) switch
        {
            ({ } low, { } high) => $"{measure.Title} lies between {Show(low)} and {Show(high)}{meant}",
            ({ } low, null) => $"{measure.Title} is at least {Show(low)}{meant}",
            (null, { } high) => $"{measure.Title} is at most {Show(high)}{meant}",
            _ => "",
        };

        string Show(Fractions.Fraction value) => new Quantity(value / measure.Unit.ToBase, measure.Unit).ToString();
    }
}
