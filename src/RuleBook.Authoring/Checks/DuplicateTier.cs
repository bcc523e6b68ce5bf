using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>
/// Two tiers of one name in a version; a tier without a name is called after its pathway. The alternatives of one tier have its name and
/// place.
/// </summary>
internal static class DuplicateTier
{
    internal static readonly CheckInfo Info = new(
        "duplicate-tier",
        "two tiers of a version have the same name",
        "An exception of an adopting jurisdiction names the tier that it changes.",
        "give each a 'name'"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .TierLists.SelectMany(tiers => Repeats.Of(tiers.DistinctBy(tier => (tier.Name, tier.Mark)), tier => tier.Name))
            .Select(tier => Info.At(tier.Mark, $"another tier of this version is already called '{tier.Name}'"));
}
