using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Charts;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>
/// A page for each jurisdiction: limits in force, how they are measured, who certifies, how it came about, what is not known.
/// </summary>
internal static class JurisdictionPages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site) => site.Places.Select(place => (Func<Page>)(() => Of(site, place)));

    private static Page Of(SiteBook site, Jurisdiction place)
    {
        var body = Templates.Render(
            "jurisdiction",
            ("root", Page.Root(Links.Jurisdiction(place.Id))),
            ("day", Phrases.Day(site.Day)),
            ("id", place.Id),
            ("name", place.Name),
            ("registers", place.Registers),
            ("registers_note", place.RegistersNote?.Trim() ?? ""),
            (
                "decided_by",
                place.DecidedBy switch
                {
                    "work" => "of the work",
                    null => "",
                    var word => $"of {word}",
                }
            ),
            ("ask", place.Ask.Name),
            ("ask_url", Links.Web(place.Ask.Url)),
            ("oldest", Oldest(place)?.Checked.Words ?? ""),
            ("diagram", HeightDiagram.Draw()),
            ("only_where_named", LimitPhrases.OnlyWhereNamed(site.Words).ToArray()),
            ("topics", Topics(site, place)),
            ("schemes", SchemeView.Of(site, place).ToArray()),
            ("cautions", CautionView.Of(site, place).ToArray()),
            ("history", HistoryView.Of(site, place).ToArray()),
            (
                "coverage",
                place
                    .Coverage.Select(entry => new CoverageView(
                        site.Words.Topics.TryGetValue(entry.Topic, out var topic) ? topic.Title : entry.Topic,
                        entry.State,
                        entry.Lacks?.Trim() ?? "",
                        Links.Line(entry.Mark)
                    ))
                    .ToArray()
            ),
            (
                "sources",
                place
                    .Sources.OrderBy(source => source.Checked.Earliest)
                    .ThenBy(source => source.Id, StringComparer.Ordinal)
                    .Select(SourceView.Of)
                    .ToArray()
            )
        );
        return new Page(Links.Jurisdiction(place.Id), place.Name, "jurisdictions", body, ["report.js", "fold.js"])
        {
            Description =
                $"Lifts, tyres, ratings and towing of modified vehicles in {place.Name}: what is free, what needs a certificate, "
                + "who certifies, each limit with its source.",
        };
    }

    /// <summary>The source that somebody compared the longest time ago.</summary>
    public static Source? Oldest(Jurisdiction place) =>
        place.Sources.MinBy(source => (source.Checked.Earliest, source.Id), Comparer<(DateOnly, string)>.Create(ByDayThenName));

    private static int ByDayThenName((DateOnly Day, string Name) left, (DateOnly Day, string Name) right) =>
        left.Day != right.Day ? left.Day.CompareTo(right.Day) : string.CompareOrdinal(left.Name, right.Name);

    private static TopicRules[] Topics(SiteBook site, Jurisdiction place) =>
        [
            .. site
                .Topics.Select(topic => new TopicRules(
                    SiteBook.Heading(topic.Title),
                    Links.Topic(topic.Name),
                    topic.Name == KnownWords.RideHeight,
                    [.. place.Rules.Where(rule => rule.Topic == topic.Name).Select(rule => RuleView.Of(site, rule))]
                ))
                .Where(topic => topic.Rules.Length > 0),
        ];
}

/// <summary>The rules of a topic.</summary>
internal sealed record TopicRules(string Title, string Url, bool HasHeights, RuleView[] Rules);

/// <summary>A rule as in force on the site's day.</summary>
internal sealed record RuleView(string Id, string Anchor, string Title, string For, string DecidedBy, bool ByTravel, VersionView[] Versions)
{
    public static RuleView Of(SiteBook site, Rule rule)
    {
        var versions = Resolver.Resolve(site.Book, rule, site.Day);
        return new RuleView(
            rule.Id,
            Links.Anchor(rule),
            rule.Title,
            Say.When(site.Words, rule.For, null),
            rule.DecidedBy ?? "",
            rule.GovernedByTravel,
            [.. versions.Select(version => VersionView.Of(site, version, versions.Length == 1))]
        );
    }
}

/// <summary>What is to be borne in mind, and for which vehicles.</summary>
internal sealed record CautionView(string Text, string When, string Line, CitationView[] Sources)
{
    /// <summary>Those of the place, then those of the nation around it, as an answer tells them.</summary>
    public static IEnumerable<CautionView> Of(SiteBook site, Jurisdiction place)
    {
        var nation = place.Within is { } within ? site.Book.Jurisdiction(within) : null;
        return from each in new[] { place, nation }.OfType<Jurisdiction>() from caution in each.Cautions select Of(site, each, caution);
    }

    private static CautionView Of(SiteBook site, Jurisdiction place, Caution caution) =>
        new(
            caution.Text.Trim(),
            Say.When(site.Words, caution.When),
            Links.Line(caution.Mark),
            CitationView.Of(site, place.Id, caution.Sources)
        );
}

/// <summary>What the book has on a topic.</summary>
internal sealed record CoverageView(string Topic, string State, string Lacks, string Line);
