using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Views;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The ready-made report of a wrong figure.</summary>
public sealed class CorrectionTests
{
    private static readonly ResolvedVersion Raise = Resolver
        .Resolve(TheBook.Input.Book, SampleEdition.Raise, new DateOnly(2026, 11, 25))
        .Single();

    /// <summary>RFC 6068: subject and body of a letter are percent-encoded parameters, lines end with %0D%0A.</summary>
    [Fact]
    public void Where_the_owner_takes_issues_and_mail_a_report_opens_as_either_with_its_text()
    {
        var site = new SiteBook(
            TheBook.Input with
            {
                ReportTo = "https://tracker.example/new?body=",
                ReportMail = "limits+book@workshop.example",
            }
        );
        var view = VersionView.Of(site, Raise, certain: true);
        var issue = new Uri(view.ReportUrl!);
        issue.Host.ShouldBe("tracker.example");
        Uri.UnescapeDataString(issue.Query).ShouldBe($"?body={view.Report}");
        view.ReportMail!.ShouldStartWith(
            "mailto:limits%2Bbook@workshop.example?subject=Correction%3A%20au-qld%2Fride-height%2Fraise-four-wheel-drive&body=Correction"
        );
        view.ReportMail.ShouldContain("%0D%0A");
    }

    /// <summary>
    /// Queensland's figures stand in the minister's release and the department's notifications, other sources only tell that there is such
    /// a rule.
    /// </summary>
    [Fact]
    public void The_source_that_carries_a_figure_stands_first_and_the_report_names_it()
    {
        var figures = ((Stated)Raise.Content)
            .Tiers.SelectMany(tier => tier.Limits.Select(limit => Raise.Evidence.Of(tier, limit).Cited))
            .ToArray();
        var first = Carrying.First(Raise).ToArray();
        figures.ShouldContain(first[0]);
        first.Length.ShouldBe(Raise.Sources.Length);
        VersionView.Of(new SiteBook(TheBook.Input), Raise, certain: true).Report.ShouldContain($"\nSource: {first[0].Source.Title}");
    }
}
