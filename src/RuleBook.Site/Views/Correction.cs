using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Site.Views;

/// <summary>A ready-made report of a wrong figure, to be completed by whoever found it.</summary>
internal static class Correction
{
    public static string Of(SiteBook site, ResolvedVersion version, Mark mark) =>
        string.Join(
            '\n',
            [
                $"Correction: {version.Rule.Id}, {Phrases.InForce(version)}",
                $"Data: {mark.File}:{mark.Line}",
                $"Book: {site.Book.Digest}",
                .. Carrying
                    .First(version)
                    .Take(1)
                    .Select(cited =>
                        $"Source: {cited.Source.Title}{(cited.Citation.Clause is { } clause ? $", {clause}" : "")} "
                        + $"({Phrases.ReadAs(cited.Source)})"
                    ),
                $"The book says: {Summary.Of(site, version.Content)}",
                "It should say: ",
                "Seen in (title, clause, date, address): ",
            ]
        );
}

/// <summary>The sources of a version in the order in which they matter to whoever doubts a figure.</summary>
internal static class Carrying
{
    /// <summary>Those that carry a figure first, then the rest; each in the order of the book.</summary>
    public static IEnumerable<CitedSource> First(ResolvedVersion version)
    {
        var figures = ((version.Content as Stated)?.Tiers ?? [])
            .SelectMany(tier => tier.Limits.Select(limit => version.Evidence.Of(tier, limit).Cited))
            .OfType<CitedSource>()
            .ToHashSet();
        return version.Sources.OrderByDescending(figures.Contains);
    }
}
