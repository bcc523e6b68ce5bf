using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Collects the measures that a job states, wherever the vocabulary says they stand.</summary>
internal sealed class StatedMeasures(Vocabulary vocabulary)
{
    private readonly Dictionary<string, Quantity> known = [];
    private readonly HashSet<string> unknown = [];

    public ImmutableDictionary<string, Quantity> Known => known.ToImmutableDictionary();

    public ImmutableHashSet<string> Unknown => [.. unknown];

    /// <summary>Reads every measure of the vocabulary that stands under <paramref name="path"/>.</summary>
    public void ReadAll(Fields fields, string path)
    {
        foreach (var measure in vocabulary.Measures.Values)
        {
            if (measure.IsDate || measure.IsDerived || KeyUnder(measure, path) is not { } key || fields.Node(key) is not { } node) continue;
            if (node is Scalar { Text: "unknown" }) unknown.Add(measure.Name);
            else if (fields.QuantityOf(node, measure.Unit.Dimension) is { } quantity) Keep(fields, measure, node, quantity);
        }
    }

    private static string? KeyUnder(Measure measure, string path)
    {
        var at = measure.Job.LastIndexOf('.');
        return at >= 0 && measure.Job[..at] == path ? measure.Job[(at + 1)..] : null;
    }

    private void Keep(Fields fields, Measure measure, Node node, Quantity quantity)
    {
        if (quantity.Amount.IsNegative && measure.BelowZero != BelowZero.Stated)
            fields.Add("negative", node.Mark, $"'{quantity}' is negative", $"{measure.Title} is zero or more");
        known[measure.Name] = quantity;
    }
}
