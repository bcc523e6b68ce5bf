using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Site.Views;

namespace RuleBook.Site.Pages;

/// <summary>Who certifies, as rows of the comparison.</summary>
internal static class CertificationRows
{
    public static RowGroup Of(SiteBook site, ImmutableArray<Jurisdiction> places, DateOnly day)
    {
        var title = site.Words.Topics.TryGetValue("certification", out var topic) ? topic.Title : "certification";
        return new RowGroup("certification", SiteBook.Heading(title), Links.Topic("certification"),
        [
            Row(places, day, "scheme", "scheme", (scheme, _) => scheme.Title),
            Row(places, day, "certifier", "who certifies", (_, version) => version.Certifier),
            Row(places, day, "appointed-by", "appointed by", (_, version) => version.AppointedBy),
            Row(places, day, "decides", "has the last word", (_, version) => version.Decides is { } word ? $"the {word}" : null),
            Row(places, day, "issued", "what is issued", (_, version) =>
                version.Issued.IsEmpty ? null : string.Join(", ", version.Issued.SelectMany(issued => issued.Papers).Distinct())),
        ]);
    }

    private static Row Row(ImmutableArray<Jurisdiction> places, DateOnly day, string id, string title, Func<Scheme, SchemeVersion, string?> read) => new(
        $"certification.{id}",
        title,
        $"{Links.Topic("certification")}#{id}",
        [.. places.Select(place => new ComparedCell(
            Lines(place, day, read), place.Schemes.IsEmpty ? "no scheme in the book" : "nothing recorded for this day"))]);

    private static CellRule[] Lines(Jurisdiction place, DateOnly day, Func<Scheme, SchemeVersion, string?> read) =>
    [
        .. place.Schemes
            .SelectMany(scheme => SchemeView.InForce(scheme, day).Select(version => read(scheme, version)))
            .Distinct()
            .Select(text => new CellRule(
                $"{Links.Jurisdiction(place.Id)}#certification",
                "",
                "",
                "",
                [new CellLine(text is null ? "not-established" : "limit", text ?? "not established", "", "", "", "")])),
    ];
}
