using RuleBook.Answers;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Telling;

/// <summary>How far a version lets a vehicle go, in one line for a list of versions.</summary>
internal static class FurthestLimits
{
    /// <summary>
    /// On each pathway the furthest limit: on the total where the rule has one, otherwise on its first measure; empty where none is stated.
    /// </summary>
    /// <param name="book">The book, for the units.</param>
    /// <param name="version">The version.</param>
    public static string Of(Book book, RuleVersion version) =>
        version.Content is not Stated stated
            ? ""
            : string.Join(
                "; ",
                stated
                    .Tiers.GroupBy(tier => (tier.Pathway, When: When(tier)))
                    .Select(tiers =>
                        (tiers.Key.Pathway, tiers.Key.When, Limits: Furthest(book, [.. tiers.SelectMany(tier => tier.Limits)]))
                    )
                    .Select(tiers => $"{Wording.Of(tiers.Pathway)}{tiers.When} {tiers.Limits}".TrimEnd())
            );

    private static string When(Tier tier) =>
        string.Concat(tier.When.Tests.Where(test => test.Bounds is null).Select(test => $" ({test.Fact} {string.Join('/', test.OneOf)})"));

    private static string Furthest(Book book, Limit[] limits)
    {
        var measure = limits.Any(limit => limit.Measure == FactSet.TotalLift) ? FactSet.TotalLift : limits.FirstOrDefault()?.Measure;
        var own = limits.Where(limit => limit.Measure == measure).ToArray();
        if (own.MaxBy(limit => limit.Bounds?.Upper?.Value) is not { } furthest)
            return "";
        return furthest.Kind switch
        {
            LimitKind.None => $"{furthest.Measure} without limit",
            LimitKind.NotEstablished => $"{furthest.Measure} not established",
            _ when furthest.Bounds!.Upper is { } upper =>
                $"{furthest.Measure} {new Cell(book.Vocabulary.Measures[furthest.Measure], null, upper).Label}",
            _ => $"{furthest.Measure} {new Cell(book.Vocabulary.Measures[furthest.Measure], furthest.Bounds.Lower, null).Label}",
        };
    }
}
