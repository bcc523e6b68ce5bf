using System.Collections.Immutable;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>The book of this repository with one file edited, compared over the places that the edit can reach and no more.</summary>
internal static class WeakenedBook
{
    private sealed record Read(ImmutableArray<BookText> Texts, ImmutableArray<BookFile> Files);

    private static readonly Lazy<Read> Sound = new(() =>
    {
        var texts = BookFolder.Load(TestBook.Folder).Files;
        return new Read(texts, [.. texts.Select(file => new BookFile(file.Path, YamlText.Read(file.Text, file.Path)))]);
    });

    /// <summary>The book with the first place where a text stands in a file put otherwise; it has no error.</summary>
    public static Book With(string path, string from, string to) => With((path, from, to));

    /// <summary>The same of several places, one after another.</summary>
    public static Book With(params (string Path, string From, string To)[] edits)
    {
        var edited = edits
            .GroupBy(edit => edit.Path)
            .ToDictionary(group => group.Key, group => YamlText.Read(group.Aggregate(Text(group.Key), Edited), group.Key));
        var problems = new List<Problem>();
        var book = BookReader.Read(
            [.. Sound.Value.Files.Select(file => edited.TryGetValue(file.Path, out var root) ? new BookFile(file.Path, root) : file)],
            "sha256:weakened",
            problems
        );
        problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
        return book;
    }

    /// <summary>What an inspection says of the book with some files more.</summary>
    public static InspectionReport And(params (string Path, string Text)[] files) =>
        Inspection.Run(
            [.. Sound.Value.Files, .. files.Select(file => new BookFile(file.Path, YamlText.Read(file.Text, file.Path)))],
            "sha256:more",
            new DateOnly(2026, 11, 28)
        );

    private static string Text(string path) => Sound.Value.Texts.Single(file => file.Path == path).Text;

    private static string Edited(string text, (string Path, string From, string To) edit)
    {
        var at = text.IndexOf(edit.From, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, $"'{edit.From}' does not stand in {edit.Path} any more");
        return text.Remove(at, edit.From.Length).Insert(at, edit.To);
    }

    /// <summary>The cases of the place whose file it is that fail on the book.</summary>
    public static IEnumerable<CaseResult> Failing(Book weakened, string path) =>
        TestBook
            .Cases.Where(one => one.Jurisdiction == Touched(path))
            .Select(one => CaseRun.Run(weakened, one))
            .Where(result => !result.Passed);

    /// <summary>
    /// What changes in the place whose file it is; of a word or figure of no single place, in North Carolina, which has few rules.
    /// </summary>
    public static ChangeReport Changes(Book weakened, string path)
    {
        Book Of(Book book) =>
            book with
            {
                Jurisdictions =
                [
                    .. book.Jurisdictions.Where(place =>
                        place.Id == Touched(path) || Touched(path).StartsWith($"{place.Id}-", StringComparison.Ordinal)
                    ),
                ],
            };
        return BookChanges.Between(Of(TestBook.Book), Of(weakened));
    }

    private static string Touched(string path) => path.Split('/') is ["jurisdictions", var place, _] ? place : "us-nc";
}
