using System.Collections.Immutable;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Gaps;
using RuleBook.Cli.Commands;
using RuleBook.Law.Reading;
using RuleBook.Site.Building;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests;

/// <summary>The book of this repository, and the site that it makes.</summary>
internal static class TheBook
{
    private static readonly Lazy<SiteInput> Read = new(() => WithJobs(Make(Texts())));
    private static readonly Lazy<ImmutableArray<SiteFile>> Rendered = new(() => SiteBuild.Render(Read.Value));

    private static readonly DateOnly Day = new(2026, 11, 25);

    public static SiteInput Input => Read.Value;

    public static ImmutableArray<SiteFile> Site => Rendered.Value;

    public static string Folder { get; } = Upward(AppContext.BaseDirectory);

    public static ImmutableArray<SiteSource> Texts() =>
        [.. BookFolder.Load(Folder).Files.Select(file => new SiteSource(file.Path, file.Text, YamlText.Read(file.Text, file.Path)))];

    public static SiteInput Make(ImmutableArray<SiteSource> files)
    {
        var problems = new List<Problem>();
        var book = BookReader.Read([.. files.Select(file => new BookFile(file.Path, file.Root))], BookFolder.Load(Folder).Digest, problems);
        return problems.Count == 0
            ? new SiteInput(book, files, Day, []) { Open = TypicalJobs.Rank(book, Day, book.Jurisdictions) }
            : throw new InputException(problems);
    }

    private static SiteInput WithJobs(SiteInput input) => input with { Shown = ShownChanges.Of(input.Book) };

    private static string Upward(string from)
    {
        var folder = new DirectoryInfo(from);
        while (!Directory.Exists(Path.Combine(folder.FullName, "jurisdictions")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
