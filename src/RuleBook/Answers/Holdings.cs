using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>What the book holds of one topic in one jurisdiction, and how it is known.</summary>
/// <param name="Place">The jurisdiction.</param>
/// <param name="Topic">The topic.</param>
/// <param name="State">complete, partial or none, as the jurisdiction's coverage says.</param>
/// <param name="Rules">Rules recorded.</param>
/// <param name="Values">Limits with a figure that some citation carries, by how it is known.</param>
/// <param name="NotEstablished">Limits and rules that nobody has established.</param>
internal sealed record Holding(
    Jurisdiction Place,
    Topic Topic,
    string State,
    int Rules,
    ImmutableSortedDictionary<ReadAs, int> Values,
    int NotEstablished
)
{
    /// <summary>Limits with a figure that no citation carries.</summary>
    public int WithoutSource { get; init; }
}

/// <summary>Counts what is established and how it is known.</summary>
internal static class Holdings
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
            .SelectMany(rule => rule.Versions.Where(version => version.Decides).Select(version => (rule, version)))
            .SelectMany(written =>
                LimitsOf(written.version)
                    .Select(pair => (pair.limit, basis: Basis(book, written.rule, written.version, pair.tier, pair.limit)))
            )
            .ToArray();
        var known = limits.Where(pair => pair.limit.Kind != LimitKind.NotEstablished).ToArray();
        return new Holding(
            place,
            topic,
            place.Coverage.FirstOrDefault(coverage => coverage.Topic == topic.Name)?.State ?? "none",
            topic.Name == "certification" ? place.Schemes.Length : rules.Length,
            known.Select(pair => pair.basis).OfType<ReadAs>().CountBy(basis => basis).ToImmutableSortedDictionary(),
            limits.Count(pair => pair.limit.Kind == LimitKind.NotEstablished)
                + rules.SelectMany(rule => rule.Versions).Count(version => version.Content is NotEstablished)
                + (
                    topic.Name == "certification"
                        ? place.Schemes.SelectMany(scheme => scheme.Versions).Sum(version => version.NotEstablished.Length)
                        : 0
                )
        )
        {
            WithoutSource = known.Count(pair => pair.basis is null),
        };
    }

    private static IEnumerable<(string tier, Limit limit)> LimitsOf(RuleVersion version) =>
        version.Content switch
        {
            Stated stated => stated.Tiers.SelectMany(tier => tier.Limits.Select(limit => (tier.Name, limit))),
            Adoption adoption => adoption.Exceptions.SelectMany(change =>
                (change.Added?.Limits ?? change.Limits).Select(limit => (change.Added?.Name ?? change.Tier ?? "", limit))
            ),
            _ => [],
        };

    private static ReadAs? Basis(Book book, Rule rule, RuleVersion version, string tier, Limit limit) =>
        new Evidence(book, [new WrittenVersion(rule, version)]).Of(new Part(tier, limit.Measure)).Basis;
}
