using RuleBook.Authoring.Resolved;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An entry of <c>any-of</c> in a rule's <c>for</c> by which the rule binds no vehicle more.</summary>
internal static class IdleAlternative
{
    internal static readonly CheckInfo Info = new(
        "idle-alternative",
        "a rule binds no vehicle more by an alternative",
        "Another alternative takes in its vehicles, or what stands beside 'any-of' leaves them out; a single one is none.",
        "correct it, take it out, or write a single one without 'any-of'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from file in book.Files
        from rule in ((file.Root as Mapping)?.Find("rules") as Sequence)?.Items.OfType<Mapping>() ?? []
        let vehicles = rule.Find("for") as Mapping
        let any = vehicles?.Find("any-of") as Sequence
        where any is not null
        from entry in any.Items
        let only = any.Items.Length == 1
        where
            only
            || Read(book.Book.Vocabulary, vehicles, any)
                == Read(book.Book.Vocabulary, vehicles, any with { Items = any.Items.Remove(entry) })
        select Info.At(entry.Mark, only ? "there is no alternative to this" : "the rule binds no vehicle more by this");

    private static string Read(Vocabulary vocabulary, Mapping vehicles, Sequence any)
    {
        var entries = vehicles.Entries.Select(entry => entry.Key.Text == "any-of" ? KeyValuePair.Create(entry.Key, (Node)any) : entry);
        var read = new LimitReader(vocabulary).ReadDescriptions(new Fields(vehicles with { Entries = [.. entries] }, []));
        return string.Join('\n', read.AnyOf.Select(each => LimitWords.Of(each, vocabulary)).Order(StringComparer.Ordinal));
    }
}
