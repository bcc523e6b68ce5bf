using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Coverage of a topic that is no topic.</summary>
internal static class UnknownTopic
{
    internal static readonly CheckInfo Info = new(
        "unknown-topic",
        "a topic is not in the vocabulary",
        "Nothing would be looked up under it.",
        "use a topic of schema/vocabulary/topics.yaml"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from coverage in place.Coverage
        where !book.Book.Vocabulary.Topics.ContainsKey(coverage.Topic)
        select Info.At(
            book.Value(coverage.Mark, "topic"),
            $"'{coverage.Topic}' is not a topic of the vocabulary",
            Spelling.Tip(coverage.Topic, [.. book.Book.Vocabulary.Topics.Keys])
        );
}
