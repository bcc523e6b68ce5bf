using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Site.Changes;
using RuleBook.Site.Feeds;
using RuleBook.Tables;

namespace RuleBook.Site.Tests.Changes;

/// <summary>The log of the invented book with two editions, as somebody would write it by hand.</summary>
public sealed class InventedLogTests
{
    [Fact]
    public void A_correction_and_better_evidence_are_entries_of_the_place_that_they_concern()
    {
        var input = InventedBook.Site.Input;
        Edition edition = new("2026.11.2", new(2026, 11, 9), "sha256:2", default)
        {
            News =
            [
                new(NewsKind.Law, ["xa"], null, "It changed."),
                new(NewsKind.Evidence, ["xa-n"], null, "The act was read."),
                new(NewsKind.Evidence, ["xa", "xa-n"], null, "Both were read."),
            ],
        };
        LogEntry
            .All(new SiteBook(input with { Book = input.Book with { Editions = [edition] } }), [])
            .Select(each =>
                $"{each.Order:yyyy-MM-dd} {each.KindWords} ({each.Kind}), {each.PlaceName} ({each.Place}), {each.Topic}, "
                + $"{each.Year}, {each.Date}: "
                + $"{each.Title}, {each.Url}: {string.Join(", ", each.Before)} -> {string.Join(", ", each.After)}; "
                + $"{each.Source}, {each.SourceUrl}, {each.Line}"
            )
            .ShouldBe([
                "2026-11-20 figure corrected (corrected), The nation (xa), ride-height, 2026, 20 November 2026: Raising, "
                    + "jurisdictions/xa.html#ride-height.raise.2012-01-01: 55 mm without a certificate -> the letter was read again; "
                    + "The code, 1 (the authority's own text), sources/xa/code.html, lines/xa/ride-height.yaml.html#L7",
                "2026-11-09 evidence improved (evidence), The north (xa-n), , 2026, 9 November 2026: Edition 2026.11.2, "
                    + "changes.html#editions: the same answers -> The act was read.; , , ",
                "2026-11-09 evidence improved (evidence), The nation, The north (), , 2026, 9 November 2026: Edition 2026.11.2, "
                    + "changes.html#editions: the same answers -> Both were read.; , , ",
            ]);
    }

    /// <summary>A year whose every day has a version fills more than a page; it stays whole, and other years have theirs.</summary>
    [Fact]
    public void A_year_that_is_larger_than_a_page_has_one_of_its_own_and_the_latest_years_stand_first()
    {
        var site = InventedPlace.With(
            "ride-height",
            "  - rule: raise\n    title: Raising\n    versions:\n"
                + Version("2017-05-05")
                + Version("2018-05-05")
                + string.Concat(Enumerable.Range(0, 365).Select(day => Version($"{new DateOnly(2019, 1, 1).AddDays(day):yyyy-MM-dd}")))
                + Version("2021-05-05")
        );

        var pages = ChangesPage.Of(site).ToArray();

        pages
            .Select(page => (page.Path, page.Title))
            .ShouldBe([
                ("changes.html", "What changes"),
                ("changes-2.html", "What changed, 2019"),
                ("changes-3.html", "What changed, 2017 to 2018"),
            ]);

        static string Version(string from) =>
            $"      - {{ from: {from}, sources: [{{ cite: code }}], tiers: [], beyond: prohibited, note: {new string('x', 200)} }}\n";
    }

    [Fact]
    public void News_of_an_edition_stand_by_their_consequence_what_was_wrong_first()
    {
        Edition edition = new("2026.11.2", new(2026, 11, 9), "sha256:2", default)
        {
            News =
            [
                new(NewsKind.Tool, [], null, "Told."),
                new(NewsKind.Evidence, [], null, "Read."),
                new(NewsKind.Law, [], null, "Amended."),
                new(NewsKind.Corrected, [], null, "Wrong."),
            ],
        };
        var told = NamedEditionView.Of(edition);
        (told.Name, told.Day, told.Digest).ShouldBe(("2026.11.2", "9 November 2026", "sha256:2"));
        told.News.Select(news => news.Split(' ')[^1]).ShouldBe(["Wrong.", "Amended.", "Read.", "Told."]);
    }

    [Fact]
    public void An_entry_has_the_job_that_shows_it_or_says_why_it_has_none()
    {
        var (free, no) = (new Outcome(Pathway.NoCertificate, Pathway.NoCertificate), new Outcome(Pathway.Prohibited, Pathway.Prohibited));
        ShownChange shown = new("xa-n/ride-height/raise", "2016-03-01", "a lift of 70 mm", "{}", "{}", free, no);
        Told([shown])
            .ShouldBe([
                "xa-n 2016-03-01: a lift of 70 mm, ",
                "xa-n [2015-01-01..2015-12-31]: , no job found",
                "xa 2012-01-01: , none: no vehicles registered here",
            ]);
        Told([]).ShouldAllBe(line => line.EndsWith(": , "));

        static IEnumerable<string> Told(ImmutableArray<ShownChange> shown)
        {
            var site = new SiteBook(InventedBook.Site.Input with { Shown = shown });
            var past = VersionChange.Of(site).Where(change => change.Version.From is not null).ToArray();
            return LogEntry
                .All(site, past)
                .Where(each => each.Kind == "law")
                .Zip(past)
                .Select(each => $"{each.First.Place} {each.Second.Version.From!.Text}: {each.First.Shown?.Smallest}, {each.First.Unshown}");
        }
    }
}
