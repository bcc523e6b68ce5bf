using RuleBook.Yaml;

namespace RuleBook.Site.Tests;

/// <summary>A book small enough to be told by hand, <c>tests/invented-book</c>, with the words of this repository.</summary>
internal static class InventedBook
{
    private static readonly Lazy<SiteBook> Made = new(() =>
        new SiteBook(
            TheBook.Make([.. TheBook.Texts().Where(file => file.Path.StartsWith("schema/vocabulary/", StringComparison.Ordinal)), .. Own()])
        )
    );

    public static SiteBook Site => Made.Value;

    private static IEnumerable<SiteSource> Own()
    {
        var folder = Path.Combine(TheBook.Folder, "tests", "invented-book");
        return Directory
            .EnumerateFiles(Path.Combine(folder, "jurisdictions"), "*.yaml", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(file =>
                (Path: Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/'), Text: File.ReadAllText(file))
            )
            .Select(file => new SiteSource(file.Path, file.Text, YamlText.Read(file.Text, file.Path)));
    }
}
