using System.Collections.Immutable;
using AngleSharp.Html.Dom;
using RuleBook.Law;
using RuleBook.Site.Changes;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Site.Tests.Pages;

/// <summary>What an edition of the book changes, on the page of changes.</summary>
public sealed class EditionTests
{
    private const string Hostile = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>{{ 7 * 142859 }}&lt;javascript:alert(3)";

    [Fact]
    public void A_raise_that_needs_a_certificate_no_longer_is_told_with_its_day_its_job_and_its_rule()
    {
        var page = Page([SampleEdition.Freed]);

        page.QuerySelector("#edition")!.TextContent.ShouldBe("What this edition of the book changes, by consequence");
        Headings(page)[..4]
            .ShouldBe(["H1 What changes", "H2 What this edition of the book changes, by consequence", "H3 Queensland", "H4 Ride height"]);
        var entry = page.All("h4 + .changes > li").Single();
        Words(entry.TextContent)
            .ShouldStartWith(
                "From 26 October 2018, four-wheel drive yes, electronic stability control yes. Earlier edition: allowed with a "
                    + "certificate; "
                    + "this edition: allowed without a certificate. "
                    + "Smallest job that shows it: suspension lift 50 mm. Largest: suspension lift 50 mm, growth in tyre diameter 50 mm."
            );
        entry.QuerySelector("details pre")!.TextContent.ShouldBe("registered-in: au-qld\non: 2018-10-26");
        foreach (var address in entry.QuerySelectorAll("a").Select(link => link.GetAttribute("href")!))
            Parsed
                .Of(TheBook.Site.Where(file => file.Path == address.Split('#')[0]))
                .Single()
                .Document.GetElementById(address.Split('#')[1])
                .ShouldNotBeNull(address);
        entry.QuerySelectorAll("a").Length.ShouldBe(2);
    }

    [Fact]
    public void A_site_that_was_not_compared_says_so_and_has_no_such_section()
    {
        var page = Parsed.Of(TheBook.Site.Where(file => file.Path == "changes.html")).Single().Document;

        page.QuerySelector("#edition").ShouldBeNull();
        page.Body!.TextContent.ShouldContain("was not compared with an earlier one");
    }

    [Fact]
    public void An_edition_that_changes_no_answer_says_so()
    {
        var page = Page([]);

        Words(page.QuerySelector("#edition + p")!.TextContent).ShouldEndWith("No answer changes.");
        Headings(page)[2].ShouldStartWith("H2 ");
    }

    [Fact]
    public void What_changes_beside_the_answers_leads_to_the_rule_the_source_the_place_or_who_certifies()
    {
        var page = Page(
            [],
            new OtherChange("au-qld", "Queensland", SampleEdition.Raise.Id, "measured at loaded instead of at unladen"),
            new OtherChange("au-qld", "Queensland", "a scheme", "certification scheme of Queensland changed"),
            new OtherChange("au-qld", "Queensland", "au-qld/ministers-release-2018-09-20", "no longer primary; now memory"),
            new OtherChange("au-qld", "Queensland", "au-qld/gone", "no longer primary"),
            new OtherChange("au-qld", "Queensland", "au-qld/ride-height/gone", "the id has vanished"),
            new OtherChange("au-qld", "Queensland", "au-qld", "no longer within au; now within nothing"),
            new OtherChange("xx-gone", "Somewhere", "xx-gone", "only the old book has this jurisdiction"),
            new OtherChange("", "", "body-lift", "defined otherwise")
        );

        page.All("h3 + .changes")
            .First()
            .Children.Select(entry => entry.QuerySelector("a")?.GetAttribute("href"))
            .ShouldBe([
                Links.Rule(SampleEdition.Raise),
                "jurisdictions/au-qld.html#certification",
                "sources/au-qld/ministers-release-2018-09-20.html",
                "jurisdictions/au-qld.html",
                "jurisdictions/au-qld.html",
                "jurisdictions/au-qld.html",
                null,
                null,
            ]);
    }

    [Fact]
    public void An_answer_that_is_no_longer_decided_is_told_as_undecided()
    {
        var entry = Page([SampleEdition.Freed with { After = new Outcome(Pathway.Approval, Pathway.Prohibited) }])
            .All("h4 + .changes > li")
            .Single();

        entry
            .QuerySelector(".p.not-established")!
            .TextContent.ShouldBe("undecided: from allowed with the authority's approval first to not allowed");
    }

    [Fact]
    public void A_rule_that_only_the_earlier_edition_has_leads_nowhere()
    {
        var entry = Page([SampleEdition.Freed with { Rule = "au-qld/ride-height/gone", Line = null }]).All("h4 + .changes > li").Single();

        entry.QuerySelectorAll("a").ShouldBeEmpty();
        Words(entry.TextContent).ShouldContain("By au-qld/ride-height/gone, which only the earlier edition has.");
    }

    [Fact]
    public void Hostile_text_in_every_field_of_a_change_stays_text()
    {
        var mark = new Mark(Hostile, 1, 1);
        var page = Page(
            [
                new ChangedAnswer(
                    Hostile,
                    Hostile,
                    Hostile,
                    Hostile,
                    SampleEdition.Freed.Before,
                    SampleEdition.Freed.After,
                    Hostile,
                    mark,
                    Hostile,
                    Hostile,
                    Hostile
                ),
                SampleEdition.Freed with
                {
                    Topic = Hostile,
                    Vehicles = Hostile,
                    Days = Hostile,
                    Line = mark,
                    Smallest = Hostile,
                    Furthest = Hostile,
                    Job = Hostile,
                },
            ],
            new OtherChange(Hostile, Hostile, Hostile, Hostile),
            new OtherChange("au-qld", Hostile, Hostile, Hostile)
        );

        page.All("script:not([src]), img, [onerror]").ShouldBeEmpty();
        page.All("[href]")
            .Select(element => element.GetAttribute("href")!)
            .ShouldNotContain(address => address.StartsWith("javascript", StringComparison.Ordinal));
        page.Body!.TextContent.ShouldNotContain("1000013");
        page.Body!.TextContent.ShouldContain(Hostile);
    }

    [Fact]
    public void More_changes_than_a_page_holds_leave_it_below_150_kilobytes_and_each_topic_its_share()
    {
        string[] topics = ["ride height", "towing", "tyres and wheels"];
        var many = topics.SelectMany(topic =>
            Enumerable.Range(0, 500).Select(i => SampleEdition.Freed with { Topic = topic, Smallest = $"suspension lift {i} mm" })
        );
        var others = Enumerable.Range(0, 500).Select(i => new OtherChange("au-qld", "Queensland", $"scheme {i}", "changed")).ToArray();
        var input = With([.. many], others);
        var file = ChangesPage.Of(new SiteBook(input)).First().Write(new SiteBook(input));
        var page = Parsed.Of([file]).Single().Document;

        file.Content.Length.ShouldBeLessThan(150_000);
        var shown = page.All("h4 + .changes").Select(list => list.ChildElementCount).ToArray();
        shown.Length.ShouldBe(3);
        (shown.Max() - shown.Min()).ShouldBeLessThan(2);
        page.All("h4 + .changes + p")
            .Select(left => int.Parse(left.TextContent.Split(' ')[0], null))
            .ShouldBe(shown.Select(count => 500 - count));
        page.All("h4 + .changes + p").ShouldAllBe(left => left.TextContent.Contains("rulebook changes OLD", StringComparison.Ordinal));
        Words(page.QuerySelector("#edition + p")!.TextContent).ShouldContain("1500 answers change; 500 things beside the answers do.");
    }

    private static IHtmlDocument Page(ImmutableArray<ChangedAnswer> answers, params OtherChange[] others)
    {
        var site = new SiteBook(With(answers, others));
        var (_, document, errors) = Parsed.Of([ChangesPage.Of(site).First().Write(site)]).Single();
        errors.ShouldBeEmpty();
        return document;
    }

    private static SiteInput With(ImmutableArray<ChangedAnswer> answers, OtherChange[] others) =>
        TheBook.Input with
        {
            Since = new EditionChanges("main~3", "sha256:0", answers, [.. others]),
        };

    private static string[] Headings(IHtmlDocument page) =>
        [.. page.All("h1, h2, h3, h4").Select(heading => $"{heading.TagName} {Words(heading.TextContent)}")];

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
