using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>The same tiers, limits and conditions as a rule of the nation, or as one that others adopt.</summary>
internal static class HandCopy
{
    internal static readonly CheckInfo Info = new(
        "hand-copy",
        "a rule is copied by hand instead of adopted",
        "When the original is corrected, the copy stays wrong.",
        "say 'adopts' with the rule, and 'except' for what differs"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var adopted = book.Adoptions.Select(pair => book.Book.Rule(pair.Adoption.Rule)?.Id).ToHashSet(StringComparer.Ordinal);
        var stated = book
            .Versions.Where(pair =>
                pair.Version.Content is Stated { Tiers: var tiers } && tiers.Any(tier => tier.Limits.Any(limit => limit.Bounds is not null))
            )
            .Select(pair => (pair.Rule, pair.Version, Says: Says((Stated)pair.Version.Content)))
            .ToArray();
        foreach (var copy in stated)
        {
            var nation = book.Book.Jurisdiction(copy.Rule.Jurisdiction)?.Within;
            var original = stated.FirstOrDefault(other =>
                other.Says == copy.Says
                && other.Rule.Topic == copy.Rule.Topic
                && other.Rule.Jurisdiction != copy.Rule.Jurisdiction
                && (other.Rule.Jurisdiction == nation || (adopted.Contains(other.Rule.Id) && !adopted.Contains(copy.Rule.Id)))
            );
            if (original.Rule is not null)
                yield return Info.At(book.Key(copy.Version.Mark, "tiers"), $"the tiers are those of '{original.Rule.Id}', copied by hand");
        }
    }

    private static string Says(Stated stated) => string.Join('\n', stated.Tiers.Select(Says).Append($"{stated.Beyond}"));

    private static string Says(Tier tier) =>
        string.Join(
            '|',
            tier.Pathway,
            string.Join(';', tier.When.Tests.Select(test => $"{test.Fact} {string.Join(',', test.OneOf.Order())} {test.Bounds}").Order()),
            string.Join(';', tier.Limits.Select(limit => $"{limit.Measure} {limit.Kind} {limit.Bounds}").Order()),
            string.Join(';', tier.Provided.Order())
        );
}
