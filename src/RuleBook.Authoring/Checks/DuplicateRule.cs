using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Two rules of one name in a jurisdiction's topic.</summary>
internal static class DuplicateRule
{
    internal static readonly CheckInfo Info = new(
        "duplicate-rule",
        "two rules have the same id",
        "A rule is found by its id, in data, links and feeds.",
        "rename one of the two; the old name goes under aliases"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Repeats.Of(book.Rules, rule => rule.Id).Select(rule => Info.At(book.Value(rule.Mark, "rule"), $"'{rule.Id}' is already a rule"));
}
