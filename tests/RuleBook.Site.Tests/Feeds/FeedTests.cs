using System.Globalization;
using System.Xml.Linq;
using RuleBook.Site.Feeds;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.Feeds;

/// <summary>The feed against RFC 4287 and the calendar against RFC 5545.</summary>
public sealed class FeedTests
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    private static string File(string path) => TheBook.Site.Single(file => file.Path == path).Text();

    /// <summary>
    /// RFC 4287, 4.1.1 and 4.1.2: id, title and updated once in the feed and in each entry; an author; ids unlike one another.
    /// </summary>
    [Fact]
    public void The_feed_has_what_the_standard_asks_for()
    {
        var feed = XDocument.Parse(File(AtomFeed.Path)).Root!;
        feed.Name.ShouldBe(Atom + "feed");
        feed.Elements(Atom + "author").Count().ShouldBe(1);
        var entries = feed.Elements(Atom + "entry").ToArray();
        entries.Length.ShouldBeGreaterThan(50);
        foreach (var each in entries.Append(feed))
        {
            each.Elements(Atom + "title").Count().ShouldBe(1);
            new Uri(each.Elements(Atom + "id").ShouldHaveSingleItem().Value).IsAbsoluteUri.ShouldBeTrue();
            DateTimeOffset.ParseExact(
                each.Elements(Atom + "updated").ShouldHaveSingleItem().Value,
                "yyyy-MM-dd'T'HH:mm:ssZ",
                CultureInfo.InvariantCulture
            );
        }

        entries.Select(entry => entry.Element(Atom + "id")!.Value).ShouldBeUnique();
        entries.ShouldAllBe(entry =>
            TheBook.Site.Any(file =>
                file.Path == entry.Element(Atom + "link")!.Attribute("href")!.Value.Split('#', StringSplitOptions.None)[0]
            )
        );
    }

    [Fact]
    public void Every_edition_of_the_book_is_in_the_feed_and_on_the_page_of_changes_with_its_news()
    {
        var entries = XDocument.Parse(File(AtomFeed.Path)).Root!.Elements(Atom + "entry").ToArray();
        var page = System.Net.WebUtility.HtmlDecode(File("changes.html"));
        TheBook.Input.Book.Editions.ShouldNotBeEmpty();
        foreach (var edition in TheBook.Input.Book.Editions)
        {
            var entry = entries.Single(each => each.Element(Atom + "title")!.Value == $"Edition {edition.Name} of the book");
            page.ShouldContain(edition.Digest);
            foreach (var news in edition.News)
            {
                entry.Element(Atom + "summary")!.Value.ShouldContain(news.Text);
                page.ShouldContain(news.Text);
            }
        }
    }

    [Fact]
    public void The_calendar_is_read_by_another_program_and_has_only_days_to_come()
    {
        var calendar = Ical.Net.Calendar.Load(File(Site.Feeds.Calendar.Path))!;
        calendar.Events.ShouldNotBeEmpty();
        calendar.Events.Select(each => each.Uid).ShouldBeUnique();
        calendar.Events.ShouldAllBe(each => each.Start!.Value < each.End!.Value && !each.Start.HasTime);
        calendar.Events.ShouldAllBe(each => each.End!.Value > TheBook.Input.Day.ToDateTime(default));
    }

    /// <summary>RFC 5545, 3.1: lines of at most 75 octets, ended by CRLF.</summary>
    [Fact]
    public void No_line_of_the_calendar_is_longer_than_75_octets()
    {
        var text = File(Site.Feeds.Calendar.Path);
        text.Replace("\r\n", "", StringComparison.Ordinal).ShouldNotContain('\n');
        text.Split("\r\n").ShouldAllBe(line => System.Text.Encoding.UTF8.GetByteCount(line) <= 75);
    }

    /// <summary>RFC 9562, 5.8: version 8, variant 10.</summary>
    [Fact]
    public void A_name_is_a_uuid_of_version_8() =>
        AtomFeed.Name("x").ShouldMatch("^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$");
}
