using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A vocabulary without which no rule can be read.</summary>
internal static class VocabularyFile
{
    internal static readonly CheckInfo Info = new(
        "missing-file",
        "a file is missing",
        "A jurisdiction is known by its jurisdiction.yaml, and the words by the vocabulary.",
        "add the file"
    );

    /// <summary>The files of <c>schema/vocabulary</c>.</summary>
    internal static readonly string[] Known = ["categories", "cautions", "conditions", "facts", "measures", "pathways", "topics"];

    private static readonly string[] Needed = ["facts", "measures", "pathways", "topics"];

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Needed
            .Select(name => $"schema/vocabulary/{name}.yaml")
            .Where(path => book.Files.All(file => file.Path != path))
            .Select(path => Info.At(new Mark(path, 1, 1), $"the book has no {path}"));
}
