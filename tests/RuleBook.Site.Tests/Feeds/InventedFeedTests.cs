using System.Xml.Linq;
using RuleBook.Law;
using RuleBook.Site.Feeds;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.Feeds;

/// <summary>
/// Feed (RFC 4287) and calendar (RFC 5545) of the invented book read whole, written by hand from its files. The names are UUIDs of version
/// 8 (RFC 9562) from the SHA-256 of <c>rulebook/</c> and what is named, made by another program.
/// </summary>
public sealed class InventedFeedTests
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    [Fact]
    public void The_feed_tells_editions_and_versions_latest_first()
    {
        var input = InventedBook.Site.Input;
        Edition[] editions =
        [
            new("2026.11.1", new(2026, 11, 3), "sha256:1", default),
            new("2026.11.2", new(2026, 11, 9), "sha256:2", default)
            {
                News = [new(NewsKind.Tool, [], null, "It prints."), new(NewsKind.Corrected, ["xa", "xa-n"], null, "It was 55 mm.")],
            },
        ];
        var feed = XDocument
            .Parse(AtomFeed.Write(new SiteBook(input with { Book = input.Book with { Editions = [.. editions] } })).Text())
            .Root!;
        (feed.Name, (string)feed.Attribute(XNamespace.Xml + "lang")!).ShouldBe((Atom + "feed", "en-AU"));
        string.Join('\n', feed.Elements().Select(Line))
            .ShouldBe(
                """
                title: Limits on modified vehicles: what changes
                id: urn:uuid:cd0c6f73-b8f0-80aa-8540-826d3e01a49b
                updated: 2026-11-25T00:00:00Z
                author: the maintainers of the book
                link: self changes.atom
                link: changes.html
                entry: Edition 2026.11.2 of the book | urn:uuid:d6545a09-5380-8b91-8124-8299c77ba7be | 2026-11-09T00:00:00Z | changes.html#editions | Past answers corrected: xa, xa-n: It was 55 mm. The tool: It prints.
                entry: Edition 2026.11.1 of the book | urn:uuid:08d2385a-33c7-811d-b65b-5652bda8fa83 | 2026-11-03T00:00:00Z | changes.html#editions | 
                entry: The nation: Longer shackles (proposed) | urn:uuid:52b6af34-88d3-8787-b13f-322ae09f9c15 | 2026-11-01T00:00:00Z | jurisdictions/xa.html#ride-height.extend.proposed | with a certificate: suspension lift at most 60 mm; beyond: not allowed
                entry: The north: Raising in the north (announced, 2027-03-01) | urn:uuid:26f65270-4a9d-8ae2-885f-d10490370492 | 2026-11-01T00:00:00Z | jurisdictions/xa-n.html#ride-height.raise.announced-2027-03-01 | without a certificate: suspension lift at most 30 mm; beyond: not allowed
                entry: The nation: Longer shackles (in force) | urn:uuid:b337fdb8-7508-8e6b-9fbf-04a66c2e3aff | 2026-11-01T00:00:00Z | jurisdictions/xa.html#ride-height.extend.by-2019-05-06 | beyond: not established
                entry: The nation: Lowering (ended) | urn:uuid:d9f38040-ae8d-87d0-b2bd-2f3e5a1c8e64 | 2026-11-01T00:00:00Z | jurisdictions/xa.html#ride-height.lower.by-2019-05-06 | beyond: not allowed
                entry: The north: Raising in the north (in force, 2016-03-01) | urn:uuid:c893b0d4-fffd-8276-a59b-faf03388d99b | 2026-11-01T00:00:00Z | jurisdictions/xa-n.html#ride-height.raise.2016-03-01 | adopts xa/ride-height/raise as it stood on 6 May 2013, except: tier certificate: suspension lift at most 65 mm; a breach brings a warning only
                entry: The north: Raising in the north (ended, a day between 2015-01-01 and 2015-12-31) | urn:uuid:6b2883cb-c136-853b-a6ff-58369ecc1301 | 2026-11-01T00:00:00Z | jurisdictions/xa-n.html#ride-height.raise._5b2015-01-01..2015-12-31_5d | not regulated
                entry: The north: Swapping springs (in force) | urn:uuid:4dc78e23-a1cf-86e4-ab55-7208fbf90164 | 2026-11-01T00:00:00Z | jurisdictions/xa-n.html#ride-height.swap.by-2014-02-03 | not established
                entry: The nation: Raising (in force, 2012-01-01) | urn:uuid:de34782a-e137-8978-8df0-5579a151e449 | 2026-11-20T00:00:00Z | jurisdictions/xa.html#ride-height.raise.2012-01-01 | without a certificate (four-wheel drive: yes; GVM at most 3500 kg): suspension lift at most 50 mm, body lift no limit, increase in wheel track not established; with a certificate: suspension lift from 10 mm up to 75 mm; beyond: not allowed
                """
            );
    }

    /// <summary>RFC 5545: what ends a line, what is escaped, and a line of 75 octets that goes on in the next.</summary>
    [Fact]
    public void The_calendar_has_the_days_to_come_on_which_a_rule_begins_or_a_source_is_due() =>
        Calendar
            .Write(InventedBook.Site)
            .Text()
            .ShouldBe(
                """
                BEGIN:VCALENDAR
                VERSION:2.0
                PRODID:-//RuleBook//changes//EN
                CALSCALE:GREGORIAN
                X-WR-CALNAME:Limits on modified vehicles
                BEGIN:VEVENT
                UID:26f65270-4a9d-8ae2-885f-d10490370492
                DTSTAMP:20261125T000000Z
                DTSTART;VALUE=DATE:20270301
                DTEND;VALUE=DATE:20270302
                SUMMARY:The north: Raising in the north (announced)
                DESCRIPTION:without a certificate: suspension lift at most 30 mm\; beyond: 
                 not allowed
                TRANSP:TRANSPARENT
                END:VEVENT
                BEGIN:VEVENT
                UID:09de07e9-73fb-853f-8a63-a3008fe6b68a
                DTSTAMP:20261125T000000Z
                DTSTART;VALUE=DATE:20270301
                DTEND;VALUE=DATE:20270401
                SUMMARY:The nation: 1 source to be read again
                DESCRIPTION:A letter
                TRANSP:TRANSPARENT
                END:VEVENT
                BEGIN:VEVENT
                UID:f12f925c-3ca9-8eac-ba0b-5fdf7d3b2d7d
                DTSTAMP:20261125T000000Z
                DTSTART;VALUE=DATE:20271125
                DTEND;VALUE=DATE:20271126
                SUMMARY:The nation: 1 source to be read again
                DESCRIPTION:The code
                TRANSP:TRANSPARENT
                END:VEVENT
                BEGIN:VEVENT
                UID:03cad9e6-87df-8fbf-b1b6-6a105253790c
                DTSTAMP:20261125T000000Z
                DTSTART;VALUE=DATE:20271125
                DTEND;VALUE=DATE:20271126
                SUMMARY:The north: 1 source to be read again
                DESCRIPTION:The act
                TRANSP:TRANSPARENT
                END:VEVENT
                END:VCALENDAR

                """.Replace("\n", "\r\n", StringComparison.Ordinal)
            );

    [Fact]
    public void Of_several_sources_due_on_a_day_one_entry_names_each_and_what_has_a_meaning_in_a_calendar_is_escaped()
    {
        var input = InventedBook.Site.Input;
        var nation = input.Book.Jurisdiction("xa")!;
        var code = nation.Sources[0];
        var due = nation with
        {
            Sources = [code with { Title = @"One, two; a\b" + "\nthree" }, code with { Id = "other", Title = "Other" }],
        };
        var text = Calendar
            .Write(new SiteBook(input with { Day = new(2027, 11, 25), Book = input.Book with { Jurisdictions = [due] } }))
            .Text();
        text.ShouldContain("SUMMARY:The nation: 2 sources to be read again\r\n");
        text.ShouldContain(@"DESCRIPTION:One\, two\; a\\b\nthree\; Other" + "\r\n");
        Calendar
            .Write(new SiteBook(input with { Day = new(2027, 11, 26), Book = input.Book with { Jurisdictions = [due] } }))
            .Text()
            .ShouldNotContain("to be read again");
    }

    private static string Line(XElement element) =>
        element.Name.LocalName
        + ": "
        + element.Name.LocalName switch
        {
            "link" => string.Join(' ', element.Attributes().Select(each => each.Value)),
            "entry" => string.Join(" | ", element.Elements().Select(each => each.Attribute("href")?.Value ?? each.Value)),
            _ => element.Value,
        };
}
