using RuleBook.Site.Views;

namespace RuleBook.Site.Changes;

/// <summary>What a change does to the smallest job that shows it; the addresses are empty on a site without a check page.</summary>
internal sealed record ShownView(string Smallest, OutcomeView Was, OutcomeView Is, string Before, string After)
{
    public static ShownView Of(SiteBook site, ShownChange change) =>
        new(
            change.Smallest,
            OutcomeView.Of(change.Was),
            OutcomeView.Of(change.Is),
            site.Input.Check.IsEmpty ? "" : Links.Check(change.Before),
            site.Input.Check.IsEmpty ? "" : Links.Check(change.After)
        );
}
