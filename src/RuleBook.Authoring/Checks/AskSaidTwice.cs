using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Whom to ask, written as a sentence that begins with the word which every answer puts before it.</summary>
internal static class AskSaidTwice
{
    internal static readonly CheckInfo Info = new(
        "ask-said-twice",
        "whom to ask begins with 'Ask'",
        "An answer says 'Ask' and then what is written here.",
        "write whom to ask and what: the department how far this vehicle may be raised",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from rule in book.Rules
        from version in rule.Versions
        let open = version.Content as NotEstablished
        where open is not null && open.Ask.StartsWith("ask ", StringComparison.OrdinalIgnoreCase)
        select Info.At(version.Mark, $"'{open.Ask.Trim()}' begins with 'Ask'");
}
