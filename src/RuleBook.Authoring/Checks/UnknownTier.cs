using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An exception to a tier that is not there.</summary>
internal static class UnknownTier
{
    internal static readonly CheckInfo Info = new(
        "unknown-tier",
        "an exception changes a tier that the adopted rule does not have",
        "The exception would change nothing.",
        "name a tier of the adopted rule (its name, or its pathway where it has none)"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        let tiers = Adopted.Tiers(book, pair.Adoption)
        where tiers.Length > 0
        from change in pair.Adoption.Exceptions
        let named = change.Tier
        where named is not null && tiers.All(tier => tier.Name != named)
        select Info.At(
            book.Value(change.Mark, "tier"),
            $"'{pair.Adoption.Rule}' has no tier '{named}'",
            Spelling.Tip(named ?? "", [.. tiers.Select(tier => tier.Name)])
        );
}
