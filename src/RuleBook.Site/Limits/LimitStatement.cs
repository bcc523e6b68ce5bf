using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>One statement of a jurisdiction on a measure on a day: one line of a cell in the comparison, one row of the data.</summary>
/// <param name="Place">The jurisdiction.</param>
/// <param name="Version">The version that is or may be in force.</param>
/// <param name="Certain">False when another version may be in force instead.</param>
/// <param name="Measure">Name of the measure; <see cref="LimitStatements.Beyond"/> for what holds beyond all limits.</param>
/// <param name="Tier">The tier; null when nothing is stated.</param>
/// <param name="Limit">The limit; null when nothing is stated.</param>
internal sealed record LimitStatement(Jurisdiction Place, ResolvedVersion Version, bool Certain, string Measure, Tier? Tier, Limit? Limit)
{
    public Rule Rule => Version.Rule;

    /// <summary>How it is known.</summary>
    public Standing Standing { get; } =
        Version.Evidence.Of(
            Tier is not null && Limit is not null
                ? new Part(Tier.Name, Limit.Measure)
                : Evidence.PartOf(Version.Content, Measure == LimitStatements.Beyond)
        );

    /// <summary>limit, none, not-established or not-regulated.</summary>
    public string Kind =>
        (Version.Content, Limit) switch
        {
            (NotRegulated, _) => "not-regulated",
            (NotEstablished, _) => "not-established",
            (Stated { Beyond: null }, null) => "not-established",
            (_, { Kind: LimitKind.None }) => "none",
            (_, { Kind: LimitKind.NotEstablished }) => "not-established",
            _ => "limit",
        };

    public Pathway? Pathway => Tier?.Pathway ?? (Version.Content as Stated)?.Beyond;

    /// <summary>Amount and unit, or which of the four kinds of nothing.</summary>
    public string Amount(Vocabulary words) =>
        Kind switch
        {
            "not-regulated" => "not regulated",
            "not-established" => "not established",
            "none" => "no limit",
            _ when Limit is { } limit && words.Measures.TryGetValue(Measure, out var measure) => Say.Limit(measure, limit),
            _ => "",
        };
}
