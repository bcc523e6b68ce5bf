using System.Globalization;
using System.Xml.Linq;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>Feed (RFC 4287) and calendar (RFC 5545) read back: each version of the book once, with what it says and when.</summary>
public sealed class FeedReadBackTests
{
    private static readonly Book Book = TheBook.Input.Book;
    private static readonly DateOnly Today = TheBook.Input.Day;
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    private static IEnumerable<(Jurisdiction Place, Rule Rule, RuleVersion Version)> Versions() =>
        Book.Jurisdictions.SelectMany(place => place.Rules.SelectMany(rule => rule.Versions.Select(version => (place, rule, version))));

    private static Dictionary<string, XElement> Entries() =>
        XDocument
            .Parse(File("changes.atom"))
            .Root!.Elements(Atom + "entry")
            .Where(entry => !Text(entry, "title").StartsWith("Edition ", StringComparison.Ordinal))
            .ToDictionary(entry => entry.Element(Atom + "link")!.Attribute("href")!.Value);

    [Fact]
    public void The_feed_tells_each_version_with_its_state_its_limits_and_the_last_day_on_which_a_source_was_compared()
    {
        var entries = Entries();
        entries.Count.ShouldBe(Versions().Count());
        foreach (var (place, rule, version) in Versions())
        {
            var entry = entries[Links.Version(rule, version)];
            var title = Text(entry, "title");
            title.ShouldStartWith($"{place.Name}: {rule.Title} ({State(rule, version)}");
            if ((version.Announced ?? version.From) is { } day && day.Earliest == day.Latest)
                title.ShouldEndWith($", {Iso(day.Earliest)})");
            Text(entry, "updated").ShouldBe($"{Iso(Compared(place, version))}T00:00:00Z", title);
            Says(Text(entry, "summary"), version, title);
        }
    }

    [Fact]
    public void The_calendar_has_each_day_to_come_once_and_under_the_name_of_the_feed()
    {
        var calendar = Ical.Net.Calendar.Load(File("changes.ics"))!;
        var entries = Entries();
        var told = calendar.Events.ToDictionary(each => each.Uid!);
        var coming = Versions().Where(each => (each.Version.Announced ?? each.Version.From)?.Latest >= Today).ToArray();
        foreach (var (place, rule, version) in coming)
        {
            var entry = entries[Links.Version(rule, version)];
            var day = version.Announced ?? version.From!;
            var each = told[Text(entry, "id")["urn:uuid:".Length..]];
            told.Remove(each.Uid!);
            each.Summary.ShouldBe($"{place.Name}: {rule.Title} ({State(rule, version)})");
            each.Description.ShouldBe(Text(entry, "summary"));
            (DateOnly.FromDateTime(each.Start!.Value), DateOnly.FromDateTime(each.End!.Value)).ShouldBe(
                (day.Earliest, day.Latest.AddDays(1))
            );
        }

        told.Values.Select(each =>
                (each.Summary!, DateOnly.FromDateTime(each.Start!.Value), DateOnly.FromDateTime(each.End!.Value).AddDays(-1))
            )
            .ShouldBe(
                Book.Jurisdictions.SelectMany(place =>
                    place
                        .Sources.Where(source => source.RecheckAfter.Latest >= Today)
                        .GroupBy(source => (source.RecheckAfter.Earliest, source.RecheckAfter.Latest))
                        .Select(due =>
                            (
                                $"{place.Name}: {due.Count()} source{(due.Count() == 1 ? "" : "s")} to be read again",
                                due.Key.Earliest,
                                due.Key.Latest
                            )
                        )
                ),
                ignoreOrder: true
            );
    }

    private static void Says(string summary, RuleVersion version, string title)
    {
        switch (version.Content)
        {
            case Stated stated:
                var lines = WrittenTier.Apart(summary);
                lines.Length.ShouldBe(stated.Tiers.Length + 1, title);
                foreach (var (line, tier) in lines.Zip(stated.Tiers))
                    WrittenTier.Of(line)!.Tells(tier, Book.Vocabulary).ShouldBeTrue($"{title}: {line}");
                var warned = version.WarningOnly ? "; a breach brings a warning only" : "";
                lines[^1].ShouldBe($"beyond: {(stated.Beyond is { } beyond ? Beyond[beyond] : "not established")}{warned}", title);
                break;
            case Adoption adoption:
                var how = adoption.AsOf is { } day
                    ? $"as it stood on {day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}"
                    : "as amended from time to time";
                summary.Split(", except: ")[0].ShouldBe($"adopts {adoption.Rule} {how}", title);
                summary.Contains(", except: ", StringComparison.Ordinal).ShouldBe(!adoption.Exceptions.IsEmpty, title);
                foreach (var change in adoption.Exceptions.Where(change => change.Added is null))
                    summary.ShouldContain($"tier {change.Tier}", Case.Sensitive, title);
                break;
            default:
                summary.ShouldBe(version.Content is NotRegulated ? "not regulated" : "not established", title);
                break;
        }
    }

    private static readonly Dictionary<Pathway, string> Beyond = new()
    {
        [Pathway.NoCertificate] = "allowed without a certificate",
        [Pathway.Certificate] = "allowed with a certificate",
        [Pathway.Approval] = "allowed with the authority's approval first",
        [Pathway.Prohibited] = "not allowed",
    };

    private static string State(Rule rule, RuleVersion version) =>
        version.Proposed ? "proposed"
        : version.Announced is not null ? "announced"
        : version.From is { } from && from.Earliest > Today ? "to come"
        : version.Until is { } until && until.Latest <= Today ? "ended"
        : rule.Versions.Any(other =>
            other is { From.Latest: var start, Announced: null, Proposed: false }
            && start <= Today
            && start > (version.From?.Latest ?? DateOnly.MinValue)
        )
            ? "ended"
        : "in force";

    private static DateOnly Compared(Jurisdiction place, RuleVersion version) =>
        version
            .Sources.Select(citation => Book.Source(place.Id, citation.Cite)!.Checked.Earliest)
            .Concat(version.Corrected.Select(correction => correction.On))
            .Max();

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(XElement entry, string name) => entry.Element(Atom + name)!.Value;

    private static string File(string path) => TheBook.Site.Single(file => file.Path == path).Text();
}
