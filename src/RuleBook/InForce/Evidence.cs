using System.Collections.Concurrent;
using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>A version as written in the data.</summary>
/// <param name="Rule">The rule whose version it is.</param>
/// <param name="Version">The version.</param>
internal sealed record WrittenVersion(Rule Rule, RuleVersion Version);

/// <summary>
/// How each figure of a version is known. An adopted figure needs the adoption and the figure itself; one that an exception states needs
/// the exception alone, unless an end of the adopted range is kept.
/// </summary>
internal sealed class Evidence
{
    private readonly Book? book;
    private readonly ImmutableArray<WrittenVersion> chain;
    private readonly Lazy<ConcurrentDictionary<Part, Standing>> known = new(() => new(), LazyThreadSafetyMode.PublicationOnly);

    /// <param name="book">Has the sources.</param>
    /// <param name="chain">The version, then the one that it adopts, and so on.</param>
    internal Evidence(Book? book, ImmutableArray<WrittenVersion> chain) => (this.book, this.chain) = (book, chain);

    /// <summary>Of a version of which nothing is recorded.</summary>
    public static Evidence None { get; } = new(null, []);

    /// <summary>How the limit of a tier is known.</summary>
    public Standing Of(Tier tier, Limit limit) => Of(new Part(tier.Name, limit.Measure));

    /// <summary>How a part is known; found when first asked for, and kept, since many jobs meet the same version.</summary>
    public Standing Of(Part part) =>
        chain.IsEmpty ? Standing.None : known.Value.GetOrAdd(part, static (part, evidence) => evidence.Of(part, 0), this);

    /// <summary>The weakest of what the content says: its figures and what holds beyond, or its one statement.</summary>
    public Standing OfAll(Content content) =>
        content is Stated stated
            ? stated
                .Tiers.SelectMany(tier =>
                    tier.Limits.Where(limit => limit.Kind != LimitKind.NotEstablished).Select(limit => Of(tier, limit))
                )
                .Append(Of(PartOf(content, true)))
                .Aggregate((one, other) => one.And(other))
            : Of(PartOf(content, false));

    /// <summary>What a content says besides the figures of its tiers.</summary>
    public static Part PartOf(Content content, bool beyond) =>
        content switch
        {
            NotRegulated => Part.NotRegulated,
            Stated { Beyond: not null } when beyond => Part.Beyond,
            _ => Part.Existence,
        };

    /// <summary>The same with what is adopted behind it.</summary>
    internal Evidence Then(Evidence adopted) => new(book, [.. chain, .. adopted.Links]);

    /// <summary>Where the versions are written.</summary>
    internal string Written => string.Join(' ', chain.Select(link => link.Version.Mark));

    private ImmutableArray<WrittenVersion> Links => chain;

    private Standing Of(Part part, int at)
    {
        if (at >= chain.Length)
            return Standing.None;
        var version = chain[at].Version;
        if (version.Content is not Adoption adoption || part == Part.From || part == Part.Until)
            return Best(at, part, version.Sources.AddRange(Of(version.Content, part.Tier)));
        if (part == Part.Existence)
            return Best(at, part, version.Sources);

        var changes = adoption.Exceptions.Where(change => change.Changes(part)).ToImmutableArray();
        if (changes.IsEmpty)
        {
            var named = Best(at, part, [.. version.Sources.Where(citation => citation.DoesName(part))]);
            return named.Or(Best(at, Part.Adopts, version.Sources).And(Of(part, at + 1)));
        }

        var own = Best(
            at,
            part,
            [.. version.Sources, .. changes.SelectMany(change => change.Sources.AddRange(change.Added?.Sources ?? []))]
        );
        return changes.Any(change => Keeps(change, part, at + 1)) ? own.And(Of(part, at + 1)) : own;
    }

    private Standing Best(int at, Part part, ImmutableArray<Citation> citations) =>
        book is null
            ? Standing.None
            : Standing.Best(
                Resolver.Cited(
                    book,
                    chain[at].Rule,
                    [
                        .. citations.Where(citation =>
                            citation.DoesCarry(part) && !(citation.IsInherited && chain[at].Version.SaysAnew(part))
                        ),
                    ]
                ),
                part
            );

    private static ImmutableArray<Citation> Of(Content content, string? tier) =>
        content is Stated stated && tier is not null ? [.. stated.Tiers.Where(own => own.Name == tier).SelectMany(own => own.Sources)] : [];

    /// <summary>Whether the exception leaves an end of the adopted range as it is.</summary>
    private bool Keeps(Departure change, Part part, int below) =>
        change.Limits.FirstOrDefault(limit => limit.Measure == part.Name)?.Bounds is { } own
        && Adopted(part, below) is { } adopted
        && ((own.Lower is null && adopted.Lower is not null) || (own.Upper is null && adopted.Upper is not null));

    private Bounds? Adopted(Part part, int at) =>
        at >= chain.Length
            ? null
            : chain[at].Version.Content switch
            {
                Stated stated => stated
                    .Tiers.FirstOrDefault(tier => tier.Name == part.Tier)
                    ?.Limits.FirstOrDefault(limit => limit.Measure == part.Name)
                    ?.Bounds,
                Adoption adoption
                    when adoption.Exceptions.Select(change => change.Added).FirstOrDefault(tier => tier?.Name == part.Tier) is { } added =>
                    added.Limits.FirstOrDefault(limit => limit.Measure == part.Name)?.Bounds,
                _ => Adopted(part, at + 1),
            };
}
