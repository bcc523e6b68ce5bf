using System.Collections.Immutable;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>The book of this repository with one file edited, compared over the places that the edit can reach and no more.</summary>
internal static class WeakenedBook
{
    private sealed record Read(ImmutableArray<BookText> Texts, ImmutableArray<BookFile> Files);

    private static readonly Kept<Read> Sound = new(() =>
    {
        var texts = BookFolder.Load(TestBook.Folder).Files;
        return new Read(texts, [.. texts.Select(file => new BookFile(file.Path, YamlText.Read(file.Text, file.Path)))]);
    });

    /// <summary>The book with the first place where <paramref name="from"/> stands in a file put otherwise; it has no error.</summary>
    public static Book With(string path, string from, string to)
    {
        var text = Sound.Value.Texts.Single(file => file.Path == path).Text;
        var at = text.IndexOf(from, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, $"'{from}' does not stand in {path} any more");
        var root = YamlText.Read(text.Remove(at, from.Length).Insert(at, to), path);
        var problems = new List<Problem>();
        var book = BookReader.Read([.. Sound.Value.Files.Select(file => file.Path == path ? new BookFile(path, root) : file)], "sha256:weakened", problems);
        problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
        return book;
    }

    /// <summary>The cases of the place whose file it is that fail on the book.</summary>
    public static IEnumerable<CaseResult> Failing(Book weakened, string path) =>
        TestBook.Cases.Where(one => one.Jurisdiction == Touched(path)).Select(one => CaseRun.Run(weakened, one)).Where(result => !result.Passed);

    /// <summary>What changes in the place whose file it is; of a word or figure of no single place, in North Carolina, which has few rules.</summary>
    public static ChangeReport Changes(Book weakened, string path)
    {
        Book Of(Book book) => book with { Jurisdictions = [.. book.Jurisdictions.Where(place => place.Id == Touched(path) || Touched(path).StartsWith($"{place.Id}-", StringComparison.Ordinal))] };
        return BookChanges.Between(Of(TestBook.Book), Of(weakened));
    }

    private static string Touched(string path) => path.Split('/') is ["jurisdictions", var place, _] ? place : "us-nc";
}
