using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

internal sealed partial class LimitReader
{
    private ImmutableArray<string> ReadConditions(Fields fields) => fields.List("provided", node => ReadCondition(fields, node));

    private string? ReadCondition(Fields fields, Node node) =>
        node switch
        {
            Mapping { Entries: [var (key, _)] } anyOf when key.Text == GivenConditions.AnyOf => ReadAnyOf(fields, key, anyOf),
            Mapping => ReadFigured(fields, node),
            _ => ReadPlain(fields, node),
        };

    /// <summary>Some of which one has to be shown: a condition of its own, which the vocabulary has got for it.</summary>
    private string? ReadAnyOf(Fields fields, Scalar key, Mapping node)
    {
        var before = fields.Problems.Count;
        var names = new Fields(node, fields.Problems).List(key.Text, member => ReadCondition(fields, member));
        if (fields.Problems.Count > before)
            return null;
        if (names.Distinct().Count() < 2)
            fields.Add(
                "wrong-shape",
                node.Mark,
                "two conditions are needed here, of which one has to be shown",
                "write the condition alone"
            );
        else if (GivenConditions.Name(names) is var name && !vocabulary.Conditions[name].AnyOf.IsEmpty)
            return name;
        else
            Clash(fields, key, name);
        return null;
    }

    private string? ReadPlain(Fields fields, Node node)
    {
        if (fields.TextOf(node) is not { } name || vocabulary.Conditions.ContainsKey(name))
            return fields.TextOf(node);
        if (vocabulary.Figured.TryGetValue(name, out var figured))
            fields.Add(
                "wrong-shape",
                node.Mark,
                $"'{name}' needs its figure",
                $"write {{ {name}: {new Quantity(1, Unit.Base(figured.Dimension))} }}, with the figure of the rule"
            );
        else
            fields.Add(
                "unknown-condition",
                node.Mark,
                $"'{name}' is not a condition of the vocabulary",
                Spelling.Tip(name, [.. vocabulary.Conditions.Keys, .. vocabulary.Figured.Keys])
            );
        return null;
    }

    /// <summary>A condition with its figure, as <c>{ bumper-bar-height: 4.5 in }</c>.</summary>
    private string? ReadFigured(Fields fields, Node node)
    {
        if (new Fields(node, fields.Problems).Entries.ToArray() is not [var (key, value)])
        {
            fields.Add("wrong-shape", node.Mark, "one condition with its figure is needed here", "give each condition an entry of its own");
            return null;
        }

        if (!vocabulary.Figured.TryGetValue(key.Text, out var figured))
        {
            var tip =
                key.Text == "none-of"
                    ? "a condition is something to show, and nobody shows what is not: name the condition that is to be shown instead"
                : vocabulary.Conditions.ContainsKey(key.Text) ? $"write {key.Text} alone: it takes no figure"
                : Spelling.Tip(key.Text, [.. vocabulary.Figured.Keys]);
            fields.Add("unknown-condition", key.Mark, $"'{key.Text}' is not a condition that takes a figure", tip);
            return null;
        }

        if (fields.QuantityOf(value, figured.Dimension) is not { } figure)
            return null;
        var name = figured.With(figure).Name;
        if (vocabulary.Conditions[name].Figured == figured.Name)
            return name;
        Clash(fields, key, name);
        return null;
    }

    private static void Clash(Fields fields, Scalar key, string name) =>
        fields.Add(
            "unknown-condition",
            key.Mark,
            $"'{name}' is another condition of the vocabulary already",
            "give one of the two another name"
        );
}
