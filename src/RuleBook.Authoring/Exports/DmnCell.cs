using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Authoring.Exports;

/// <summary>What one input may be in a row of a decision table, as a unary test of FEEL.</summary>
/// <param name="OrUnknown">Whether nothing need be known of it.</param>
internal abstract record DmnCell(bool OrUnknown)
{
    /// <summary>The test as it is written.</summary>
    public string Text => OrUnknown ? $"null, {Known}" : Known;

    /// <summary>The test of what is known.</summary>
    protected abstract string Known { get; }

    /// <summary>Both at once; null where nothing can be both.</summary>
    public abstract DmnCell? And(DmnCell other);
}

/// <summary>A number within bounds, of which at least one is there.</summary>
internal sealed record NumberCell(Func<Fraction, string> Write, Bound? Lower, Bound? Upper, bool OrUnknown) : DmnCell(OrUnknown)
{
    protected override string Known =>
        (Lower, Upper) switch
        {
            ({ } low, { } high) => $"{(low.Closed ? '[' : '(')}{Write(low.Value)}..{Write(high.Value)}{(high.Closed ? ']' : ')')}",
            ({ } low, null) => $"{(low.Closed ? ">=" : ">")} {Write(low.Value)}",
            (null, { } high) => $"{(high.Closed ? "<=" : "<")} {Write(high.Value)}",
            _ => throw new InvalidOperationException("a cell without bounds is none"),
        };

    public override DmnCell? And(DmnCell other)
    {
        var also = (NumberCell)other;
        var both = this with
        {
            Lower = Tighter(Lower, also.Lower, 1),
            Upper = Tighter(Upper, also.Upper, -1),
            OrUnknown = OrUnknown && also.OrUnknown,
        };
        return
            both is { Lower: { } low, Upper: { } high }
            && (low.Value > high.Value || (low.Value == high.Value && !(low.Closed && high.Closed)))
            ? null
            : both;
    }

    private static Bound? Tighter(Bound? left, Bound? right, int sign)
    {
        if (left is null || right is null)
            return left ?? right;
        var order = left.Value.CompareTo(right.Value) * sign;
        return order > 0 || (order == 0 && !left.Closed) ? left : right;
    }
}

/// <summary>One of some words, in the order of the vocabulary.</summary>
internal sealed record WordCell(ImmutableArray<string> Words, bool OrUnknown) : DmnCell(OrUnknown)
{
    protected override string Known => string.Join(", ", Words.Select(word => $"\"{word}\""));

    public override DmnCell? And(DmnCell other)
    {
        var also = (WordCell)other;
        var both = new WordCell([.. Words.Where(also.Words.Contains)], OrUnknown && also.OrUnknown);
        return both.Words.IsEmpty ? null : both;
    }
}
