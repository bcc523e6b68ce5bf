using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A version that starts before the one written before it.</summary>
internal static class VersionsOutOfOrder
{
    internal static readonly CheckInfo Info = new(
        "versions-out-of-order",
        "versions are not in the order of time",
        "A version ends where the next one begins.",
        "put the oldest first"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Dated
            .Pairs(book)
            .Where(pair =>
                pair is { Earlier.From: { } first, Later: var next }
                && (next.From ?? next.InForceBy) is { } then
                && (Dated.Before(then, first) || (then.IsExact && then == first))
            )
            .Select(pair =>
                Info.At(
                    book.Key(pair.Later.Mark, "from"),
                    $"{pair.Later.From ?? pair.Later.InForceBy} is not after {pair.Earlier.From}, where the version before it starts"
                )
            );
}
