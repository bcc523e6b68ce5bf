using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>Every file of the book line by line, so that a link can name one.</summary>
internal static class LinesPages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site) => site.Input.Files.Select(file => (Func<Page>)(() => Of(file)));

    private static Page Of(SiteSource file)
    {
        var path = Links.Lines(file.Path);
        var body = Templates.Render(
            "lines",
            ("root", Page.Root(path)),
            ("path", file.Path),
            ("raw", Data.RawFiles.Path(file.Path)),
            ("lines", file.Text.TrimEnd().Split('\n').Select(line => line.TrimEnd('\r')).ToArray())
        );
        return new Page(path, file.Path, "data", body, []);
    }
}
