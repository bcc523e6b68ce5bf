using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>What one rule gives for a row.</summary>
/// <param name="Binds">Whether it binds.</param>
/// <param name="Outcome">The pathways possible; without a certificate where it does not bind.</param>
public readonly record struct RuleResult(Truth Binds, Outcome Outcome)
{
    /// <summary>Where it binds, the measures asking for a rule of their own of which it speaks, a bit each.</summary>
    internal ulong Speaks { get; init; }
}
