using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// What a rule as written says on a day that no verdict shows: codes, what it adopts and how, whom to ask, and what it rests on.
/// </summary>
/// <param name="book">The book of the rule.</param>
/// <param name="names">The book whose ids are used; an id that it knows as an alias is the same.</param>
internal sealed class RuleStatements(Book book, Book names)
{
    public IEnumerable<string> Beside(Rule rule, DateOnly day) =>
        [
            .. rule.GovernedByTravel ? ["the road driven on governs"] : Array.Empty<string>(),
            .. InForce(rule, day).Where(version => version.WarningOnly).Select(_ => "a breach brings a warning only"),
            .. InForce(rule, day).SelectMany(version => Beside(version.Content)),
        ];

    public IEnumerable<string> Evidence(Rule rule, DateOnly day) =>
        InForce(rule, day)
            .SelectMany(version =>
                Cited(version.Sources, rule.Jurisdiction, "")
                    .Concat(Of(version.Content).SelectMany(tier => Cited(tier.Sources, rule.Jurisdiction, $" for '{tier.Name}'")))
                    .Concat(version.Disputes.Select(dispute => $"disputed {dispute.About}, taken: {dispute.Taken}"))
            );

    /// <summary>The citations, by the document, the place in it, and what it carries.</summary>
    public IEnumerable<string> Cited(IEnumerable<Citation> citations, string place, string under) =>
        citations.Select(citation =>
            $"{Name(place, citation.Cite)}{(citation.Clause is { } clause ? $" ({clause})" : "")}{under}"
            + (citation.Carries is { } words ? $" carrying {string.Join(" and ", words.Order(StringComparer.Ordinal))}" : "")
        );

    private string Name(string place, string cite) =>
        (names.Source(place, cite) ?? book.Source(place, cite)) is { } source
            ? source.Jurisdiction == place
                ? source.Id
                : $"{source.Jurisdiction}/{source.Id}"
            : cite;

    private IEnumerable<string> Beside(Content content) =>
        content switch
        {
            NotEstablished open =>
            [
                $"to ask: {open.Ask}",
                .. open.Open is { } document ? [$"to open: {document}"] : Array.Empty<string>(),
                .. open.Indication is { } rule
                    ? [$"an indication by {(names.Rule(rule) ?? book.Rule(rule))?.Id ?? rule}"]
                    : Array.Empty<string>(),
            ],
            Adoption adoption => Of(adoption)
                .SelectMany(Codes)
                .Prepend(
                    $"{(names.Rule(adoption.Rule) ?? book.Rule(adoption.Rule))?.Id ?? adoption.Rule} "
                        + $"{(adoption.AsOf is { } day ? $"as of {Phrases.Day(day)}" : "as amended")}"
                ),
            var other => Of(other).SelectMany(Codes),
        };

    private static IEnumerable<string> Codes(TierSays tier) =>
        tier.Codes.Length > 0
            ? [$"code {string.Join(" and ", tier.Codes.Distinct().Order(StringComparer.Ordinal))} of '{tier.Name}'"]
            : Array.Empty<string>();

    private static IEnumerable<TierSays> Of(Content content) =>
        content switch
        {
            Stated stated => stated.Tiers.Select(tier => new TierSays(tier.Name, tier.Codes, tier.Sources)),
            Adoption adoption => adoption.Exceptions.Select(change => new TierSays(
                change.Tier ?? change.Added?.Name ?? "",
                change.Codes ?? change.Added?.Codes ?? [],
                change.Sources.AddRange(change.Added?.Sources ?? [])
            )),
            _ => [],
        };

    private sealed record TierSays(string Name, ImmutableArray<string> Codes, ImmutableArray<Citation> Sources);

    private static IEnumerable<RuleVersion> InForce(Rule rule, DateOnly day)
    {
        RuleVersion[] versions = [.. rule.Versions.Where(version => version.Decides)];
        return Timeline
            .At([.. versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))], day)
            .Where(i => i >= 0)
            .Select(i => versions[i]);
    }
}
