using System.Collections.Immutable;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests;

/// <summary>
/// A book small enough to be told by hand, <c>tests/invented-book</c>, with the words of this repository. No figure is that of any law.
/// </summary>
internal static class InventedBook
{
    private static readonly string Folder = Path.Combine(TestBook.Folder, "tests", "invented-book");

    private static readonly Lazy<Dictionary<string, (string Text, Node Root)>> Own = new(() =>
        Files(Path.Combine(TestBook.Folder, "schema", "vocabulary"), "schema/vocabulary")
            .Concat(Files(Path.Combine(Folder, "jurisdictions"), "jurisdictions"))
            .ToDictionary(file => file.Key, file => (file.Value, YamlText.Read(file.Value, file.Key)))
    );

    private static readonly Lazy<Book> Made = new(() => Of(_ => { }));
    private static readonly Lazy<Book> MadeWithSouth = new(() => Of(AddSouth));

    public static Book Book => Made.Value;

    /// <summary>The same with a second state, <c>south</c>, in which stands what the first has not.</summary>
    public static Book WithSouth => MadeWithSouth.Value;

    /// <summary>What is expected, in lines that a person holds against the book beside it; no command writes them.</summary>
    public static string Held(string file) => File.ReadAllText(Path.Combine(Folder, "held", file));

    /// <summary>Jobs with the answers that the book with the south should give, by hand.</summary>
    public static ImmutableArray<Case> Cases => CaseFolder.Load(Path.Combine(Folder, "cases"), WithSouth);

    /// <summary>The book with texts changed, by path.</summary>
    public static Book Of(Action<Dictionary<string, string>> change)
    {
        var texts = Own.Value.ToDictionary(file => file.Key, file => file.Value.Text);
        change(texts);
        var problems = new List<Problem>();
        var book = BookReader.Read(
            [.. texts.OrderBy(text => text.Key, StringComparer.Ordinal).Select(text => new BookFile(text.Key, Root(text.Key, text.Value)))],
            BookDigest.Of(texts.Select(text => new BookText(text.Key, text.Value))),
            problems
        );
        problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
        return book;
    }

    /// <summary>A file that is not changed is read once.</summary>
    private static Node Root(string path, string text) =>
        Own.Value.TryGetValue(path, out var own) && own.Text == text ? own.Root : YamlText.Read(text, path);

    public static void AddSouth(Dictionary<string, string> texts)
    {
        foreach (var (path, text) in Files(Path.Combine(Folder, "south"), "jurisdictions/xa-s"))
            texts.Add(path, text);
    }

    private static IEnumerable<KeyValuePair<string, string>> Files(string folder, string place) =>
        Directory
            .EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories)
            .Select(file =>
                KeyValuePair.Create(
                    $"{place}/{Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/')}",
                    File.ReadAllText(file)
                )
            );
}
