using RuleBook.Law;
using RuleBook.Site.Views;
using RuleBook.Tables;

namespace RuleBook.Site.Changes;

/// <summary>What a change does to the smallest job that shows it; the addresses are empty on a site without a check page.</summary>
internal sealed record ShownView(string Smallest, OutcomeView Was, OutcomeView Is, string Before, string After)
{
    public static ShownView Of(SiteBook site, ShownChange change) =>
        new(
            change.Smallest,
            Short(change.Was),
            Short(change.Is),
            site.Input.Check.IsEmpty ? "" : Links.Check(change.Before),
            site.Input.Check.IsEmpty ? "" : Links.Check(change.After)
        );

    /// <summary>An answer that may be anything is undecided, and says no more.</summary>
    private static OutcomeView Short(Outcome outcome) =>
        outcome is { Best: Pathway.NoCertificate, Worst: Pathway.Prohibited }
            ? OutcomeView.Of(outcome) with
            {
                Words = "undecided",
            }
            : OutcomeView.Of(outcome);
}
