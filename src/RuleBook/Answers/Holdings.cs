using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>What the book holds of one topic in one jurisdiction, and how it is known.</summary>
/// <param name="Place">The jurisdiction.</param>
/// <param name="Topic">The topic.</param>
/// <param name="State">complete, partial or none, as the jurisdiction's coverage says.</param>
/// <param name="Rules">Rules recorded.</param>
/// <param name="Values">Limits with a figure, by how the best source of their version is known.</param>
/// <param name="NotEstablished">Limits and rules that nobody has established.</param>
public sealed record Holding(
    Jurisdiction Place, Topic Topic, string State, int Rules, ImmutableSortedDictionary<ReadAs, int> Values, int NotEstablished);

/// <summary>Counts what is established and how it is known.</summary>
public static class Holdings
{
    /// <summary>One entry for each jurisdiction and topic, in the order of the ids.</summary>
    public static IEnumerable<Holding> Of(Book book) =>
        from place in book.Jurisdictions
        from topic in book.Vocabulary.Topics.Values.OrderBy(topic => topic.Name, StringComparer.Ordinal)
        select Of(book, place, topic);

    private static Holding Of(Book book, Jurisdiction place, Topic topic)
    {
        var rules = place.Rules.Where(rule => rule.Topic == topic.Name).ToArray();
        var limits = rules
            .SelectMany(rule => rule.Versions.Where(version => version.Decides))
            .SelectMany(version => LimitsOf(version).Select(pair => (pair.limit, basis: Best(book, place, version.Sources.AddRange(pair.own)))))
            .ToArray();
        return new Holding(
            place,
            topic,
            place.Coverage.FirstOrDefault(coverage => coverage.Topic == topic.Name)?.State ?? "none",
            topic.Name == "certification" ? place.Schemes.Length : rules.Length,
            limits.Where(pair => pair.limit.Kind != LimitKind.NotEstablished).CountBy(pair => pair.basis).ToImmutableSortedDictionary(),
            limits.Count(pair => pair.limit.Kind == LimitKind.NotEstablished)
                + rules.SelectMany(rule => rule.Versions).Count(version => version.Content is NotEstablished)
                + (topic.Name == "certification" ? place.Schemes.SelectMany(scheme => scheme.Versions).Sum(version => version.NotEstablished.Length) : 0));
    }

    private static IEnumerable<(Limit limit, ImmutableArray<Citation> own)> LimitsOf(RuleVersion version) => version.Content switch
    {
        Stated stated => stated.Tiers.SelectMany(tier => tier.Limits.Select(limit => (limit, tier.Sources))),
        Adoption adoption => adoption.Exceptions.SelectMany(change =>
            change.Limits.Select(limit => (limit, change.Sources)).Concat(change.Added?.Limits.Select(limit => (limit, change.Sources.AddRange(change.Added.Sources))) ?? [])),
        _ => [],
    };

    private static ReadAs Best(Book book, Jurisdiction place, ImmutableArray<Citation> citations) => citations
        .Select(citation => book.Source(place.Id, citation.Cite)?.ReadAs ?? ReadAs.Memory)
        .DefaultIfEmpty(ReadAs.Memory)
        .Min();
}
