using RuleBook.Site.Charts;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>The first page.</summary>
internal static class HomePage
{
    public static Page Of(SiteBook site)
    {
        var places = site.Places.Select(place => new PlaceCard(
            place.Id,
            place.Name,
            Links.Jurisdiction(place.Id),
            place.Registers,
            JurisdictionPages.Oldest(place)?.Checked.Words ?? "",
            [.. site.Topics
                .Select(topic => (topic, entry: place.Coverage.FirstOrDefault(entry => entry.Topic == topic.Name)))
                .Select(pair => new CoverageMark(pair.topic.Title, pair.entry?.State ?? "none"))]));
        var topics = site.Topics.Select(topic => new TopicCard(SiteBook.Heading(topic.Title), topic.Definition.Trim(), Links.Topic(topic.Name)));
        var body = Templates.Render(
            "home",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("places", places.ToArray()),
            ("topics", topics.ToArray()),
            ("diagram", HeightDiagram.Draw()),
            ("has_check", !site.Input.Check.IsEmpty),
            ("cautions", site.Book.Cautions.ToArray()));
        return new Page("index.html", "What may be changed on a vehicle, state by state", "home", body, []);
    }
}

/// <summary>A jurisdiction on the first page.</summary>
internal sealed record PlaceCard(string Id, string Name, string Url, bool Registers, string Oldest, CoverageMark[] Coverage);

/// <summary>How much of a topic the book has.</summary>
internal sealed record CoverageMark(string Topic, string State);

/// <summary>A topic on the first page.</summary>
internal sealed record TopicCard(string Title, string Definition, string Url);
