using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.InForce;

/// <summary>Versions that say the same of the same vehicles, compared without looking into what is the very same record.</summary>
internal sealed class SameContent : IEqualityComparer<ResolvedVersion>
{
    public static SameContent Instance { get; } = new();

    public bool Equals(ResolvedVersion? x, ResolvedVersion? y) =>
        ReferenceEquals(x, y) || (x is not null && y is not null && ReferenceEquals(x.Rule.For, y.Rule.For) && SaySame(x, y));

    public int GetHashCode(ResolvedVersion obj) => obj.Content.GetType().GetHashCode();

    /// <summary>Whether they say the same, whatever vehicles they bind.</summary>
    public static bool SaySame(ResolvedVersion left, ResolvedVersion right) =>
        left.WarningOnly == right.WarningOnly && Same(left.Content, right.Content) && left.Parts.SequenceEqual(right.Parts);

    private static bool Same(Content left, Content right) =>
        ReferenceEquals(left, right)
        || (left, right) switch
        {
            (Stated one, Stated other) => one.Beyond == other.Beyond
                && one.Tiers.Length == other.Tiers.Length
                && one.Tiers.Zip(other.Tiers).All(pair => Same(pair.First, pair.Second)),
            _ => left is not Stated && left.GetType() == right.GetType(),
        };

    private static bool Same(Tier left, Tier right) =>
        ReferenceEquals(left, right)
        || (
            left.Pathway == right.Pathway
            && ReferenceEquals(left.When, right.When)
            && Same(left.Limits, right.Limits)
            && left.Provided.SequenceEqual(right.Provided)
        );

    private static bool Same(ImmutableArray<Limit> left, ImmutableArray<Limit> right) =>
        left.Length == right.Length && left.Zip(right).All(pair => ReferenceEquals(pair.First, pair.Second));
}
