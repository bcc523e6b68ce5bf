using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A word of what opens a tier that no vehicle which the rule binds can have.</summary>
internal static class WordNotBound
{
    internal static readonly CheckInfo Info = new(
        "word-not-bound",
        "a tier names vehicles that its rule does not bind",
        "Nothing that is said of them is ever read. A category that is bound where it is named has to stand in the rule's own 'for'.",
        "name it in the rule's 'for', give those vehicles a rule of their own, or take the word out",
        Severity.Warning
    );

    /// <summary>A tier that other rules take over by <c>like</c> is read where any of them binds the word.</summary>
    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        from opening in Openings(pair.Version.Content)
        from test in opening.Tests
        where test.Bounds is null
        group (Test: test, Bound: test.OneOf.Intersect(Bound(pair.Rule, book.Book.Vocabulary.Facts[test.Fact]))) by test.Mark into written
        let test = written.First().Test
        let bound = written.SelectMany(each => each.Bound).ToArray()
        let dead = written.SelectMany(each => each.Test.OneOf).Except(bound).ToArray()
        where dead.Length > 0 && !(test.LeftOver && bound.Length > 0)
        select Info.At(written.Key, $"the rule does not bind {test.Fact} {string.Join(", ", dead)}");

    private static IEnumerable<string> Bound(Rule rule, FactWord fact) =>
        rule.For.AnyOf.SelectMany(each =>
            each.Tests.FirstOrDefault(test => test.Fact == fact.Name)?.OneOf ?? fact.Values.Except(fact.WhereNamed)
        );

    private static IEnumerable<Predicate> Openings(Content content) =>
        content switch
        {
            Stated stated => stated.Tiers.Select(tier => tier.When),
            Adoption adoption => adoption.Exceptions.Select(change => change.Added?.When ?? change.When).OfType<Predicate>(),
            _ => [],
        };
}
