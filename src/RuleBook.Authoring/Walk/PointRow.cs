using System.Collections.Immutable;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>Points of a space placed on a table of some versions, one after another on the same row.</summary>
internal sealed class PointRow
{
    private readonly Input?[] measures;

    /// <summary>For versions in groups of which each may be in force.</summary>
    public PointRow(Vocabulary vocabulary, Axes axes, IEnumerable<ImmutableArray<ResolvedVersion>> groups)
        : this(TableBuilder.Build(vocabulary, [.. groups.Select(group => RuleInForce.Of(group))], []), axes) { }

    /// <summary>For a table of such versions.</summary>
    public PointRow(DecisionTable table, Axes axes)
    {
        Table = table;
        measures = [.. axes.Measures.Select(measure => Table.Find(measure.Name))];
        Row = Table.NewRow();
        foreach (var input in Table.Inputs.Where(input => input.Kind == InputKind.Measure))
            Row.Set(input, Interval.Anything);
    }

    public DecisionTable Table { get; }

    public Row Row { get; }

    /// <summary>Puts a point; a value that is null is not known.</summary>
    public void Put(Fraction[] point)
    {
        for (var axis = 0; axis < point.Length; axis++)
            Put(axis, point[axis]);
    }

    /// <summary>Puts one measure.</summary>
    public void Put(int axis, Fraction? value)
    {
        if (measures[axis] is not { } input)
            return;
        if (value is { } known)
            Row.Set(input, known);
        else
            Row.Set(input, Interval.Anything);
    }

    /// <summary>Puts what is known of one measure.</summary>
    public void Put(int axis, Interval known)
    {
        if (measures[axis] is { } input)
            Row.Set(input, known);
    }

    /// <summary>Puts the words about the vehicle; a fact that is not among them is not known.</summary>
    public void Put(ImmutableDictionary<string, string> words)
    {
        foreach (var input in Table.Inputs)
            if (input.Kind == InputKind.Word)
            {
                if (words.TryGetValue(input.Name, out var word))
                    Row.Set(input, word);
                else
                    Row.Forget(input);
            }
    }

    /// <summary>Puts a condition that is not met, or that is to be shown again.</summary>
    public void NotShown(string condition, bool notShown)
    {
        if (Table.Find(condition) is { } input)
            Row.Set(input, notShown ? false : null);
    }
}
