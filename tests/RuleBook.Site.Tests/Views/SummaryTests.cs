using RuleBook.Site.Views;

namespace RuleBook.Site.Tests.Views;

/// <summary>What versions of an invented place say, each in the one line that a person would write for it.</summary>
public sealed class SummaryTests
{
    [Theory]
    [InlineData(
        "tiers: [ { pathway: no-certificate, when: { four-wheel-drive: yes }, within: { suspension-lift: 40 mm, body-lift: none } }, "
            + "{ pathway: approval, provided: [lane-change-test] } ], beyond: not-established",
        "without a certificate (four-wheel drive: yes): suspension lift at most 40 mm, body lift no limit; "
            + "with approval first: no limits stated; beyond: not established"
    )]
    [InlineData("tiers: [], beyond: prohibited, warning-only: yes", "beyond: not allowed; a breach brings a warning only")]
    [InlineData("not-regulated: Left to the drivers.", "not regulated")]
    [InlineData("not-established: { ask: The office }", "not established")]
    [InlineData("adopts: { rule: xa/ride-height/base, as-of: amended }", "adopts xa/ride-height/base as amended from time to time")]
    [InlineData(
        "adopts: { rule: xa/ride-height/base, as-of: 2013-05-06 }, except: [ { tier: certificate, drop: yes }, { beyond: approval }, "
            + "{ add: { pathway: no-certificate, name: low, within: { suspension-lift: 20 mm } } } ]",
        "adopts xa/ride-height/base as it stood on 6 May 2013, except: without the tier certificate; "
            + "beyond: allowed with the authority's approval first; own tier without a certificate: suspension lift at most 20 mm"
    )]
    [InlineData(
        "adopts: { rule: xa/ride-height/base, as-of: amended }, except: [ { beyond: not-established }, { tier: certificate, "
            + "pathway: approval, when: { four-wheel-drive: yes }, within: { suspension-lift: 60 mm }, provided: [lane-change-test], "
            + "codes: [LS9, LK2] } ]",
        "adopts xa/ride-height/base as amended from time to time, except: beyond: not established; tier certificate: with approval first; "
            + "for four-wheel drive: yes; suspension lift at most 60 mm; to show: lane-change test passed; codes LS9, LK2"
    )]
    public void What_a_version_says_fits_in_a_line(string version, string told)
    {
        var site = InventedPlace.With(
            "ride-height",
            $$"""
              - { rule: base, title: Base, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited,
                  tiers: [ { pathway: certificate, within: { suspension-lift: 50 mm } } ] }
              - { rule: raise, title: Raising, from: 2016-01-01, sources: [{ cite: code }], {{version}} }

            """
        );

        Summary.Of(site, site.Book.Rule("xa/ride-height/raise")!.Versions.Single()).ShouldBe(told);
    }
}
