using Fractions;

namespace RuleBook.Rules;

/// <summary>One end of a range.</summary>
/// <param name="Value">In the base unit of the measure (mm, kg, %, days from the common era for dates).</param>
/// <param name="Closed">Whether the value itself is inside: "at most" is closed, "under" is open.</param>
public sealed record Bound(Fraction Value, bool Closed);

/// <summary>A range with open or closed ends; a missing end is unbounded.</summary>
/// <param name="Lower"><c>at-least</c> (closed) or <c>over</c> (open).</param>
/// <param name="Upper"><c>at-most</c> (closed) or <c>under</c> (open).</param>
public sealed record Bounds(Bound? Lower, Bound? Upper);
