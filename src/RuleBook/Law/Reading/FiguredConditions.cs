using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads the conditions that take a figure.</summary>
internal static class FiguredConditions
{
    /// <summary>The condition, where it takes a figure.</summary>
    /// <param name="fields">One of the vocabulary.</param>
    /// <param name="term">What it says.</param>
    public static FiguredCondition? Read(Fields fields, Term term)
    {
        if (fields.Node("figure") is not { } node)
        {
            if (fields.Node("named") is { } alone)
                fields.Add(
                    "key-without-effect",
                    alone.Mark,
                    "'named' does nothing here: the condition takes no figure",
                    "say 'figure: mm', or take it out"
                );
            return null;
        }

        if (fields.TextOf(node) is not { } symbol || Unit.Find(symbol) is not { } unit)
        {
            fields.Add(
                "not-a-word",
                node.Mark,
                $"'{fields.TextOf(node)}' is not a known unit",
                "a unit such as mm, in or km/h, for the kind of figure"
            );
            return null;
        }

        var named = fields.Text("named") ?? $"{term.Name}-{FiguredCondition.Place}";
        if (
            !named.Contains(FiguredCondition.Place, StringComparison.Ordinal)
            || !term.Definition.Contains(FiguredCondition.Place, StringComparison.Ordinal)
        )
            fields.Add(
                "not-well-formed",
                fields.Mark,
                $"{FiguredCondition.Place} stands neither for the figure in the name nor in the definition",
                $"write {FiguredCondition.Place} where the figure goes"
            );
        return new FiguredCondition(term.Name, unit.Dimension, term with { Name = named });
    }
}
