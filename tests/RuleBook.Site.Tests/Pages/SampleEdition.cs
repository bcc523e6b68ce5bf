using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Site.Tests.Pages;

/// <summary>
/// A comparison with an earlier edition. The example is Queensland's amendment of 26 October 2018: suspension and tyres need no certificate
/// up to 75 mm with stability control either (jurisdictions/au-qld/sources.yaml: the department's notice, standards-notifications-2018, for
/// the day; the minister's release, ministers-release-2018-09-20, for the rest).
/// </summary>
internal static class SampleEdition
{
    public static Rule Raise { get; } = TheBook.Input.Book.Rule("au-qld/ride-height/raise-four-wheel-drive")!;

    public static ChangedAnswer Freed { get; } =
        new(
            "au-qld",
            "ride height",
            "four-wheel drive yes, electronic stability control yes",
            "from 26 October 2018",
            new Outcome(Pathway.Certificate, Pathway.Certificate),
            new Outcome(Pathway.NoCertificate, Pathway.NoCertificate),
            Raise.Id,
            Raise.Mark,
            "suspension lift 50 mm",
            "suspension lift 50 mm, growth in tyre diameter 50 mm",
            "registered-in: au-qld\non: 2018-10-26\n"
        );

    /// <summary>One of each kind: decided, undecided, left by the book, and beside the answers.</summary>
    public static EditionChanges OfEachKind { get; } =
        new(
            "main~3",
            TheBook.Input.Book.Digest,
            [
                Freed,
                Freed with
                {
                    After = new Outcome(Pathway.Approval, Pathway.Prohibited),
                    Furthest = null,
                },
                Freed with
                {
                    Topic = "towing",
                    Rule = "au-qld/towing/gone",
                    Line = null,
                },
            ],
            [new OtherChange("au-qld", "Queensland", "a scheme", "certification scheme of Queensland changed")]
        );
}
