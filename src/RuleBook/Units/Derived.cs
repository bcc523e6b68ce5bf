namespace RuleBook.Units;

/// <summary>A measure's value with how it was derived.</summary>
/// <param name="Value">In base units.</param>
/// <param name="Derivation">One line that a reader can follow.</param>
internal sealed record Derived(Interval Value, string Derivation);
