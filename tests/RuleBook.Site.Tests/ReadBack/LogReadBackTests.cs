using System.Globalization;
using AngleSharp.Dom;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>The log of changes read back: each entry against the two versions of the book between which it stands.</summary>
public sealed class LogReadBackTests
{
    private const string Warning = "a breach brings a warning only";

    private static readonly Book Book = TheBook.Input.Book;

    private static readonly Lazy<IElement[]> Entries = new(() =>
        [.. Parsed.Of(TheBook.Site.Where(LogTests.IsLog)).SelectMany(page => page.Document.All("li[data-kind=law]"))]
    );

    [Fact]
    public void Each_version_with_a_day_behind_us_is_one_entry_with_its_place_its_day_and_a_source_that_it_cites()
    {
        var versions = Began().ToArray();
        Entries.Value.Length.ShouldBe(versions.Length);
        foreach (var (rule, version) in versions)
        {
            var entry = Entry(rule, version);
            var day = version.From!;
            if (day.Earliest == day.Latest)
                entry.QuerySelector("b")!.TextContent.ShouldBe(day.Earliest.ToString("d MMMM yyyy", CultureInfo.InvariantCulture));
            else
                entry.QuerySelector("b")!.TextContent.ShouldContain(day.Earliest.Year.ToString(CultureInfo.InvariantCulture));
            entry.Closest("details")!.GetAttribute("data-year").ShouldBe(day.Earliest.Year.ToString(CultureInfo.InvariantCulture));
            entry.GetAttribute("data-place").ShouldBe(rule.Jurisdiction);
            entry.GetAttribute("data-topic").ShouldBe(rule.Topic);
            entry.QuerySelector("p a")!.TextContent.ShouldBe(rule.Title);
            var cited = version.Sources.Select(citation => Book.Source(rule.Jurisdiction, citation.Cite)!.Title).ToArray();
            cited.ShouldContain(title => entry.QuerySelector(".says a")!.TextContent.StartsWith(title), rule.Id);
        }
    }

    [Fact]
    public void What_held_before_and_holds_after_is_told_in_the_figures_of_the_two_versions_and_in_no_other()
    {
        foreach (var (rule, version) in Began())
        {
            var said = Entry(rule, version).QuerySelectorAll("dl.was dd").Take(2).Select(Lines).ToArray();
            var earlier = rule.Versions.Take(rule.Versions.IndexOf(version)).LastOrDefault(each => each.Decides);
            said[0].Contains(Warning).ShouldBe(earlier?.WarningOnly == true && !version.WarningOnly, rule.Id);
            said[1].Contains(Warning).ShouldBe(version.WarningOnly && earlier?.WarningOnly != true, rule.Id);
            string[][] told = [.. said.Select(lines => lines.Except([Warning]).ToArray())];
            if (earlier is null)
                told[0].ShouldBe(["nothing in the book"], rule.Id);
            var after = Contents(rule, version, version.From!.Latest);
            var before = earlier is null ? [] : Contents(rule, earlier, version.From.Earliest.AddDays(-1));
            if (earlier is not null)
                Tells(told[0], before, after, rule);
            Tells(told[1], after, before, rule);
        }
    }

    private static void Tells(string[] told, Content[] own, Content[] other, Rule rule)
    {
        if (told is ["no other figure"])
            return;
        foreach (var line in told)
        {
            own.ShouldContain(content => Says(line, content), $"{rule.Id}: {line}");
            other.ShouldNotContain(content => Says(line, content), $"{rule.Id} told as a change: {line}");
        }

        Tier[] theirs = [.. other.OfType<Stated>().SelectMany(stated => stated.Tiers)];
        foreach (var tier in own.OfType<Stated>().SelectMany(stated => stated.Tiers).Where(tier => !theirs.Any(each => Like(each, tier))))
            told.ShouldContain(line => Way(line, tier), $"{rule.Id} leaves out {tier.Name}");
    }

    private static bool Way(string line, Tier tier) => WrittenTier.Of(line)?.Tells(tier, Book.Vocabulary) == true;

    private static bool Like(Tier one, Tier other) =>
        one.Pathway == other.Pathway
        && one.When.Tests.Select(Words).ToHashSet().SetEquals(other.When.Tests.Select(Words))
        && one.Limits.Select(Words).ToHashSet().SetEquals(other.Limits.Select(Words));

    private static string Words(FactTest test) => $"{test.Fact} {string.Join('|', test.OneOf)} {test.Bounds}";

    private static string Words(Limit limit) => $"{limit.Measure} {limit.Kind} {limit.Bounds}";

    private static IEnumerable<(Rule Rule, RuleVersion Version)> Began() =>
        Book
            .Jurisdictions.SelectMany(place => place.Rules.SelectMany(rule => rule.Versions.Select(version => (rule, version))))
            .Where(each => each.version is { Proposed: false, Announced: null, From: { } from } && from.Earliest <= TheBook.Input.Day);

    private static Content[] Contents(Rule rule, RuleVersion version, DateOnly day)
    {
        var alone = rule with { Versions = [version with { From = null, InForceBy = null, Until = null }] };
        return [.. Resolver.Resolve(Book, alone, day).Select(resolved => resolved.Content)];
    }

    private static IElement Entry(Rule rule, RuleVersion version) =>
        Entries.Value.Single(entry => entry.QuerySelector("p a")!.GetAttribute("href") == Links.Version(rule, version));

    private static string[] Lines(IElement cell) => [.. cell.QuerySelectorAll("span").Select(line => line.TextContent)];

    private static bool Says(string line, Content content) =>
        content switch
        {
            NotRegulated => line == "not regulated",
            Stated stated when line.StartsWith("beyond: ", StringComparison.Ordinal) => line
                == $"beyond: {(stated.Beyond is { } beyond ? ReadTier.Pathways[beyond] : "not established")}",
            Stated stated => WrittenTier.Of(line) is { } way && stated.Tiers.Any(tier => way.Tells(tier, Book.Vocabulary)),
            _ => line == "not established",
        };
}
