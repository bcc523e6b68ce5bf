using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Checks;

/// <summary>What an adoption takes over.</summary>
internal static class Adopted
{
    private const int LongestChain = 8;

    /// <summary>Every tier that the adopted rule has or had in a version that may be meant, before this adoption's own exceptions.</summary>
    internal static ImmutableArray<Tier> Tiers(Inspected book, Adoption adoption, int depth = 0) =>
        depth > LongestChain || book.Book.Rule(adoption.Rule) is not { } rule ? [] :
        [
            .. Versions(rule, adoption.AsOf).SelectMany(version => version.Content switch
            {
                Stated stated => stated.Tiers,
                Adoption further => Tiers(book, further, depth + 1).Concat(further.Exceptions.Select(change => change.Added).OfType<Tier>()),
                _ => [],
            }),
        ];

    /// <summary>The versions that may be in force on the day; all that decide where no day is given.</summary>
    internal static IEnumerable<RuleVersion> Versions(Rule rule, DateOnly? day)
    {
        var versions = rule.Versions.Where(version => version.Decides).ToArray();
        if (day is not { } known) return versions;
        Timeline.Span[] spans = [.. versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return Timeline.At(spans, known).Where(index => index >= 0).Select(index => versions[index]);
    }
}
