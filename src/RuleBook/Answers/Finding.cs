using System.Collections.Immutable;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>What one rule gives.</summary>
/// <param name="Version">The version that is, or may be, in force.</param>
/// <param name="Certain">False when another version may be in force instead.</param>
/// <param name="Outcome">The pathways that it can give.</param>
/// <param name="Tier">The tier that decides, or the easiest one that may; null when no tier holds or none is stated.</param>
/// <param name="Limits">Its limits against the job.</param>
/// <param name="Exceeded">Limits of easier tiers that the job does not keep.</param>
/// <param name="Conditions">Its conditions.</param>
/// <param name="TierSources">Sources of the deciding tier, beside the version's.</param>
/// <param name="Indication">What a national guideline would give where nothing is established; never the verdict.</param>
public sealed record Finding(
    ResolvedVersion Version,
    bool Certain,
    Outcome Outcome,
    Tier? Tier,
    ImmutableArray<LimitCheck> Limits,
    ImmutableArray<LimitCheck> Exceeded,
    ImmutableArray<ConditionState> Conditions,
    ImmutableArray<CitedSource> TierSources,
    Indication? Indication
)
{
    /// <summary>The version on the row that was judged.</summary>
    internal VersionOnRow Judged { get; init; }

    /// <summary>Whether the rule is one for this vehicle; unknown where a fact that would tell is not stated.</summary>
    public Truth Binds => Judged.Binds;

    /// <summary>The tiers that are closed to the job and easier than what it gets, in order, each with what closed it.</summary>
    public ImmutableArray<ClosedTier> Closed { get; init; } = [];

    /// <summary>
    /// The reason of the outcome: what closed the last pathway that was still open, one entry for each of its alternatives. Tiers meant for
    /// other vehicles count only where nothing else is closed, and a prohibition that does not reach the job is no reason.
    /// </summary>
    public ImmutableArray<ClosedTier> Reason
    {
        get
        {
            ClosedTier[] allowing = [.. Closed.Where(closed => closed.Tier.Pathway != Pathway.Prohibited)];
            var meant = allowing.Where(closed => closed.Facts.IsEmpty).ToArray();
            var from = meant.Length > 0 ? meant : allowing;
            return from.Length == 0 ? [] : [.. from.Where(closed => closed.Tier.Pathway == from.Max(each => each.Tier.Pathway))];
        }
    }
}

/// <summary>A limit against the job.</summary>
/// <param name="Tier">The tier whose limit it is.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Value">What is known of the measure.</param>
/// <param name="Holds">Whether it is kept.</param>
public sealed record LimitCheck(Tier Tier, Measure Measure, Limit Limit, Interval Value, Truth Holds)
{
    /// <summary>What the measurement says with its uncertainty; null where the value was not measured.</summary>
    public GuardedResult? Guarded { get; init; }

    /// <summary>
    /// The end that is broken, or else the nearer one: the upper end where both are as near, or where the value is not known.
    /// </summary>
    public Bound? Bound =>
        Limit.Bounds switch
        {
            null => null,
            { Lower: null, Upper: var upper } => upper,
            { Lower: var lower, Upper: null } => lower,
            { Lower: { } lower, Upper: { } upper } when Value.Exact is { } value => value - lower.Value < upper.Value - value
                ? lower
                : upper,
            { Lower: { } lower, Upper: var upper } => Value.High is { } high && high < lower.Value ? lower : upper,
        };

    /// <summary>Whether <see cref="Bound"/> is an upper one.</summary>
    public bool IsUpper => ReferenceEquals(Bound, Limit.Bounds?.Upper);

    /// <summary>What is left to the bound; negative when it is passed; null when the value is not known.</summary>
    public Fraction? Margin =>
        Bound is { } bound && Value.Exact is { } value ? (IsUpper ? bound.Value - value : value - bound.Value) : null;
}

/// <summary>A condition of a tier.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="State">Met, not met, or still to be shown.</param>
public sealed record ConditionState(Term Condition, Truth State);

/// <summary>What a guideline would give.</summary>
/// <param name="Rule">Full id of the rule.</param>
/// <param name="Outcome">What it would give.</param>
public sealed record Indication(string Rule, Outcome Outcome);
