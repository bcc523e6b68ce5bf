using System.Collections.Immutable;
using System.Text;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>A page before its frame.</summary>
/// <param name="Path">Relative to the site's root.</param>
/// <param name="Title">For the browser's tab and the heading.</param>
/// <param name="Section">The entry of the navigation that is lit.</param>
/// <param name="Body">Between header and footer.</param>
/// <param name="Scripts">Names of script files, loaded as modules.</param>
internal sealed record Page(string Path, string Title, string Section, Html Body, ImmutableArray<string> Scripts)
{
    /// <summary>The name of the site, behind every title.</summary>
    public const string Site = "RuleBook";

    /// <summary>A sentence for search results and link previews.</summary>
    public string Description { get; init; } =
        $"{Title}: limits on modified vehicles, state by state, each with its source and how it is known.";

    /// <summary>The way from the page up to the root of the site: empty, or <c>../</c> some times.</summary>
    public static string Root(string path) => string.Concat(Enumerable.Repeat("../", path.Count(letter => letter == '/')));

    public SiteFile Write(SiteBook site)
    {
        var html = Templates.Render(
            "frame",
            ("root", Root(Path)),
            ("title", Title),
            ("site", Site),
            ("description", Description),
            ("address", site.Input.Address?.AbsoluteUri ?? ""),
            ("path", Path),
            ("section", Section),
            ("body", Body),
            ("scripts", Scripts.ToArray()),
            ("imports", Imports.Of(Scripts)),
            ("has_check", !site.Input.Check.IsEmpty),
            ("day", Phrases.Day(site.Day)),
            ("digest", site.Book.Digest),
            ("topics", site.Topics.Select(topic => new Link(topic.Title, Links.Topic(topic.Name))).ToArray()),
            ("places", site.Places.Select(place => new Link(place.Name, Links.Jurisdiction(place.Id))).ToArray())
        );
        return new SiteFile(Path, Encoding.UTF8.GetBytes(html.Text));
    }
}
