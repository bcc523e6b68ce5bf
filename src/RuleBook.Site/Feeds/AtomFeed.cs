using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Site.Feeds;

/// <summary>What changed and what is to come, as an Atom feed (RFC 4287).</summary>
internal static class AtomFeed
{
    public const string Path = "changes.atom";

    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    public static SiteFile Write(SiteBook site)
    {
        var feed = new XElement(
            Atom + "feed",
            new XAttribute(XNamespace.Xml + "lang", "en-AU"),
            new XElement(Atom + "title", "Limits on modified vehicles: what changes"),
            new XElement(Atom + "id", Name("feed")),
            new XElement(Atom + "updated", Instant(site.Day)),
            new XElement(Atom + "author", new XElement(Atom + "name", "the maintainers of the book")),
            new XElement(Atom + "link", new XAttribute("rel", "self"), new XAttribute("href", Path)),
            new XElement(Atom + "link", new XAttribute("href", "changes.html")),
            site.Book.Editions.Reverse().Select(Entry),
            VersionChange.Of(site).Select(change => Entry(site, change))
        );
        var text = feed.ToString(SaveOptions.None).ReplaceLineEndings("\n");
        return new SiteFile(Path, Encoding.UTF8.GetBytes($"<?xml version=\"1.0\" encoding=\"utf-8\"?>\n{text}\n"));
    }

    private static XElement Entry(Edition edition) =>
        new(
            Atom + "entry",
            new XElement(Atom + "title", $"Edition {edition.Name} of the book"),
            new XElement(Atom + "id", Name($"edition/{edition.Name}")),
            new XElement(Atom + "updated", Instant(edition.Day)),
            new XElement(Atom + "link", new XAttribute("href", "changes.html#editions")),
            new XElement(Atom + "summary", string.Join(" ", edition.News.OrderBy(news => news.Kind).Select(EditionWords.Sentence)))
        );

    private static XElement Entry(SiteBook site, VersionChange change)
    {
        var seen = change.Checked(site.Book);
        return new XElement(
            Atom + "entry",
            new XElement(
                Atom + "title",
                $"{change.Place.Name}: {change.Rule.Title} ({change.State(site.Day)}{(change.Date is { } date ? $", {date.Words}" : "")})"
            ),
            new XElement(Atom + "id", Name(change.Name)),
            new XElement(Atom + "updated", Instant(seen == DateOnly.MinValue ? site.Day : seen)),
            new XElement(Atom + "link", new XAttribute("href", Links.Version(change.Rule, change.Version))),
            new XElement(Atom + "summary", change.Says)
        );
    }

    /// <summary>A name for ever: a UUID of version 8 (RFC 9562) from the SHA-256 of the text.</summary>
    internal static string Name(string text)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes($"rulebook/{text}"))[..16];
        bytes[6] = (byte)((bytes[6] & 0x0f) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3f) | 0x80);
        return $"urn:uuid:{new Guid(bytes, bigEndian: true)}";
    }

    private static string Instant(DateOnly day) => day.ToString("yyyy-MM-dd'T00:00:00Z'", CultureInfo.InvariantCulture);
}
