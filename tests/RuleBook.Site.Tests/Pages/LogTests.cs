using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Site.Changes;
using RuleBook.Site.Feeds;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The log of changes, as it stands in the page.</summary>
public sealed class LogTests
{
    private static readonly Lazy<IHtmlDocument[]> Pages = new(() =>
        [.. Parsed.Of(TheBook.Site.Where(IsLog)).Select(page => page.Document)]
    );

    internal static bool IsLog(SiteFile file) =>
        file.Path.StartsWith("changes", StringComparison.Ordinal) && file.Path.EndsWith(".html", StringComparison.Ordinal);

    /// <summary>Queensland, 26 October 2018: from 125 to 150 mm with a certificate (the department's notifications of 2018).</summary>
    [Fact]
    public void Queensland_s_amendment_of_2018_tells_125_before_and_150_after_with_its_source()
    {
        var entry = All("li[data-place=au-qld][data-topic=ride-height][data-kind=law]")
            .Single(each =>
                Words(each).StartsWith("26 October 2018 ", StringComparison.Ordinal)
                && Words(each).Contains("150 mm in all", StringComparison.Ordinal)
            );
        Words(entry.QuerySelector("dd")!).ShouldContain("125 mm in all");
        Words(entry.QuerySelectorAll("dd")[1]).ShouldContain("with a certificate: 150 mm in all");
        entry.QuerySelector(".says a")!.GetAttribute("href")!.ShouldStartWith("sources/au-qld/");
    }

    /// <summary>
    /// Up to 50 mm of tyre growth need no certificate with stability control either from 26 October 2018 (the minister's release, second
    /// hand).
    /// </summary>
    [Fact]
    public void Queensland_s_amendment_of_2018_shows_in_a_larger_tyre_that_needed_a_certificate_the_day_before()
    {
        var shown = TheBook.Input.Shown.Single(each => each.Rule == SampleEdition.Raise.Id && each.From == "2018-10-26");
        shown.Smallest.ShouldStartWith("growth in tyre diameter ");
        Pathways(shown).ShouldBe([Pathway.Certificate, Pathway.NoCertificate]);
        shown.Before.Replace("2018-10-25", "2018-10-26", StringComparison.Ordinal).ShouldBe(shown.After);
        All("dd")
            .Select(Words)
            .ShouldContain($"{shown.Smallest}: the day before allowed with a certificate, from then on allowed without a certificate");
    }

    [Fact]
    public void Every_job_of_the_log_is_told_what_the_log_says_the_day_before_and_from_then_on()
    {
        TheBook.Input.Shown.Length.ShouldBeGreaterThan(60);
        foreach (var shown in TheBook.Input.Shown)
            Pathways(shown).ShouldBe([Verdict(shown.Was), Verdict(shown.Is)], shown.Rule);

        static Pathway? Verdict(Outcome outcome) => outcome.Decided ? outcome.Best : null;
    }

    [Fact]
    public void An_entry_of_the_law_opens_a_job_on_both_days_or_says_why_there_is_none()
    {
        foreach (var entry in All("li[data-kind=law]"))
        {
            var shown = Words(entry.QuerySelectorAll("dl.was dd")[2]);
            var place = TheBook.Input.Book.Jurisdiction(entry.GetAttribute("data-place")!)!;
            if (!place.Registers)
                shown.ShouldStartWith("none: no vehicles registered");
            else if (TheBook.Input.Book.Vocabulary.Topics[entry.GetAttribute("data-topic")!].OfUse)
                shown.ShouldStartWith("none: a rule of use");
            else if (shown is not "no job found" and not "none: as open as before")
                shown.ShouldContain(": the day before ");
            else if (shown != "no job found")
                entry.QuerySelectorAll("dl.was dd").Take(2).Select(Words).ShouldBe(["nothing in the book", "not established"]);
        }
    }

    private static Pathway?[] Pathways(ShownChange shown) =>
        [
            .. new[] { shown.Before, shown.After }.Select(job =>
                Assessor.Assess(TheBook.Input.Book, JobReader.Read(JsonNodes.Read(job), TheBook.Input.Book)).Verdict
            ),
        ];

    [Fact]
    public void Every_entry_says_where_on_what_and_of_which_kind()
    {
        var entries = All("li[data-kind]").ToArray();
        entries.Length.ShouldBeGreaterThan(50);
        entries.ShouldAllBe(entry =>
            entry.QuerySelector(".marks") != null && entry.QuerySelectorAll("dd").All(text => text.TextContent.Length > 0)
        );
        foreach (var field in new[] { "place", "topic", "kind" })
            entries
                .Select(entry => entry.GetAttribute($"data-{field}")!)
                .Where(value => value.Length > 0)
                .ShouldBeSubsetOf(All($"#{field} option").Select(option => option.GetAttribute("value")!));
    }

    [Fact]
    public void A_figure_that_the_book_had_wrong_is_an_entry_of_its_own_and_renews_the_entry_of_the_feed()
    {
        var site = new SiteBook(TheBook.Input);
        var rule = SampleEdition.Raise;
        var version = rule.Versions[^1];
        var day = new DateOnly(2031, 2, 3);
        var corrected = version with
        {
            Corrected = [new Correction(day, "175 mm with a certificate", "the notice was read", version.Mark)],
        };
        var place = site.Places.Single(each => each.Id == "au-qld");
        var change = new VersionChange(place, rule, version, "");
        var later = new VersionChange(place, rule, corrected, "");

        later.Checked(site.Book).ShouldBe(day);
        later.Name.ShouldBe(change.Name);
        var book = TheBook.Input.Book with
        {
            Jurisdictions =
            [
                .. TheBook.Input.Book.Jurisdictions.Select(each =>
                    each.Id != place.Id
                        ? each
                        : each with
                        {
                            Rules = each.Rules.Replace(rule, rule with { Versions = rule.Versions.Replace(version, corrected) }),
                        }
                ),
            ],
        };
        var entry = LogEntry.All(new SiteBook(TheBook.Input with { Book = book }), []).First(each => each.Kind == "corrected");
        entry.Before.ShouldBe(["175 mm with a certificate"]);
        entry.After.ShouldBe(["the notice was read"]);
        entry.Year.ShouldBe("2031");
    }

    [Fact]
    public void What_is_due_to_be_read_again_has_a_page_of_its_own()
    {
        var page = Parsed.Of(TheBook.Site.Where(file => file.Path == "reread.html")).Single().Document;
        page.All("main li").Count().ShouldBe(TheBook.Input.Book.Jurisdictions.Sum(place => place.Sources.Length));
        page.All("main h2")
            .Select(Words)
            .ShouldBe(
                TheBook
                    .Input.Book.Jurisdictions.SelectMany(place => place.Sources)
                    .OrderBy(source => source.RecheckAfter.Earliest)
                    .ThenBy(source => source.Checked.Earliest)
                    .Select(source => $"After {source.RecheckAfter} compared {source.Checked}")
                    .Distinct()
            );
        Pages.Value[^1].QuerySelector("a[href='reread.html']").ShouldNotBeNull();
    }

    [Fact]
    public void However_long_the_log_no_page_of_it_weighs_150_kilobytes_and_each_entry_stands_on_one()
    {
        var book = TheBook.Input.Book with
        {
            Editions =
            [
                .. Enumerable
                    .Range(2100, 300)
                    .Select(year => new Edition($"{year}", new DateOnly(year, 1, 1), "sha256:0", new Mark("editions.yaml", 1, 1))
                    {
                        News = [new News(NewsKind.Evidence, [], null, $"Read again in {year}: {new string('x', 150)}.")],
                    }),
            ],
        };
        var site = new SiteBook(TheBook.Input with { Book = book });
        var files = ChangesPage.Of(site).Select(page => page.Write(site)).ToArray();
        var pages = Parsed.Of(files).Select(page => page.Document).ToArray();

        files.Length.ShouldBeGreaterThan(2);
        files.Skip(1).ShouldAllBe(file => file.Content.Length < 150_000);
        var entries = pages.SelectMany(page => page.All("li[data-kind=evidence] dd:last-of-type")).Select(Words).ToArray();
        entries.ShouldBeUnique();
        entries.Length.ShouldBe(300);
        pages.SelectMany(page => page.All("details.year")).Select(year => year.Id).ShouldBeUnique();
        foreach (var page in pages)
            page.All("#log + p a").Count().ShouldBe(files.Length - 1);
    }

    private static IEnumerable<IElement> All(string selector) => Pages.Value.SelectMany(page => page.All(selector));

    private static string Words(IElement element) =>
        string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
