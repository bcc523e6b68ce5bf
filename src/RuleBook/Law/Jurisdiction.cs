using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>A place that registers vehicles, or the nation above it.</summary>
public sealed record Jurisdiction
{
    /// <summary>ISO 3166 code in lower case: <c>au</c>, <c>au-sa</c>, <c>nz</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Ids that it had before.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>The nation above it; null for a nation.</summary>
    public string? Within { get; init; }

    /// <summary>Whether vehicles are registered there.</summary>
    public bool Registers { get; init; }

    /// <summary>Where they are registered instead.</summary>
    public string? RegistersNote { get; init; }

    /// <summary>The date that picks versions unless a rule says otherwise; null where not established.</summary>
    public string? DecidedBy { get; init; }

    /// <summary>The authority, and where to find it.</summary>
    public required Authority Ask { get; init; }

    /// <summary>Where it is written.</summary>
    public required Mark Mark { get; init; }

    /// <summary>What the book has on each topic.</summary>
    internal ImmutableArray<Coverage> Coverage { get; init; } = [];

    /// <summary>What a verdict here, or in a place within, carries when it applies.</summary>
    internal ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>Documents cited.</summary>
    internal ImmutableArray<Source> Sources { get; init; } = [];

    /// <summary>All topics.</summary>
    internal ImmutableArray<Rule> Rules { get; init; } = [];

    /// <summary>Who certifies and what is issued.</summary>
    internal ImmutableArray<Scheme> Schemes { get; init; } = [];
}

/// <summary>Whom to ask.</summary>
/// <param name="Name">The authority.</param>
/// <param name="Url">Its address, where known.</param>
public sealed record Authority(string Name, string? Url);

/// <summary>A sentence that a verdict carries when it applies.</summary>
/// <param name="Text">In our own words.</param>
/// <param name="When">The jobs it applies to.</param>
/// <param name="Sources">Where it comes from.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Caution(string Text, Predicate When, ImmutableArray<Citation> Sources, Mark Mark);

/// <summary>How much of a topic the book has.</summary>
/// <param name="Topic">Topic id.</param>
/// <param name="State">complete, partial or none.</param>
/// <param name="Lacks">What is missing.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Coverage(string Topic, string State, string? Lacks, Mark Mark);
