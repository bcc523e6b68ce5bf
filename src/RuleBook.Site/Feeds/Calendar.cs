using System.Globalization;
using System.Text;
using RuleBook.Units;

namespace RuleBook.Site.Feeds;

/// <summary>Days to come on which rules begin, and on which sources are due to be read again, as a calendar (RFC 5545).</summary>
/// <remarks>A start known only to the month or year spans all the days that it may be.</remarks>
internal static class Calendar
{
    public const string Path = "changes.ics";

    private const int LongestLine = 75;

    public static SiteFile Write(SiteBook site)
    {
        var text = new StringBuilder();
        string[] head =
        [
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//RuleBook//changes//EN",
            "CALSCALE:GREGORIAN",
            "X-WR-CALNAME:Limits on modified vehicles",
        ];
        foreach (var line in head)
            Add(text, line);
        foreach (var change in VersionChange.Of(site).Where(change => change.Date is { } date && date.Latest >= site.Day))
            Event(
                text,
                site.Day,
                change.Name,
                change.Date!,
                $"{change.Place.Name}: {change.Rule.Title} ({change.State(site.Day)})",
                change.Says
            );
        foreach (var place in site.Places)
        foreach (
            var due in place
                .Sources.Where(source => source.RecheckAfter.Latest >= site.Day)
                .GroupBy(source => source.RecheckAfter.Text)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
        )
            Event(
                text,
                site.Day,
                $"{place.Id}/recheck@{due.Key}",
                due.First().RecheckAfter,
                $"{place.Name}: {due.Count()} {(due.Count() == 1 ? "source" : "sources")} to be read again",
                string.Join("; ", due.Select(source => source.Title))
            );
        Add(text, "END:VCALENDAR");
        return new SiteFile(Path, Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static void Event(StringBuilder text, DateOnly stamp, string name, PartialDate date, string title, string says)
    {
        Add(text, "BEGIN:VEVENT");
        Add(text, $"UID:{AtomFeed.Name(name)["urn:uuid:".Length..]}");
        Add(text, $"DTSTAMP:{Day(stamp)}T000000Z");
        Add(text, $"DTSTART;VALUE=DATE:{Day(date.Earliest)}");
        Add(text, $"DTEND;VALUE=DATE:{Day(date.Latest.AddDays(1))}");
        Add(text, $"SUMMARY:{Escape(title)}");
        Add(text, $"DESCRIPTION:{Escape(says)}");
        Add(text, "TRANSP:TRANSPARENT");
        Add(text, "END:VEVENT");
    }

    private static string Day(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    /// <summary>RFC 5545, 3.3.11: backslash, semicolon, comma and line end are escaped.</summary>
    private static string Escape(string text) =>
        text.ReplaceLineEndings("\n")
            .Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace(";", "\\;", StringComparison.Ordinal)
            .Replace(",", "\\,", StringComparison.Ordinal)
            .Replace("\n", "\\n", StringComparison.Ordinal);

    /// <summary>RFC 5545, 3.1: a line is folded at 75 octets, never inside a character.</summary>
    private static void Add(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LongestLine)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }
}
