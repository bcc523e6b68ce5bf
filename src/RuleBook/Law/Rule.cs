using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>One requirement of a jurisdiction on a topic.</summary>
public sealed record Rule
{
    /// <summary>Id of the jurisdiction.</summary>
    public required string Jurisdiction { get; init; }

    /// <summary>Id of the topic.</summary>
    public required string Topic { get; init; }

    /// <summary>Its name within the topic.</summary>
    public required string Name { get; init; }

    /// <summary>Names that it had before.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>For a reader.</summary>
    public required string Title { get; init; }

    /// <summary>The date that picks the version: work, certification or inspection; null where not established.</summary>
    public string? DecidedBy { get; init; }

    /// <summary>Follows the road, not the registration.</summary>
    public bool GovernedByTravel { get; init; }

    /// <summary>Where it is written.</summary>
    public required Mark Mark { get; init; }

    /// <summary><c>jurisdiction/topic/rule</c>.</summary>
    public string Id => $"{Jurisdiction}/{Topic}/{Name}";

    /// <summary>The vehicles it binds.</summary>
    internal Descriptions For { get; init; } = Descriptions.Everything;

    /// <summary>Oldest first.</summary>
    internal ImmutableArray<RuleVersion> Versions { get; init; } = [];
}
