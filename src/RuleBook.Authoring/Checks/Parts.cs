using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Authoring.Checks;

/// <summary>What a citation can carry, by where it stands.</summary>
internal static class Parts
{
    /// <summary>Of a tier.</summary>
    internal static IEnumerable<Part> Of(Tier tier)
    {
        yield return new Part(tier.Name, Part.Gives);
        if (!tier.When.Tests.IsEmpty)
            yield return new Part(tier.Name, Part.When);
        foreach (var limit in tier.Limits)
            yield return new Part(tier.Name, limit.Measure);
        if (!tier.Provided.IsEmpty)
            yield return new Part(tier.Name, Part.Conditions);
        if (!tier.Codes.IsEmpty)
            yield return new Part(tier.Name, Part.Codes);
    }

    /// <summary>Of an exception.</summary>
    internal static IEnumerable<Part> Of(Departure change) =>
        change.Beyond is not null ? [Part.Beyond]
        : change.Added is { } added ? Of(added)
        :
        [
            new Part(change.Tier, Part.Gives),
            .. change.Limits.Select(limit => new Part(change.Tier, limit.Measure)),
            .. new[] { Part.Conditions, Part.Codes, Part.When }.Select(name => new Part(change.Tier, name)).Where(change.Changes),
        ];

    /// <summary>Of a version as a whole.</summary>
    internal static IEnumerable<Part> Of(Inspected book, RuleVersion version)
    {
        yield return Part.From;
        if (version.Until is not null)
            yield return Part.Until;
        if (version.Measured is not null)
            yield return Part.Measured;
        var tiers = version.Content switch
        {
            Stated stated => stated.Tiers.SelectMany(Of).Append(Part.Beyond),
            Adoption adoption => Adopted
                .Tiers(book, adoption)
                .SelectMany(Of)
                .Concat(adoption.Exceptions.SelectMany(Of))
                .Append(Part.Adopts)
                .Append(Part.Beyond),
            NotRegulated => [Part.NotRegulated],
            _ => (IEnumerable<Part>)[],
        };
        foreach (var part in tiers)
            yield return part;
    }

    /// <summary>Whether the version cites something and all that it cites is listed.</summary>
    internal static bool CanBeTraced(Inspected book, Rule rule, RuleVersion version) =>
        !version.Sources.IsEmpty && version.Sources.All(citation => book.Book.Source(rule.Jurisdiction, citation.Cite) is not null);

    /// <summary>The figures that a version itself states.</summary>
    internal static IEnumerable<(Part Part, Limit Limit)> Figures(RuleVersion version) =>
        version.Content switch
        {
            Stated stated => stated.Tiers.SelectMany(tier => Figures(tier.Name, tier.Limits)),
            Adoption adoption => adoption.Exceptions.SelectMany(change =>
                Figures(change.Added?.Name ?? change.Tier, change.Added?.Limits ?? change.Limits)
            ),
            _ => [],
        };

    private static IEnumerable<(Part, Limit)> Figures(string? tier, ImmutableArray<Limit> limits) =>
        limits.Where(limit => limit.Kind != LimitKind.NotEstablished).Select(limit => (new Part(tier, limit.Measure), limit));
}
