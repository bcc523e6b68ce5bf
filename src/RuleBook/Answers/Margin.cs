using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>How far a measure may go within each pathway, the rest of the job unchanged.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Now">What it is in the job; null where not known.</param>
/// <param name="Reaches">Up from zero, from the least to the most onerous pathway, prohibited left out.</param>
public sealed record Margin(Measure Measure, Fraction? Now, ImmutableArray<PathwayReach> Reaches)
{
    /// <summary>
    /// The same down from zero, as magnitudes: how far it may be lowered or made smaller. Empty for a measure that is never negative.
    /// </summary>
    public ImmutableArray<PathwayReach> Downward { get; init; } = [];

    /// <summary>
    /// Where a job states what is not known and on which hangs how far it may go: paths such as <c>vehicle.ratings.gvm</c>.
    /// </summary>
    public ImmutableArray<string> Open { get; init; } = [];
}

/// <summary>How far one pathway reaches.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="Certain">Up to here it is this pathway or an easier one, whatever is not known.</param>
/// <param name="Possible">
/// Up to here it may be, where a fact or a rule is not known; as <paramref name="Certain"/> where all is known.
/// </param>
public sealed record PathwayReach(Pathway Pathway, Reach Certain, Reach Possible);

/// <summary>An end of what is allowed, counted from zero.</summary>
/// <param name="Kind">None, up to a value, or without end.</param>
/// <param name="Value">The value, in base units; null unless <paramref name="Kind"/> is <see cref="ReachKind.UpTo"/>.</param>
/// <param name="Closed">Whether the value itself is allowed.</param>
public readonly record struct Reach(ReachKind Kind, Fraction? Value, bool Closed)
{
    /// <summary>Not even zero.</summary>
    public static Reach None { get; } = new(ReachKind.None, null, false);

    /// <summary>No limit.</summary>
    public static Reach Unlimited { get; } = new(ReachKind.Unlimited, null, false);
}

/// <summary>What kind of end there is.</summary>
public enum ReachKind
{
    /// <summary>Not even zero is allowed.</summary>
    None,

    /// <summary>Allowed up to a value.</summary>
    UpTo,

    /// <summary>Allowed without end.</summary>
    Unlimited,
}
