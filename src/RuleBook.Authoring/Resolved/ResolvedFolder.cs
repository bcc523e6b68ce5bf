using RuleBook.Authoring.Files;
using RuleBook.Law;

namespace RuleBook.Authoring.Resolved;

/// <summary>The resolved texts kept beside a book, <c>tests/resolved/&lt;id&gt;.txt</c>.</summary>
public static class ResolvedFolder
{
    /// <summary>Where a book keeps them, from the book's folder.</summary>
    public static string Within(string book) => Path.Combine(book, "tests", "resolved");

    /// <summary>
    /// The names of files that are missing, differ from the book or belong to no jurisdiction, in ordinal order; empty when all are fresh.
    /// </summary>
    /// <param name="folder">The folder of the texts.</param>
    /// <param name="book">The book.</param>
    public static IReadOnlyList<string> Stale(string folder, Book book)
    {
        var fresh = book.Jurisdictions.ToDictionary(place => $"{place.Id}.txt", place => ResolvedText.Of(book, place));
        var kept = Directory.Exists(folder)
            ? Directory
                .GetFiles(folder, "*.txt")
                .ToDictionary(file => Path.GetFileName(file), file => File.ReadAllText(file).ReplaceLineEndings("\n"))
            : [];
        return
        [
            .. fresh
                .Keys.Union(kept.Keys)
                .Where(name => fresh.GetValueOrDefault(name) != kept.GetValueOrDefault(name))
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>Writes what is missing or differs, takes away what belongs to no jurisdiction, and names what it changed.</summary>
    /// <param name="folder">The folder of the texts.</param>
    /// <param name="book">The book.</param>
    /// <param name="stop">Requested when the process is asked to end: no text is half written.</param>
    public static IReadOnlyList<string> Refresh(string folder, Book book, CancellationToken stop = default)
    {
        var stale = Stale(folder, book);
        Directory.CreateDirectory(folder);
        foreach (var name in stale)
        {
            var path = Path.Combine(folder, name);
            if (book.Jurisdictions.FirstOrDefault(place => $"{place.Id}.txt" == name) is not { } place)
            {
                File.Delete(path);
                continue;
            }

            WholeFile.Write(path, ResolvedText.Of(book, place), stop);
        }

        return stale;
    }
}
