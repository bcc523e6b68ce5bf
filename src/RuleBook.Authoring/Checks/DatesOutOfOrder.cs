using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An end that is not after the start.</summary>
internal static class DatesOutOfOrder
{
    internal static readonly CheckInfo Info = new(
        "dates-out-of-order",
        "a version ends before it begins",
        "It would never be in force.",
        "correct one of the two dates"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Dated
            .Lists(book)
            .SelectMany(list => list)
            .Where(version =>
                version is { Until: { } until } && (version.From ?? version.InForceBy) is { } start && until.Latest <= start.Earliest
            )
            .Select(version =>
                Info.At(book.Key(version.Mark, "until"), $"until {version.Until} is not after {version.From ?? version.InForceBy}")
            );
}
