using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>One file of a book, as nodes.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes: <c>jurisdictions/au/ride-height.yaml</c>.</param>
/// <param name="Root">Its contents.</param>
public sealed record BookFile(string Path, Node Root)
{
    /// <summary>What stands at the head of the file, wherever in it that is; only of one that is written out.</summary>
    internal ImmutableArray<Node> Head { get; init; } = [];
}

/// <summary>
/// Reads a book from its files' nodes, without the checks of RuleBook.Authoring, whose <c>BookReading</c> opens a book to answer.
/// </summary>
public static class BookReader
{
    /// <summary>Reads all files; what cannot be read is left out and reported in <paramref name="problems"/>.</summary>
    /// <param name="files">The files of <c>jurisdictions/</c>, <c>schema/vocabulary/</c> and <c>schema/reference/</c>.</param>
    /// <param name="digest">The book's digest (see <see cref="Book.Digest"/>); it is kept as given.</param>
    /// <param name="problems">Receives what is wrong. A book with errors among it must not answer.</param>
    public static Book Read(IReadOnlyList<BookFile> files, string digest, List<Problem> problems)
    {
        files = [.. files.Select(file => WrittenOut.Of(file, problems))];
        var (vocabulary, cautions) = VocabularyReader.Read(files, problems);
        var folders = files
            .Select(file => (file, parts: file.Path.Split('/')))
            .Where(pair => pair.parts is ["jurisdictions", _, _])
            .GroupBy(pair => pair.parts[1], pair => pair.file)
            .OrderBy(folder => folder.Key, StringComparer.Ordinal);
        var book = new Book
        {
            Digest = digest,
            Vocabulary = vocabulary,
            Cautions = cautions,
            Jurisdictions = [.. folders.Select(folder => ReadFolder(folder.Key, [.. folder], vocabulary, problems))],
            Editions = EditionReader.Read(files, problems),
        };
        return book with { Reference = new ReferenceReader(files, cite => book.Source("", cite), problems).Read() };
    }

    private static Jurisdiction ReadFolder(string folder, ImmutableArray<BookFile> files, Vocabulary vocabulary, List<Problem> problems)
    {
        BookFile? Find(string name) => files.FirstOrDefault(file => file.Path.EndsWith($"/{name}.yaml", StringComparison.Ordinal));

        Fields? Open(string name) => Find(name) is { } file ? new Fields(file.Root, problems) : null;

        var sources = Open("sources") is { } list ? SourceReader.ReadAll(list, folder) : [];
        var schemes = Open("certification") is { } certification ? SchemeReader.ReadAll(certification, folder, vocabulary) : [];
        var rules = vocabulary
            .Topics.Keys.Order(StringComparer.Ordinal)
            .Where(topic => topic != "certification")
            .SelectMany(topic =>
                Find(topic) is { } file ? new RuleReader(folder, topic, vocabulary, file.Head).ReadAll(new Fields(file.Root, problems)) : []
            );

        if (Open("jurisdiction") is { } own)
            return JurisdictionReader.Read(own, folder, vocabulary, sources, [.. rules], schemes);
        var mark = new Mark($"jurisdictions/{folder}/jurisdiction.yaml", 1, 1);
        problems.Add(Problem.Error("missing-file", mark, $"jurisdictions/{folder} has no jurisdiction.yaml", "add the file"));
        return new Jurisdiction
        {
            Id = folder,
            Name = folder,
            Ask = new Authority("", null),
            Sources = sources,
            Rules = [.. rules],
            Schemes = schemes,
            Mark = mark,
        };
    }
}
