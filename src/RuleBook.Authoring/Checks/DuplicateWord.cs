using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A word that the vocabulary has twice.</summary>
internal static class DuplicateWord
{
    internal static readonly CheckInfo Info = new(
        "duplicate-word",
        "a word of the vocabulary is defined twice",
        "One word must have one meaning.",
        "keep one of the two"
    );

    private static readonly string[] Kinds = ["measure", "fact", "condition", "category", "pathway", "topic"];

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from file in book.Files
        where file.Path.StartsWith("schema/vocabulary/", StringComparison.Ordinal)
        from list in (file.Root as Mapping)?.Entries.Select(entry => entry.Value).OfType<Sequence>() ?? []
        from word in Repeats.Of(list.Items.OfType<Mapping>().SelectMany(Words), word => word.Text)
        select Info.At(word.Mark, $"'{word.Text}' is already defined");

    private static IEnumerable<Scalar> Words(Mapping item) => Kinds.Select(item.Find).OfType<Scalar>().Take(1);
}
