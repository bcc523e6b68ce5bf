using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>A limit of a tier: measure, amount, and which of limit, none and not-established it is.</summary>
internal sealed record LimitView(string Title, string Url, string Amount, string Kind);

/// <summary>A tier as a row of a table.</summary>
internal sealed record TierView(
    string Pathway,
    string Words,
    string When,
    LimitView[] Limits,
    Link[] Conditions,
    string Codes,
    string Note,
    string Line,
    CitationView[] Sources
)
{
    public static TierView Of(SiteBook site, string jurisdiction, Tier tier) =>
        new(
            Wording.Of(tier.Pathway),
            Phrases.Pathway(tier.Pathway),
            Say.When(site.Words, tier.When),
            [.. tier.Limits.Select(limit => Of(site, limit))],
            [.. tier.Provided.Select(name => new Link(site.ConditionTitle(name), Links.Word("condition", name)))],
            string.Join(", ", tier.Codes),
            tier.Note?.Trim() ?? "",
            Links.Line(tier.Mark),
            CitationView.Of(site, jurisdiction, tier.Sources)
        );

    private static LimitView Of(SiteBook site, Limit limit)
    {
        var known = site.Words.Measures.TryGetValue(limit.Measure, out var measure);
        return new LimitView(
            known ? measure!.Title : limit.Measure,
            Links.Word("measure", limit.Measure),
            known ? Say.Limit(measure!, limit) : "",
            limit.Kind switch
            {
                LimitKind.None => "none",
                LimitKind.NotEstablished => "not-established",
                _ => "limit",
            }
        );
    }
}
