using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An adoption that leads nowhere.</summary>
internal static class UnknownRule
{
    internal static readonly CheckInfo Info = new(
        "unknown-rule",
        "a rule is adopted that is not in the book",
        "The adopting rule would say nothing.",
        "correct the id (jurisdiction/topic/rule), or add the rule"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        where book.Book.Rule(pair.Adoption.Rule) is null
        select Info.At(
            book.Value(pair.Adoption.Mark, "rule"),
            $"there is no rule '{pair.Adoption.Rule}'",
            Near(book, pair.Adoption.Rule) is { } near ? $"did you mean '{near}'?" : null
        );

    /// <summary>A rule is often named without its jurisdiction and topic.</summary>
    private static string? Near(Inspected book, string id) =>
        book.Rules.Select(rule => rule.Id).FirstOrDefault(known => known.EndsWith($"/{id}", StringComparison.Ordinal))
        ?? Spelling.Nearest(id, book.Rules.Select(rule => rule.Id));
}
