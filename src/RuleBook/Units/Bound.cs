using Fractions;

namespace RuleBook.Units;

/// <summary>One end of a range.</summary>
/// <param name="Value">In the base unit of the measure (mm, kg, %, days from the common era for dates).</param>
/// <param name="Closed">Whether the value itself is inside: "at most" is closed, "under" is open.</param>
public sealed record Bound(Fraction Value, bool Closed)
{
    private readonly Quantity? written;

    /// <summary>
    /// The value as the data has it, such as <c>27 in</c>; null where it is not written in the data. It is for showing only: two bounds
    /// that mean the same are equal however they are written, and a quantity that is not <see cref="Value"/> is never told.
    /// </summary>
    public Quantity? Written
    {
        get => written is { } quantity && quantity.Base == Value ? quantity : null;
        init => written = value;
    }

    /// <summary>
    /// For showing only: the figure of the law and how it is taken, where that moves it to <see cref="Value"/>; null where it does not.
    /// </summary>
    public string? Stated { get; init; }

    /// <summary>Whether both mean the same.</summary>
    public bool Equals(Bound? other) => other is not null && Value.Equals(other.Value) && Closed == other.Closed;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Value, Closed);

    /// <summary>The same for two bounds that mean the same.</summary>
    public override string ToString() => $"{(Closed ? "closed" : "open")} at {Value}";

    /// <summary>
    /// The value as written, with the value in <paramref name="unit"/> beside it where that is another unit: <c>27 in (685.8 mm)</c>.
    /// </summary>
    public string Show(Unit unit)
    {
        var amount = new Quantity(Value / unit.ToBase, unit).ToString();
        return Stated is { } stated ? $"{amount} ({stated})"
            : Written is { } quantity && quantity.Unit != unit ? $"{quantity} ({amount})"
            : amount;
    }
}

/// <summary>A range with open or closed ends; a missing end is unbounded.</summary>
/// <param name="Lower"><c>at-least</c> (closed) or <c>over</c> (open).</param>
/// <param name="Upper"><c>at-most</c> (closed) or <c>under</c> (open).</param>
public sealed record Bounds(Bound? Lower, Bound? Upper);
