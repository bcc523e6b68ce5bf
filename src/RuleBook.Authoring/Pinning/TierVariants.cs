using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>Tiers and exceptions changed in one place.</summary>
internal sealed class TierVariants(BoundVariants bounds)
{
    public IEnumerable<Variant<Tier>> Of(Tier tier) =>
        [
            .. tier.Limits.OfEach(bounds.Of).Select(variant => variant.In(limits => tier with { Limits = limits })),
            .. bounds.Of(tier.When).Select(variant => variant.In(when => tier with { When = when })),
            .. Provided(tier.Provided, tier.Mark, tier.Name).Select(variant => variant.In(provided => tier with { Provided = provided })),
            .. Pathways(tier.Pathway, tier.Mark, tier.Name, pathway => tier with { Pathway = pathway }),
        ];

    public IEnumerable<Variant<ImmutableArray<Tier>>> Of(ImmutableArray<Tier> tiers) =>
        tiers.OfEach(Of).Concat(tiers.Without(tier => tier.Mark, tier => $"tier '{tier.Name}'"));

    public IEnumerable<Variant<ImmutableArray<Departure>>> Of(ImmutableArray<Departure> exceptions) =>
        exceptions
            .OfEach(Of)
            .Concat(
                exceptions.Without(
                    exception => exception.Mark,
                    exception =>
                        exception.Beyond is null
                            ? $"exception on tier '{exception.Tier ?? exception.Added?.Name}'"
                            : "exception on what holds beyond"
                )
            );

    /// <summary>The pathways one step easier and one step more onerous.</summary>
    public static IEnumerable<Pathway> Beside(Pathway pathway) =>
        new[] { pathway - 1, pathway + 1 }.Where(other => other is >= Pathway.NoCertificate and <= Pathway.Prohibited);

    private IEnumerable<Variant<Departure>> Of(Departure departure) =>
        [
            .. departure.Limits.OfEach(bounds.Of).Select(variant => variant.In(limits => departure with { Limits = limits })),
            .. Provided(departure.Provided ?? [], departure.Mark, departure.Tier ?? "")
                .Select(variant => variant.In(provided => departure with { Provided = provided })),
            .. departure.Pathway is { } pathway
                ? Pathways(pathway, departure.Mark, departure.Tier, other => departure with { Pathway = other })
                : [],
            .. departure.Beyond is { } beyond
                ? RuleVariants
                    .Beyond(beyond.Pathway)
                    .Select(other => new Variant<Departure>(
                        departure with
                        {
                            Beyond = new BeyondChange(other),
                        },
                        departure.Mark,
                        $"beyond: {RuleVariants.Name(beyond.Pathway)}",
                        RuleVariants.Name(other)
                    ))
                : [],
            .. departure.Added is { } added ? Of(added).Select(variant => variant.In(tier => departure with { Added = tier })) : [],
        ];

    private static IEnumerable<Variant<T>> Pathways<T>(Pathway pathway, Mark mark, string? tier, Func<Pathway, T> with) =>
        Beside(pathway).Select(other => new Variant<T>(with(other), mark, $"pathway of tier '{tier}'", Wording.Of(other)));

    private static IEnumerable<Variant<ImmutableArray<string>>> Provided(ImmutableArray<string> provided, Mark mark, string tier) =>
        provided.Without(_ => mark, condition => $"condition {condition} of tier '{tier}'");
}
