using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A file whose name is no topic.</summary>
internal static class StrayFile
{
    internal static readonly CheckInfo Info = new(
        "stray-file",
        "a file does not belong to the book",
        "What stands in a file that nobody reads does not apply, and nobody would notice.",
        "a book has jurisdictions/<id>/<topic>.yaml, sources.yaml and jurisdiction.yaml, and schema/vocabulary/*.yaml; rename or remove it"
    );

    private static readonly string[] Always = ["jurisdiction", "sources"];

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from file in book.Files
        let parts = file.Path.Split('/')
        let name = Path.GetFileNameWithoutExtension(parts[^1])
        where
            parts is ["jurisdictions", _, _]
                ? !Always.Contains(name) && !book.Book.Vocabulary.Topics.ContainsKey(name)
                : parts is ["schema", "vocabulary", _] && !VocabularyFile.Known.Contains(name)
        select Info.At(new Mark(file.Path, 1, 1), $"'{name}' is not a topic of the vocabulary");
}
