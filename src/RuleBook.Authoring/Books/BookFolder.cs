using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Books;

/// <summary>The text of one file of a book.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes.</param>
/// <param name="Text">Its contents, without byte order mark.</param>
public sealed record BookText(string Path, string Text);

/// <summary>A book's files as found on disk.</summary>
/// <param name="Files">In ordinal order of their paths.</param>
/// <param name="Digest"><c>sha256:</c> over names and contents; the same on every system.</param>
/// <param name="Problems">Files that could not be read, and files that do not belong there.</param>
public sealed record BookFolder(ImmutableArray<BookText> Files, string Digest, ImmutableArray<Problem> Problems)
{
    private static readonly string[] Fixed = ["schema/vocabulary", "schema/reference"];

    /// <summary>
    /// Reads the files of a book: <c>jurisdictions/*/*.yaml</c>, <c>schema/vocabulary/*.yaml</c> and <c>schema/reference/*.yaml</c>.
    /// </summary>
    /// <param name="folder">The folder that has <c>jurisdictions</c> in it.</param>
    /// <exception cref="InputException">It is not a book.</exception>
    public static BookFolder Load(string folder)
    {
        var jurisdictions = Path.Combine(folder, "jurisdictions");
        if (!Directory.Exists(jurisdictions)) throw new InputException(BookProblems.NotABook(folder));

        var problems = ImmutableArray.CreateBuilder<Problem>();
        var texts = new List<BookText>();
        var strays = Visible(Directory.EnumerateFiles(jurisdictions)).Select(file => $"jurisdictions/{Path.GetFileName(file)}");
        problems.AddRange(strays.Select(BookProblems.Stray));
        var places = Directory.EnumerateDirectories(jurisdictions).Select(place => $"jurisdictions/{Path.GetFileName(place)}");
        foreach (var place in Visible(places).Concat(Fixed)) ReadFolder(folder, place, texts, problems);

        texts.Sort((left, right) => string.CompareOrdinal(left.Path, right.Path));
        return new BookFolder([.. texts], BookDigest.Of(texts), problems.ToImmutable());
    }

    private static void ReadFolder(string folder, string place, List<BookText> texts, ImmutableArray<Problem>.Builder problems)
    {
        var there = Path.Combine(folder, place);
        if (!Directory.Exists(there)) return;
        foreach (var entry in Visible(Directory.EnumerateFileSystemEntries(there)))
        {
            var path = $"{place}/{Path.GetFileName(entry)}";
            if (Directory.Exists(entry) || !path.EndsWith(".yaml", StringComparison.Ordinal))
            {
                problems.Add(BookProblems.Stray(path));
                continue;
            }

            try
            {
                texts.Add(new BookText(path, YamlText.FileText(entry, path)));
            }
            catch (InputException refusal)
            {
                problems.AddRange(refusal.Problems);
            }
        }
    }

    /// <summary>Hidden files (of an editor, of the operating system) are none of the book's business.</summary>
    private static IEnumerable<string> Visible(IEnumerable<string> paths) => paths.Where(path => !Path.GetFileName(path).StartsWith('.'));
}
