using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>The smallest changes of a job after which it reaches an easier pathway, or nothing stands in its way.</summary>
/// <param name="Goal">What they reach.</param>
/// <param name="Changes">One change, or two together.</param>
/// <param name="After">The answer of the job so changed.</param>
/// <param name="Breaks">What stands in the way then and did not before; empty where nothing does.</param>
/// <param name="ToShow">Conditions, by title, that are to be shown then and were not before.</param>
public sealed record Remedy(
    RemedyGoal Goal,
    ImmutableArray<RemedyChange> Changes,
    Assessment After,
    ImmutableArray<Blocker> Breaks,
    ImmutableArray<string> ToShow
);

/// <summary>What a remedy reaches.</summary>
/// <param name="Within">The pathway, or an easier one, whatever is not known; null where only the blockers are to go.</param>
public readonly record struct RemedyGoal(Pathway? Within)
{
    /// <summary>
    /// Nothing that can be mended stands in the way, whatever the pathway that permits it; what is open or nobody judged stays so.
    /// </summary>
    public static RemedyGoal NoBlocker { get; } = new(null);

    /// <summary>What stands in the way of an answer and a change could mend.</summary>
    internal static IEnumerable<Blocker> Mendable(Assessment answer) =>
        answer.Blockers.Where(blocker => blocker.Kind != BlockerKind.NotJudged);

    /// <summary>Whether an answer reaches it.</summary>
    internal bool IsReachedBy(Assessment answer) =>
        Within is { } pathway
            ? !answer.JudgesNothing && answer.Between.Worst <= pathway
            : !Mendable(answer).Any() && answer.Between.Best < Pathway.Prohibited;
}

/// <summary>One change that a workshop can make.</summary>
/// <param name="Lever">What is changed.</param>
/// <param name="Path">Path of the job that changes.</param>
/// <param name="From">What it is in the job, as written; null where it is not stated.</param>
/// <param name="To">What it becomes, as it would be written; null where it is left out.</param>
/// <param name="Names">What is left off or added, by name; empty where the change has none.</param>
/// <param name="Cost">How much changes, in base units, never negative; null where that has no measure.</param>
/// <param name="Unit">Unit in which the cost is told.</param>
public sealed record RemedyChange(
    RemedyLever Lever,
    string Path,
    string? From,
    string? To,
    ImmutableArray<string> Names,
    Fraction? Cost,
    Unit? Unit
)
{
    /// <summary>Makes the change in a job as written.</summary>
    internal Func<Mapping, Mapping> Apply { get; init; } = job => job;
}

/// <summary>What a workshop can change, in the order in which remedies are told.</summary>
public enum RemedyLever
{
    /// <summary>Less lift by the suspension.</summary>
    SuspensionLift,

    /// <summary>Lower body blocks, or none.</summary>
    BodyLift,

    /// <summary>Another tyre size.</summary>
    Tyres,

    /// <summary>Constant load on the axle that the springs raise.</summary>
    ConstantLoad,

    /// <summary>Another GVM asked for.</summary>
    Gvm,

    /// <summary>Accessories left off.</summary>
    Accessories,

    /// <summary>A lighter trailer.</summary>
    Trailer,

    /// <summary>Less load on the ball.</summary>
    BallLoad,

    /// <summary>A later day, when an announced rule is in force.</summary>
    Day,
}
