using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Authoring.Walk;

/// <summary>What is wrong with a book as a whole of answers, not with a word in it.</summary>
public enum FaultKind
{
    /// <summary>Between two versions of a rule nothing is recorded.</summary>
    Hole,

    /// <summary>No rule of the topic covers the vehicle.</summary>
    NotCovered,

    /// <summary>The answer gets easier when a measure grows.</summary>
    Easier,

    /// <summary>A tier that no job can reach.</summary>
    Unreachable,

    /// <summary>What is answered while a fact is not known leaves out what is answered once it is known.</summary>
    Contradiction,
}

/// <summary>A fault, with a job that shows it.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Rule">Full id of the rule, or the topic of a jurisdiction.</param>
/// <param name="Mark">Where it is written.</param>
/// <param name="Text">What is wrong, in one sentence.</param>
/// <param name="Witness">A point that shows it; null for a tier that no point reaches.</param>
public sealed record WalkFault(FaultKind Kind, string Rule, Mark Mark, string Text, Witness? Witness);

/// <summary>What was walked and what was found.</summary>
/// <param name="Rules">Rules.</param>
/// <param name="Spans">Stretches of days, over all rules.</param>
/// <param name="Cells">Witnesses tried: cells and boundaries, for each class of vehicles, stretch of days and condition.</param>
/// <param name="Tiers">Tiers that some witness reaches.</param>
/// <param name="Partial">Comparisons of partial with full knowledge.</param>
/// <param name="Faults">At most one of a kind for each rule and place.</param>
public sealed record WalkReport(int Rules, int Spans, long Cells, int Tiers, long Partial, ImmutableArray<WalkFault> Faults)
{
    internal static WalkReport Empty { get; } = new(0, 0, 0, 0, 0, []);

    internal WalkReport And(WalkReport other) =>
        new(
            Rules + other.Rules,
            Spans + other.Spans,
            Cells + other.Cells,
            Tiers + other.Tiers,
            Partial + other.Partial,
            Faults.AddRange(other.Faults)
        );
}
