using RuleBook.Law;

namespace RuleBook.Site.Views;

/// <summary>What leans on a source: the rule, scheme or caution that cites it, and what of it the citation carries.</summary>
internal sealed record LeaningView(string Place, string Title, string Url, string Clause, string Carries, string Note)
{
    /// <summary>Every citation of the book, by the jurisdiction and id of its source.</summary>
    public static ILookup<(string Jurisdiction, string Id), LeaningView> All(SiteBook site) =>
        site.Places.SelectMany(place => Of(site, place)).Distinct().ToLookup(pair => pair.Source, pair => pair.View);

    private static IEnumerable<((string, string) Source, LeaningView View)> Of(SiteBook site, Jurisdiction place) =>
        [
            .. place.Rules.SelectMany(rule =>
                rule.Versions.SelectMany(version =>
                    Of(version)
                        .SelectMany(part =>
                            View(site, place, part.Citation, $"{rule.Title}, {Start(version)}{part.Where}", Links.Version(rule, version))
                        )
                )
            ),
            .. place.Schemes.SelectMany(scheme =>
                scheme.Versions.SelectMany(version =>
                    Of(version)
                        .SelectMany(part =>
                            View(site, place, part.Citation, $"{scheme.Title}{part.Where}", $"{Links.Jurisdiction(place.Id)}#certification")
                        )
                )
            ),
            .. place.Cautions.SelectMany(caution =>
                caution.Sources.SelectMany(citation =>
                    View(site, place, citation, $"Caution: {caution.Text.Trim()}", $"{Links.Jurisdiction(place.Id)}#cautions")
                )
            ),
        ];

    private static IEnumerable<((string, string) Source, LeaningView View)> View(
        SiteBook site,
        Jurisdiction place,
        Citation citation,
        string title,
        string url
    )
    {
        if (site.Book.Source(place.Id, citation.Cite) is { } source)
        {
            yield return (
                (source.Jurisdiction, source.Id),
                new LeaningView(place.Name, title, url, citation.Clause ?? "", CarriedWords.Of(site, citation.Carries), citation.Note ?? "")
            );
        }
    }

    private static IEnumerable<(Citation Citation, string Where)> Of(RuleVersion version) =>
        [
            .. version.Sources.Select(citation => (citation, "")),
            .. version.Disputes.SelectMany(dispute =>
                dispute.Readings.SelectMany(reading => reading.Sources).Select(citation => (citation, $", disputed: {dispute.About}"))
            ),
            .. version.Content switch
            {
                Stated stated => stated.Tiers.SelectMany(tier => tier.Sources.Select(citation => (citation, $", {Plain(tier.Name)}"))),
                Adoption adoption => adoption.Exceptions.SelectMany(change =>
                    change.Sources.Concat(change.Added?.Sources ?? []).Select(citation => (citation, ", exception"))
                ),
                _ => [],
            },
        ];

    private static IEnumerable<(Citation Citation, string Where)> Of(SchemeVersion version) =>
        [
            .. version.Sources.Select(citation => (citation, "")),
            .. version.Steps.SelectMany(step => step.Sources).Select(citation => (citation, ", a step")),
            .. version.Fees.SelectMany(fee => fee.Sources.Select(citation => (citation, $", fee: {fee.What}"))),
        ];

    private static string Start(RuleVersion version) =>
        version switch
        {
            { From: { } from } => $"from {from.Words}",
            { Announced: { } announced } => $"announced for {announced.Words}",
            { Proposed: true } => "proposed",
            { InForceBy: { } by } => $"in force by {by.Words}",
            _ => "start not established",
        };

    private static string Plain(string name) => name.Replace('-', ' ');
}
