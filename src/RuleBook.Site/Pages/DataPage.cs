using RuleBook.Site.Data;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>Where the data is, in which forms.</summary>
internal static class DataPage
{
    public static Page Of(SiteBook site)
    {
        var body = Templates.Render(
            "data",
            ("root", ""),
            ("version", LimitTables.Version),
            ("digest", site.Book.Digest),
            ("places", site.Places.Select(place => new Link(place.Name, $"data/{Links.Slug(place.Id)}")).ToArray()),
            ("files", site.Input.Files.Select(file => new FileView(file.Path, RawFiles.Path(file.Path), Links.Lines(file.Path))).ToArray())
        );
        return new Page("data.html", "The data", "data", body, []);
    }
}

/// <summary>A file of the book.</summary>
internal sealed record FileView(string Path, string Raw, string Lines);
