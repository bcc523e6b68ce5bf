using RuleBook.Site.Charts;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>The first page: a quick check, and how high each state lets one go.</summary>
internal static class HomePage
{
    public static Page Of(SiteBook site)
    {
        var topics = site.Topics.Select(topic => new TopicCard(
            SiteBook.Heading(topic.Title),
            topic.Definition.Trim(),
            Links.Topic(topic.Name)
        ));
        var hasCheck = !site.Input.Check.IsEmpty;
        var body = Templates.Render(
            "home",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("quick", QuickCheck.Of(site)),
            ("vehicle", SampleVehicle.All[0].Title),
            ("stacks", TopicCharts.Stacks(site, SampleVehicle.All[..1])),
            ("topics", topics.ToArray()),
            ("diagram", HeightDiagram.Draw()),
            ("has_check", hasCheck),
            ("cautions", site.Book.Cautions.ToArray())
        );
        return new Page("index.html", "What may be changed on a vehicle, state by state", "home", body, hasCheck ? ["quick.js"] : [])
        {
            Description =
                "How high may a vehicle be raised, on which tyres, and who certifies? The limits of each state, with sources and "
                + "how each is known.",
        };
    }
}

/// <summary>A topic on the first page.</summary>
internal sealed record TopicCard(string Title, string Definition, string Url);
