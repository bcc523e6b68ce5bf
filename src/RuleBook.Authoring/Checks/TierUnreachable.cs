using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A tier that an earlier one with the same or a weaker 'when' covers.</summary>
internal static class TierUnreachable
{
    internal static readonly CheckInfo Info = new(
        "tier-unreachable",
        "a tier can never be reached",
        "Whatever meets its limits already meets those of an earlier tier.",
        "widen it, narrow the earlier one, or take it out"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book.TierLists.SelectMany(tiers =>
            tiers
                .Select((tier, index) => (tier, earlier: tiers.Take(index).FirstOrDefault(earlier => Covers(earlier, tier))))
                .Where(pair => pair.earlier is not null)
                .Select(pair =>
                    Info.At(
                        pair.tier.Mark,
                        pair.tier.Mark == pair.earlier!.Mark
                            ? $"whatever meets one alternative of the tier '{pair.tier.Name}' meets another before it"
                            : $"whatever meets the tier '{pair.tier.Name}' meets '{pair.earlier.Name}' before it"
                    )
                )
        );

    /// <summary>Whether whatever meets <paramref name="later"/> meets <paramref name="earlier"/>.</summary>
    internal static bool Covers(Tier earlier, Tier later) =>
        Ranges.Implies(later.When, earlier.When)
        && earlier.Provided.All(condition => later.Provided.Contains(condition))
        && earlier.Limits.All(limit =>
            limit.Kind == LimitKind.None
            || (
                limit.Bounds is { } outer
                && later.Limits.Any(inner => inner.Measure == limit.Measure && inner.Bounds is { } bounds && Ranges.Inside(bounds, outer))
            )
        );
}
