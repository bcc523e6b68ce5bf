using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>The days on which the version in force, or what may be in force, changes.</summary>
internal static class DayEdges
{
    private const int LongestChain = 8;

    /// <summary>Asked where no date is recorded at all, so that every day is alike.</summary>
    private static readonly DateOnly AnyDay = new(2000, 1, 1);

    /// <summary>
    /// A day before anything is recorded, and every first day of a stretch on which the same versions are or may be in force; adoption that
    /// moves brings in the days of the adopted rule.
    /// </summary>
    public static ImmutableArray<DateOnly> Of(Book book, IEnumerable<Rule> rules)
    {
        DateOnly[] edges = [.. rules.SelectMany(rule => Of(book, rule, 0)).Distinct().Order()];
        return edges.Length == 0 ? [AnyDay] : [edges[0].AddDays(-1), .. edges];
    }

    /// <summary>The first and last day that each date of a rule can be, and those of the rules that it adopts as amended.</summary>
    private static IEnumerable<DateOnly> Of(Book book, Rule rule, int depth)
    {
        if (depth > LongestChain)
            yield break;
        foreach (var version in rule.Versions.Where(version => version.Decides))
        {
            foreach (var date in new[] { version.From, version.Until }.OfType<PartialDate>())
            foreach (var day in (DateOnly[])[date.Earliest, date.Latest])
                yield return day;
            if (version.InForceBy is { } by)
                yield return by.Latest;
            if (version.Content is not Adoption { AsOf: null } adoption || book.Rule(adoption.Rule) is not { } adopted)
                continue;
            foreach (var day in Of(book, adopted, depth + 1))
                yield return day;
        }
    }
}
