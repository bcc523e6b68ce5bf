using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>
/// Names the alternatives among the tiers of one pathway: <c>A suspension lift and growth in tyre diameter</c>, <c>B body lift alone</c>.
/// </summary>
internal static class Alternatives
{
    /// <summary>Letter and name of a tier; empty where its pathway has no other tier that this vehicle can take.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="tier">One of the tiers of its version.</param>
    public static string Of(Finding finding, Tier tier)
    {
        if (finding.Version.Content is not Stated stated)
            return "";
        var others = finding.Closed.Where(closed => !closed.Facts.IsEmpty).Select(closed => closed.Tier).ToHashSet();
        Tier[] same = [.. stated.Tiers.Where(each => each.Pathway == tier.Pathway && !others.Contains(each))];
        var at = Array.IndexOf(same, tier);
        return same.Length < 2 || at < 0 ? "" : $"{(char)('A' + at)} {Name(tier.Limits, Title)}";

        string Title(string measure) => finding.Judged.Table.Vocabulary.Measures[measure].Title;
    }

    /// <summary>The name of an alternative: what its limits leave open.</summary>
    /// <param name="limits">All limits of the tier.</param>
    /// <param name="title">The title of a measure by its name.</param>
    public static string Name(IEnumerable<Limit> limits, Func<string, string> title)
    {
        string[] open =
        [
            .. limits
                .Where(limit => limit.Measure != KnownWords.TotalLift && limit.Bounds?.Upper is not { Value.IsPositive: false })
                .Select(limit => title(limit.Measure))
                .Distinct(),
        ];
        return open switch
        {
            [] => "within other limits",
            [var one] => $"{one} alone",
            [.. var first, var last] => $"{string.Join(", ", first)} and {last}",
        };
    }
}
