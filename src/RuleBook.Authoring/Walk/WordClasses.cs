using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Walk;

/// <summary>The words about a vehicle, each standing for all that no test of the rules tells apart.</summary>
internal static class WordClasses
{
    /// <summary>Every combination of one word of each class, by fact.</summary>
    public static IEnumerable<ImmutableDictionary<string, string>> Of(IEnumerable<ResolvedVersion> versions, Vocabulary vocabulary)
    {
        var facts = Tests(versions)
            .GroupBy(test => test.Fact)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => (Fact: group.Key, Words: Classes(vocabulary.Facts[group.Key], [.. group])));
        return facts.Aggregate(
            (IEnumerable<ImmutableDictionary<string, string>>)[ImmutableDictionary<string, string>.Empty],
            (all, fact) => all.SelectMany(words => fact.Words.Select(word => words.SetItem(fact.Fact, word.First())))
        );
    }

    /// <summary>The words of a fact, those together that pass the same tests.</summary>
    public static IEnumerable<string[]> Classes(FactWord fact, ImmutableArray<FactTest> tests) =>
        fact
            .Values.GroupBy(word => string.Join(' ', tests.Select(test => test.OneOf.Contains(word) ? 'y' : 'n')))
            .Select(group => group.ToArray());

    public static IEnumerable<FactTest> Tests(IEnumerable<ResolvedVersion> versions) =>
        versions
            .SelectMany(version =>
                version.Rule.For.Tests.Concat(version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.When.Tests) : [])
            )
            .Where(test => test.Bounds is null);
}
