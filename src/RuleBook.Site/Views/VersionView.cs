using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>A version in force, with every adoption followed, as a jurisdiction's page shows it.</summary>
internal sealed record VersionView(
    string Dates,
    string Marks,
    string Kind,
    Link[] Adopted,
    TierView[] Tiers,
    string Beyond,
    string BeyondWords,
    string Why,
    string Open,
    Link? Indication,
    string Measured,
    DisputeView[] Disputes,
    string[] Notes,
    CitationView[] Sources,
    string Line,
    string Place,
    string Report,
    string? ReportUrl,
    string? ReportMail
)
{
    public static VersionView Of(SiteBook site, ResolvedVersion version, bool certain)
    {
        var mark = Links.Mark(version);
        var stated = version.Content as Stated;
        var unknown = version.Content as NotEstablished;
        var report = Correction.Of(site, version, mark);
        return new VersionView(
            Phrases.InForce(version),
            Trust.Marks(version, certain),
            version.Content switch
            {
                Stated => "stated",
                NotRegulated => "not-regulated",
                _ => "not-established",
            },
            [.. version.Adopted.Select(step => Adoption(site, step))],
            [.. (stated?.Tiers ?? []).Select(tier => TierView.Of(site, version.Rule.Jurisdiction, tier))],
            stated is null ? ""
                : stated.Beyond is { } beyond ? Wording.Of(beyond)
                : "not-established",
            stated is null ? ""
                : stated.Beyond is { } words ? Phrases.Pathway(words)
                : "not established",
            Sentence((version.Content as NotRegulated)?.Why ?? unknown?.Ask),
            Sentence(unknown?.Open),
            unknown?.Indication is { } id && site.Book.Rule(id) is { } indicated ? new Link(indicated.Title, Links.Rule(indicated)) : null,
            version.Measured is { } measured ? MeasuredWords.Of(measured, site.MeasureTitle) : "",
            [.. version.Disputes.Select(dispute => DisputeView.Of(dispute))],
            [.. NoteWords.Of(version).Distinct()],
            [.. Carrying.First(version).Select(CitationView.Of).Distinct()],
            Links.Line(mark),
            $"{mark.File}, line {mark.Line}",
            report,
            Links.Web(site.Input.ReportTo) is { } to ? to + Uri.EscapeDataString(report) : null,
            Links.Mail(site.Input.ReportMail, $"Correction: {version.Rule.Id}", report)
        );
    }

    private static string Sentence(string? text) =>
        text?.Trim() is { Length: > 0 } said
            ? said[^1] is '.' or '?' or '!'
                ? said
                : $"{said}."
            : "";

    private static Link Adoption(SiteBook site, AdoptionStep step) =>
        new(
            $"adopts {site.Book.Rule(step.Rule)?.Title ?? step.Rule} as "
                + $"{(step.Moving ? "amended from time to time, looked up on" : "it stood on")} {Phrases.Day(step.AsOf)}",
            site.Book.Rule(step.Rule) is { } rule ? Links.Rule(rule) : "index.html"
        );
}

/// <summary>A disagreement of sources.</summary>
internal sealed record DisputeView(string About, string[] Readings, string Taken, string Because)
{
    public static DisputeView Of(Dispute dispute) =>
        new(dispute.About, [.. dispute.Readings.Select(reading => reading.Says)], dispute.Taken, dispute.Because.Trim());
}
