using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Views;

/// <summary>A version of a certification scheme.</summary>
internal sealed record SchemeView(
    string Title,
    string Dates,
    string Certifier,
    string AppointedBy,
    string Decides,
    string Accepts,
    IssuedView[] Issued,
    StepView[] Steps,
    string Reregistering,
    FeeView[] Fees,
    string[] NotEstablished,
    string Note,
    string Line,
    CitationView[] Sources
)
{
    /// <summary>The schemes that are or may be in force on the site's day.</summary>
    public static IEnumerable<SchemeView> Of(SiteBook site, Jurisdiction place) =>
        place.Schemes.SelectMany(scheme => InForce(scheme, site.Day).Select(version => Of(site, place, scheme, version)));

    public static IEnumerable<SchemeVersion> InForce(Scheme scheme, DateOnly day)
    {
        Timeline.Span[] spans = [.. scheme.Versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return Timeline.At(spans, day).Where(i => i >= 0).Select(i => scheme.Versions[i]);
    }

    private static SchemeView Of(SiteBook site, Jurisdiction place, Scheme scheme, SchemeVersion version) =>
        new(
            scheme.Title,
            Since(version.From, version.InForceBy),
            version.Certifier ?? "not established",
            version.AppointedBy ?? "not established",
            version.Decides switch
            {
                "certifier" => "the certifier",
                "authority" => "the authority",
                _ => "not established",
            },
            version.AcceptsAppointedIn switch
            {
                null => "not established",
                { IsEmpty: true } => "none",
                { } places => string.Join(", ", places.Select(site.PlaceName)),
            },
            [
                .. version.Issued.Select(issued => new IssuedView(
                    Wording.Of(issued.Pathway),
                    Phrases.Pathway(issued.Pathway),
                    string.Join(", ", issued.Papers)
                )),
            ],
            [
                .. version.Steps.Select(step => new StepView(
                    step.Text.Trim(),
                    step.BeforeWork,
                    string.Join(", ", step.Pathways.Select(Phrases.Pathway))
                )),
            ],
            version.Reregistering?.Trim() ?? "not established",
            [
                .. version.Fees.Select(fee => new FeeView(
                    fee.What,
                    $"{Numbers.Show(fee.Amount.Amount, 2)} {fee.Amount.Unit}",
                    fee.From.Words
                )),
            ],
            [.. version.NotEstablished],
            version.Note?.Trim() ?? "",
            Links.Line(version.Mark),
            CitationView.Of(site, place.Id, version.Sources)
        );

    private static string Since(PartialDate? from, PartialDate? by) =>
        (from, by) switch
        {
            ({ } day, _) => $"from {day.Words}",
            (_, { } day) => $"in force by {day.Words}, start not established",
            _ => "start not established",
        };
}

/// <summary>What is issued on a pathway.</summary>
internal sealed record IssuedView(string Pathway, string Words, string Papers);

/// <summary>A step.</summary>
internal sealed record StepView(string Text, bool BeforeWork, string Pathways);

/// <summary>A fee.</summary>
internal sealed record FeeView(string What, string Amount, string From);
