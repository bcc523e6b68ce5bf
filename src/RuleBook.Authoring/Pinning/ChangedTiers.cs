using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>The tiers that a change touches, where it touches nothing else of a version.</summary>
/// <param name="Old">The version as it is.</param>
/// <param name="Now">The version with the change; its tiers stand in the same places.</param>
/// <param name="Tiers">Tiers that differ, as they are and as they become.</param>
internal sealed record ChangedTiers(ResolvedVersion Old, ResolvedVersion Now, ImmutableArray<(Tier Old, Tier Now)> Tiers)
{
    /// <summary>Null where more than tiers differs, or it is not certain which version is in force.</summary>
    public static ChangedTiers? Between(ImmutableArray<ResolvedVersion> old, ImmutableArray<ResolvedVersion> now) =>
        old is [{ Content: Stated before }] && now is [{ Content: Stated after }]
            && old[0].Rule.For == now[0].Rule.For && old[0].Parts.SequenceEqual(now[0].Parts)
            && before.Beyond == after.Beyond && before.Tiers.Length == after.Tiers.Length
            ? new ChangedTiers(old[0], now[0], [.. before.Tiers.Zip(after.Tiers).Where(pair => !ReferenceEquals(pair.First, pair.Second))])
            : null;

    /// <summary>Whether the answer can differ: a tier that holds on one side only, or one that may hold and gives or asks for something else.</summary>
    public bool Bear(FactSet facts) => Tiers.Any(pair =>
    {
        var (before, after) = (Within(pair.Old, Old, facts), Within(pair.Now, Now, facts));
        return before != after || (before != Truth.No && (pair.Old.Pathway != pair.Now.Pathway || pair.Old.Provided != pair.Now.Provided));
    });

    /// <summary>Whether a tier is open to the job, its conditions left aside; they are the same on both sides or differ.</summary>
    private static Truth Within(Tier tier, ResolvedVersion version, FactSet facts)
    {
        foreach (var limit in tier.Limits)
            if (Judge.Holds(limit, version, facts) == Truth.No) return Truth.No;
        return Judge.Holds(tier with { Provided = [] }, version, facts);
    }
}
