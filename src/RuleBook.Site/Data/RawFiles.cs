using System.Text;

namespace RuleBook.Site.Data;

/// <summary>The book's files as written.</summary>
internal static class RawFiles
{
    public static string Path(string file) => $"data/yaml/{string.Join('/', file.Split('/').Select(Links.Slug))}";

    public static IEnumerable<SiteFile> Of(SiteBook site) =>
        site.Input.Files.Select(file => new SiteFile(Path(file.Path), Encoding.UTF8.GetBytes(file.Text)));
}
