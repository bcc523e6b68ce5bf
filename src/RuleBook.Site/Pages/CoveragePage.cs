using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>What the book has, jurisdiction by topic.</summary>
internal static class CoveragePage
{
    public static Page Of(SiteBook site)
    {
        var places = site.Places.Select(place => new PlaceCard(
            place.Id,
            place.Name,
            Links.Jurisdiction(place.Id),
            place.Registers,
            JurisdictionPages.Oldest(place)?.Checked.Words ?? "",
            [
                .. site
                    .Topics.Select(topic => (topic, entry: place.Coverage.FirstOrDefault(entry => entry.Topic == topic.Name)))
                    .Select(pair => new CoverageMark(pair.topic.Title, pair.entry?.State ?? "none")),
            ]
        ));
        var topics = site.Topics.Select(topic => new Link(SiteBook.Heading(topic.Title), Links.Topic(topic.Name)));
        var body = Templates.Render(
            "coverage",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("places", places.ToArray()),
            ("topics", topics.ToArray())
        );
        return new Page("coverage.html", "What the book has", "coverage", body, []);
    }
}

/// <summary>A jurisdiction with what the book has of it.</summary>
internal sealed record PlaceCard(string Id, string Name, string Url, bool Registers, string Oldest, CoverageMark[] Coverage);

/// <summary>How much of a topic the book has.</summary>
internal sealed record CoverageMark(string Topic, string State);
