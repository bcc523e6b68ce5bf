using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>Names the alternatives among the tiers of one pathway: <c>A suspension lift and growth in tyre diameter</c>, <c>B body lift alone</c>.</summary>
public static class Alternatives
{
    /// <summary>Letter and name of a tier; empty where its pathway has no other tier that this vehicle can take.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="tier">One of the tiers of its version.</param>
    public static string Of(Finding finding, Tier tier)
    {
        if (finding.Version.Content is not Stated stated) return "";
        var others = finding.Closed.Where(closed => !closed.Facts.IsEmpty).Select(closed => closed.Tier).ToHashSet();
        Tier[] same = [.. stated.Tiers.Where(each => each.Pathway == tier.Pathway && !others.Contains(each))];
        var at = Array.IndexOf(same, tier);
        return same.Length < 2 || at < 0 ? "" : $"{(char)('A' + at)} {Name(tier, finding)}";
    }

    private static string Name(Tier tier, Finding finding)
    {
        var titles = finding.Limits
            .Concat(finding.Closed.SelectMany(closed => closed.Limits))
            .GroupBy(check => check.Measure.Name)
            .ToDictionary(same => same.Key, same => same.First().Measure.Title);
        string[] open =
        [
            .. tier.Limits
                .Where(limit => limit.Bounds?.Upper is not { Value.IsPositive: false })
                .Select(limit => titles.GetValueOrDefault(limit.Measure, limit.Measure.Replace('-', ' ')))
                .Where(title => title != "total lift")
                .Distinct(),
        ];
        return open switch { [] => "within other limits", [var one] => $"{one} alone", [.. var first, var last] => $"{string.Join(", ", first)} and {last}" };
    }
}
