using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Site.Limits;

/// <summary>The days on which something changes: between two of them every table stays the same.</summary>
internal static class ChangeDays
{
    public static ImmutableArray<DateOnly> Of(IEnumerable<Jurisdiction> places) =>
        [
            .. places
                .SelectMany(place =>
                    place
                        .Rules.SelectMany(rule => rule.Versions)
                        .Where(version => version.Decides)
                        .SelectMany(version => Ends(version.From, version.InForceBy, version.Until))
                        .Concat(
                            place
                                .Schemes.SelectMany(scheme => scheme.Versions)
                                .SelectMany(version => Ends(version.From, version.InForceBy, version.Until))
                        )
                )
                .Distinct()
                .Order(),
        ];

    /// <summary>The last change day that is not after <paramref name="day"/>; the first one when all are later.</summary>
    public static DateOnly At(ImmutableArray<DateOnly> days, DateOnly day) =>
        days.Where(change => change <= day).DefaultIfEmpty(days.FirstOrDefault()).Max();

    private static IEnumerable<DateOnly> Ends(PartialDate? from, PartialDate? by, PartialDate? until)
    {
        if (from is not null)
            yield return from.Earliest;
        if (from is not null)
            yield return from.Latest;
        if (by is not null)
            yield return by.Latest;
        if (until is not null)
            yield return until.Earliest;
        if (until is not null)
            yield return until.Latest;
    }
}
