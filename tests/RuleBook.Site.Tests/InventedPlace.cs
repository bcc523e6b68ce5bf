using System.Collections.Immutable;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests;

/// <summary>A book of one invented place with the words of this repository, its rules given by a test.</summary>
internal static class InventedPlace
{
    private static readonly Lazy<ImmutableArray<SiteSource>> Words = new(() =>
        [.. TheBook.Texts().Where(file => file.Path.StartsWith("schema/vocabulary/", StringComparison.Ordinal))]
    );

    /// <param name="topic">The topic of the rules.</param>
    /// <param name="rules">The rules as a list; each may cite <c>code</c>.</param>
    public static SiteBook With(string topic, string rules)
    {
        (string Path, string Text)[] own =
        [
            ("jurisdictions/xa/jurisdiction.yaml", "jurisdiction: xa\nname: The place\nregisters: yes\nask: { authority: The office }"),
            (
                "jurisdictions/xa/sources.yaml",
                "jurisdiction: xa\nsources: [{ source: code, title: The code, publisher: The place, read-as: primary, checked: 2026-11, "
                    + "recheck-after: 2027-11 }]"
            ),
            ($"jurisdictions/xa/{topic}.yaml", $"jurisdiction: xa\ntopic: {topic}\nrules:\n{rules}"),
        ];
        ImmutableArray<SiteSource> files =
        [
            .. Words.Value,
            .. own.Select(file => new SiteSource(file.Path, file.Text, YamlText.Read(file.Text, file.Path))),
        ];
        var problems = new List<Problem>();
        var book = BookReader.Read([.. files.Select(file => new BookFile(file.Path, file.Root))], "made", problems);
        problems.ShouldBeEmpty();
        return new SiteBook(new SiteInput(book, files, new DateOnly(2026, 11, 25), []));
    }
}
