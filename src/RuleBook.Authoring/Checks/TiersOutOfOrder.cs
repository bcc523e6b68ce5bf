using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A pathway that is less onerous than an earlier one for the same vehicle.</summary>
internal static class TiersOutOfOrder
{
    internal static readonly CheckInfo Info = new(
        "tiers-out-of-order",
        "a tier is less onerous than one before it",
        "Tiers are tried in order, and the first that holds gives the pathway: the more onerous one would be given without need.",
        "put the least onerous first"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Versions.Select(pair => pair.Version)
            .Where(version => version.Content is Stated)
            .SelectMany(version => Found(book, version, (Stated)version.Content));

    private static IEnumerable<Problem> Found(Inspected book, RuleVersion version, Stated stated)
    {
        for (var later = 1; later < stated.Tiers.Length; later++)
        {
            var tier = stated.Tiers[later];
            var earlier = stated.Tiers.Take(later).Where(each => each.Pathway > tier.Pathway && !Ranges.Exclude(each.When, tier.When));
            if (earlier.FirstOrDefault() is { } before)
                yield return Info.At(
                    book.Value(tier.Mark, "pathway"),
                    $"the tier '{tier.Name}' comes after '{before.Name}', which is more onerous"
                );
        }

        if (stated is { Beyond: { } beyond, Tiers: [.., var last] } && beyond < last.Pathway && last.When.Tests.IsEmpty)
            yield return Info.At(
                book.Value(version.Mark, "beyond"),
                $"beyond the last tier, '{last.Name}', a less onerous pathway is given"
            );
    }
}
