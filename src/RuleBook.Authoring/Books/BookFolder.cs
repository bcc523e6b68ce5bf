using System.Collections.Immutable;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Books;

/// <summary>The text of one file of a book.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes.</param>
/// <param name="Text">Its contents, without byte order mark; lines end with LF, whatever the checkout made of them.</param>
public sealed record BookText(string Path, string Text);

/// <summary>One file of a book that does not lie in a folder, as its bytes.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes.</param>
/// <param name="Content">UTF-8.</param>
public sealed record BookBytes(string Path, ReadOnlyMemory<byte> Content);

/// <summary>A book's files as found.</summary>
/// <param name="Files">In ordinal order of their paths.</param>
/// <param name="Digest"><c>sha256:</c> over names and contents; the same on every system.</param>
/// <param name="Problems">Files that could not be read, and files that do not belong there.</param>
public sealed record BookFolder(ImmutableArray<BookText> Files, string Digest, ImmutableArray<Problem> Problems)
{
    /// <summary>The most files that a book may have.</summary>
    public const int MostFiles = 5_000;

    /// <summary>The most bytes that all of them may have together.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>The list of the book's editions; a book may have none.</summary>
    internal const string Editions = EditionReader.Path;

    private static readonly string[] Fixed = ["schema/vocabulary", "schema/reference"];

    /// <summary>
    /// Reads the files of a book: <c>jurisdictions/editions.yaml</c>, <c>jurisdictions/*/*.yaml</c>, <c>schema/vocabulary/*.yaml</c> and
    /// <c>schema/reference/*.yaml</c>. A link is reported and not followed: what it leads to is not the book's.
    /// </summary>
    /// <param name="folder">The folder that has <c>jurisdictions</c> in it.</param>
    /// <exception cref="InputException">It is not a book, or too large for one.</exception>
    public static BookFolder Load(string folder)
    {
        var jurisdictions = Path.Combine(folder, "jurisdictions");
        if (!Directory.Exists(jurisdictions))
            throw new InputException(BookProblems.NotABook(folder));

        var problems = ImmutableArray.CreateBuilder<Problem>();
        var texts = new List<BookText>();
        string[] fixedAbove = ["jurisdictions", "schema", .. Fixed];
        problems.AddRange(fixedAbove.Where(place => IsLink(Path.Combine(folder, place))).Select(BookProblems.Link));
        if (problems.Count > 0)
            return Whole(texts, problems);

        foreach (var path in NotHidden(Directory.EnumerateFiles(jurisdictions)).Select(file => $"jurisdictions/{Path.GetFileName(file)}"))
            ReadFile(folder, path, texts, problems);
        var places = Directory.EnumerateDirectories(jurisdictions).Select(place => $"jurisdictions/{Path.GetFileName(place)}");
        foreach (var place in NotHidden(places).Concat(Fixed))
            if (IsLink(Path.Combine(folder, place)))
                problems.Add(BookProblems.Link(place));
            else
                ReadFolder(folder, place, texts, problems);
        return Whole(texts, problems);
    }

    /// <summary>The same from files that do not lie in a folder; what is not YAML or stands elsewhere is passed over.</summary>
    /// <exception cref="InputException">It is not a book, or too large for one.</exception>
    public static BookFolder Of(IEnumerable<BookBytes> files)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var texts = new List<BookText>();
        foreach (var (path, content) in files)
            if (IsOfABook(path))
                Add(texts, problems, path, () => YamlText.Text(content.Span, path));
        return texts.Count + problems.Count == 0 ? throw new InputException(BookProblems.NotABook("")) : Whole(texts, problems);
    }

    private static BookFolder Whole(List<BookText> texts, ImmutableArray<Problem>.Builder problems)
    {
        texts.Sort((left, right) => string.CompareOrdinal(left.Path, right.Path));
        return new BookFolder([.. texts], BookDigest.Of(texts), problems.ToImmutable());
    }

    private static void ReadFolder(string folder, string place, List<BookText> texts, ImmutableArray<Problem>.Builder problems)
    {
        var there = Path.Combine(folder, place);
        if (!Directory.Exists(there))
            return;
        foreach (var entry in NotHidden(Directory.EnumerateFileSystemEntries(there)))
            ReadFile(folder, $"{place}/{Path.GetFileName(entry)}", texts, problems);
    }

    private static void ReadFile(string folder, string path, List<BookText> texts, ImmutableArray<Problem>.Builder problems)
    {
        var entry = Path.Combine(folder, path);
        if (IsLink(entry))
            problems.Add(BookProblems.Link(path));
        else if (Directory.Exists(entry) || !IsOfABook(path))
            problems.Add(BookProblems.Stray(path));
        else
            Add(texts, problems, path, () => YamlText.FileText(entry, path));
    }

    private static void Add(List<BookText> texts, ImmutableArray<Problem>.Builder problems, string path, Func<string> read)
    {
        try
        {
            texts.Add(new BookText(path, read().Replace("\r\n", "\n", StringComparison.Ordinal)));
        }
        catch (InputException refusal)
        {
            problems.AddRange(refusal.Problems);
        }

        if (texts.Count + problems.Count > MostFiles || texts.Sum(text => (long)text.Text.Length) > MostBytes)
            throw new InputException(BookProblems.TooLarge());
    }

    private static bool IsOfABook(string path) =>
        path == Editions
        || path.EndsWith(".yaml", StringComparison.Ordinal)
            && path.Split('/') is ["jurisdictions", _, _] or ["schema", "vocabulary" or "reference", _];

    private static bool IsLink(string path) => new FileInfo(path).LinkTarget is not null;

    /// <summary>Hidden files (of an editor, of the operating system) are none of the book's business.</summary>
    private static IEnumerable<string> NotHidden(IEnumerable<string> paths) => paths.Where(path => !Path.GetFileName(path).StartsWith('.'));
}
