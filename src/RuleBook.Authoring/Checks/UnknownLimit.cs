using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An exception to a limit that is not there.</summary>
internal static class UnknownLimit
{
    internal static readonly CheckInfo Info = new(
        "unknown-limit",
        "an exception replaces a limit that the adopted tier does not have",
        "An exception replaces a limit of the same measure; a new limit makes the tier another one.",
        "replace a limit that is there, or drop the tier and add one of your own"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        let tiers = Adopted.Tiers(book, pair.Adoption)
        from change in pair.Adoption.Exceptions
        let same = tiers.Where(tier => tier.Name == change.Tier).ToArray()
        where same.Length > 0
        from limit in change.Limits
        where !same.Any(tier => tier.Limits.Any(theirs => theirs.Measure == limit.Measure))
        select Info.At(limit.Mark, $"the tier '{change.Tier}' of '{pair.Adoption.Rule}' has no limit on {limit.Measure}");
}
