using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>One requirement of a jurisdiction on a topic.</summary>
/// <param name="Jurisdiction">Id of the jurisdiction.</param>
/// <param name="Topic">Id of the topic.</param>
/// <param name="Name">Its name within the topic.</param>
/// <param name="Aliases">Names that it had before.</param>
/// <param name="Title">For a reader.</param>
/// <param name="For">The vehicles it binds.</param>
/// <param name="DecidedBy">The date that picks the version: work, certification or inspection; null where not established.</param>
/// <param name="GovernedByTravel">Follows the road, not the registration.</param>
/// <param name="Versions">Oldest first.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Rule(
    string Jurisdiction,
    string Topic,
    string Name,
    ImmutableArray<string> Aliases,
    string Title,
    Predicate For,
    string? DecidedBy,
    bool GovernedByTravel,
    ImmutableArray<RuleVersion> Versions,
    Mark Mark
)
{
    /// <summary><c>jurisdiction/topic/rule</c>.</summary>
    public string Id => $"{Jurisdiction}/{Topic}/{Name}";
}
