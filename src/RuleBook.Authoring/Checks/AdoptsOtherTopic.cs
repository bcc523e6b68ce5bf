using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An adoption of a rule on another topic.</summary>
internal static class AdoptsOtherTopic
{
    internal static readonly CheckInfo Info = new(
        "adopts-other-topic",
        "a rule of another topic is adopted",
        "Its tiers bound other measures; the verdict would stand on a topic that nobody meant.",
        "adopt a rule of the same topic"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        let theirs = book.Book.Rule(pair.Adoption.Rule)
        where theirs is not null && theirs.Topic != pair.Rule.Topic
        select Info.At(
            book.Value(pair.Adoption.Mark, "rule"),
            $"'{pair.Adoption.Rule}' is a rule on {theirs.Topic}, and this one is on {pair.Rule.Topic}"
        );
}
