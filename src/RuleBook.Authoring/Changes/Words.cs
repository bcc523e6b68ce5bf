using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>The words of two books together.</summary>
internal static class Words
{
    /// <summary>Both vocabularies; where both have a word, the new book's.</summary>
    public static Vocabulary Of(Book before, Book after) =>
        after.Vocabulary with
        {
            Measures = before.Vocabulary.Measures.SetItems(after.Vocabulary.Measures),
            Facts = before.Vocabulary.Facts.SetItems(after.Vocabulary.Facts),
            Conditions = before.Vocabulary.Conditions.SetItems(after.Vocabulary.Conditions),
            Topics = before.Vocabulary.Topics.SetItems(after.Vocabulary.Topics),
        };

    /// <summary>
    /// The measures of a topic that mean something else for a verdict: whether they touch it, what they are when absent, whether they ask
    /// for a rule of their own.
    /// </summary>
    public static ImmutableArray<string> Differing(Vocabulary before, Vocabulary after, string topic) =>
        [
            .. Touching(before, topic)
                .Union(Touching(after, topic))
                .Where(before.Measures.ContainsKey) // of a measure that is new no earlier job could speak
                .Where(name => Meaning(before, topic, name) != Meaning(after, topic, name))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>
    /// The rule with the words that it binds without naming them, of each fact of which the other book has others that have to be named: so
    /// that the two differ where they bind other vehicles.
    /// </summary>
    public static Rule SpelledOut(Rule rule, Vocabulary own, Vocabulary other) =>
        rule with
        {
            For = new Descriptions([
                .. rule.For.AnyOf.Select(description => new Predicate([
                    .. description.Tests,
                    .. own
                        .Facts.Values.Where(fact => description.Tests.All(test => test.Fact != fact.Name))
                        .Where(fact =>
                            other.Facts.TryGetValue(fact.Name, out var same) && !fact.WhereNamed.ToHashSet().SetEquals(same.WhereNamed)
                        )
                        .Select(fact => new FactTest(fact.Name, [.. fact.Values.Except(fact.WhereNamed)], null, rule.Mark)),
                ])),
            ]),
        };

    private static ImmutableArray<string> Touching(Vocabulary vocabulary, string topic) =>
        [.. vocabulary.Naming(topic).Select(measure => measure.Name)];

    private static (bool Touches, bool OfUse, Fraction? IfAbsent, bool? NeedsOwnRule) Meaning(
        Vocabulary vocabulary,
        string topic,
        string name
    )
    {
        var measure = vocabulary.Measures.GetValueOrDefault(name);
        return (
            Touching(vocabulary, topic).Contains(name),
            vocabulary.Topics.GetValueOrDefault(topic)?.OfUse == true,
            measure?.IfAbsent,
            measure?.NeedsOwnRule
        );
    }
}
