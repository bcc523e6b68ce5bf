using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Changes;
using RuleBook.Site.Comparison;
using RuleBook.Site.Limits;
using RuleBook.Site.Views;
using RuleBook.Tables;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests.Pages;

/// <summary>
/// Words of the pages that stand for one fact each, on an invented place: no figure, title or step in it is that of any law.
/// </summary>
public sealed class ToldWordsTests
{
    private static readonly (string File, string Text)[] Invented =
    [
        (
            "jurisdiction",
            """
            jurisdiction: xa
            name: The isle
            registers: yes
            ask: { authority: The isle's office }
            """
        ),
        (
            "sources",
            """
            jurisdiction: xa
            sources:
              - { source: act, title: The act, publisher: The isle, read-as: primary, parts-read: ["2", "4"], checked: 2026-11,
                  recheck-after: 2027-11-25 }
              - { source: letter, title: A letter, publisher: A reader, read-as: secondary, checked: 2026-11, recheck-after: 2027-11-25 }
            """
        ),
        (
            "ride-height",
            """
            jurisdiction: xa
            topic: ride-height
            rules:
              - rule: raise
                title: Raising
                versions:
                  - from: 2012-01-01
                    until: 2020-07-01
                    sources: [ { cite: act, clause: "1" } ]
                    measured: { between: [wheel-centre, guard-edge], mass-state: unladen }
                    tiers:
                      - pathway: no-certificate
                        within: { suspension-lift: 50 mm, body-lift: none, track-increase: not-established }
                    beyond: prohibited
                  - from: 2020-07-01
                    sources: [ { cite: letter, clause: "page 9" }, { cite: act, clause: "2" } ]
                    measured: { mass-state: loaded }
                    tiers: [ { pathway: no-certificate, within: { suspension-lift: 40 mm, body-lift: none,
                        track-increase: not-established } } ]
                  - announced: 2027-03-01
                    sources: [ { cite: act, clause: "3" } ]
                    not-regulated: It ends.
            """
        ),
        (
            "certification",
            """
            jurisdiction: xa
            topic: certification
            schemes:
              - scheme: wrights
                title: Wrights of the isle
                versions:
                  - from: 2012-01-01
                    sources: [ { cite: act, clause: "4" } ]
                    certifier: wright
                    decides: certifier
                    accepts-appointed-in: []
                    steps:
                      - { text: Have it looked at., pathways: [certificate] }
                      - { text: Ask the office., before-work: yes, pathways: [certificate] }
                      - { text: Tell the office., before-work: yes, pathways: [no-certificate] }
            """
        ),
    ];

    private static readonly Lazy<SiteBook> Made = new(() =>
        new SiteBook(
            TheBook.Make([
                .. TheBook.Texts(),
                .. Invented
                    .Select(each => ($"jurisdictions/xa/{each.File}.yaml", each.Text))
                    .Select(each => new SiteSource(each.Item1, each.Text, YamlText.Read(each.Text, each.Item1))),
            ])
        )
    );

    private static SiteBook Site => Made.Value;

    private static Jurisdiction Isle => Site.Book.Jurisdiction("xa")!;

    private static ResolvedVersion On(DateOnly day) => Resolver.Resolve(Site.Book, Isle.Rules.Single(), day).Single();

    /// <summary>The day from which a version holds counts, the day until which it holds does not; the last has no end.</summary>
    [Fact]
    public void A_version_with_an_end_is_told_from_its_first_day_until_that_end_and_one_to_come_as_announced() =>
        HistoryView
            .Of(Site, Isle)
            .Select(step => (step.Date, step.State))
            .ShouldBe([("announced for 2027-03-01", "announced"), ("2020-07-01", ""), ("2012-01-01 until 2020-07-01", "")]);

    [Fact]
    public void A_limit_that_there_is_one_that_there_is_not_and_one_that_nobody_established_are_three_kinds_and_three_words()
    {
        (string, string, string)[] expected =
        [
            ("suspension lift", "limit", "at most 40 mm"),
            ("body lift", "none", "no limit"),
            ("increase in wheel track", "not-established", "not established"),
        ];
        VersionView
            .Of(Site, On(Site.Day), certain: true)
            .Tiers.Single()
            .Limits.Select(limit => (limit.Title, limit.Kind, limit.Amount))
            .ShouldBe(expected);
        Site.Lines.Where(line => line.Place.Id == "xa" && line.Limit is not null)
            .Select(line => (Site.MeasureTitle(line.Measure), line.Kind, line.Amount(Site.Words)))
            .ShouldBe(expected);
    }

    /// <summary>A version that says nothing of what holds beyond its tiers leaves it open; one that forbids it says so.</summary>
    [Fact]
    public void What_holds_beyond_the_tiers_is_not_established_where_the_version_says_nothing()
    {
        Site.Lines.Single(line => line.Place.Id == "xa" && line.Measure == LimitStatements.Beyond).Kind.ShouldBe("not-established");
        Beyond(new DateOnly(2020, 6, 30)).ShouldBe("prohibited not allowed");
        Beyond(new DateOnly(2020, 7, 1)).ShouldBe("not-established not established");

        static string Beyond(DateOnly day)
        {
            var line = Answers(day).Beyond().Lines.Single();
            return $"{line.Kind} {line.Text}";
        }
    }

    [Theory]
    [InlineData("2012-01-01", "wheel centre to guard edge, at the unladen mass")]
    [InlineData("2020-07-01", "points not established, at the loaded mass")]
    public void How_it_is_measured_is_told_with_the_points_and_the_state_of_the_mass(string day, string told) =>
        Answers(DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture)).Measured().Lines.Single().Text.ShouldBe(told);

    [Fact]
    public void Before_the_work_come_the_steps_of_certifying_that_the_scheme_puts_there_and_no_others() =>
        new SchemeAnswers(Site, Isle, SchemeAnswers.For(Isle, ComparedVehicle.Any, Site.Day))
            .Before(null)
            .Lines.Select(line => line.Text)
            .ShouldBe(["Ask the office."]);

    [Fact]
    public void A_scheme_says_who_has_the_last_word_that_it_accepts_nobody_and_which_steps_come_before_the_work()
    {
        var scheme = SchemeView.Of(Site, Isle).Single();
        (scheme.Certifier, scheme.Decides, scheme.Accepts).ShouldBe(("wright", "the certifier", "none"));
        (scheme.AppointedBy, scheme.Reregistering).ShouldBe(("not established", "not established"));
        scheme
            .Steps.Select(step => (step.Text, step.BeforeWork))
            .ShouldBe([("Have it looked at.", false), ("Ask the office.", true), ("Tell the office.", true)]);
    }

    [Fact]
    public void The_document_that_says_it_best_is_named_with_its_clause_how_many_others_there_are_and_what_was_read_of_it()
    {
        var where = WhereView.Of(On(Site.Day), "w1");
        (where.Clause, where.More).ShouldBe(("The act, 2", 1));
        SourceView.Of(Site.Book.Source("xa", "act")!).Parts.ShouldBe("only 2, 4");
    }

    [Fact]
    public void The_job_of_a_change_opens_as_on_the_day_before_and_from_the_day_on_where_there_is_a_check_page()
    {
        var change = new ShownChange(
            "xa/ride-height/raise",
            "2020-07-01",
            "a lift of 45 mm",
            """{"on":"2020-06-30"}""",
            """{"on":"2020-07-01"}""",
            new Outcome(Pathway.NoCertificate, Pathway.NoCertificate),
            new Outcome(Pathway.NoCertificate, Pathway.Prohibited)
        );
        var without = ShownView.Of(Site, change);
        (without.Before, without.After, without.Smallest).ShouldBe(("", "", "a lift of 45 mm"));
        (without.Was.Words, without.Is.Words).ShouldBe(("allowed without a certificate", "undecided"));
        var with = ShownView.Of(new SiteBook(Site.Input with { Check = [new SiteFile("x", default)] }), change);
        Uri.UnescapeDataString(with.Before).ShouldBe("check.html#" + change.Before);
        Uri.UnescapeDataString(with.After).ShouldBe("check.html#" + change.After);
    }

    private static RuleAnswers Answers(DateOnly day) => new(Site, ComparedVehicle.Any, On(day), certain: true, where: null);
}
