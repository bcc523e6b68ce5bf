using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>The dates of a version of a rule or scheme.</summary>
/// <param name="From">Start, where known.</param>
/// <param name="InForceBy">Where the start is unknown: the day by which it is seen in force.</param>
/// <param name="Until">Stated end.</param>
/// <param name="Mark">Where the version is written.</param>
internal sealed record Dated(PartialDate? From, PartialDate? InForceBy, PartialDate? Until, Mark Mark)
{
    /// <summary>The versions that decide, rule by rule and scheme by scheme, as written.</summary>
    internal static IEnumerable<Dated[]> Lists(Inspected book) =>
        book
            .Rules.Select(rule =>
                rule.Versions.Where(version => version.Decides)
                    .Select(version => new Dated(version.From, version.InForceBy, version.Until, version.Mark))
                    .ToArray()
            )
            .Concat(
                book.Book.Jurisdictions.SelectMany(place => place.Schemes)
                    .Select(scheme =>
                        scheme.Versions.Select(version => new Dated(version.From, version.InForceBy, version.Until, version.Mark)).ToArray()
                    )
            );

    /// <summary>Each version with the one that follows it.</summary>
    internal static IEnumerable<(Dated Earlier, Dated Later)> Pairs(Inspected book) =>
        Lists(book).SelectMany(list => list.Zip(list.Skip(1)));

    /// <summary>Whether <paramref name="one"/> is before <paramref name="other"/> whatever the days are.</summary>
    internal static bool Before(PartialDate one, PartialDate other) => one.Latest < other.Earliest;
}
