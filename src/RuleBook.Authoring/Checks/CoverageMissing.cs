using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A topic of the vocabulary without an entry of coverage.</summary>
internal static class CoverageMissing
{
    internal static readonly CheckInfo Info = new(
        "coverage-missing",
        "it is not said what the book has on a topic",
        "What is not known is written down as not known.",
        "add an entry with complete, partial (and what lacks) or none"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from topic in book.Book.Vocabulary.Topics.Keys.Order(StringComparer.Ordinal)
        where place.Coverage.All(coverage => coverage.Topic != topic)
        select Info.At(book.Key(place.Mark, "coverage"), $"coverage lacks the topic '{topic}'");
}
