using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>From the least to the most onerous.</summary>
public enum Pathway
{
    /// <summary>Allowed without a certificate.</summary>
    NoCertificate,

    /// <summary>Allowed with a certifier's certificate.</summary>
    Certificate,

    /// <summary>Allowed once the authority has approved it, then with a certificate.</summary>
    Approval,

    /// <summary>Not allowed.</summary>
    Prohibited,
}

/// <summary>One step of a version: a pathway, the limits within which it holds and the conditions attached.</summary>
/// <param name="Name">Its name within the version; the pathway's where none is given.</param>
/// <param name="Pathway">What the tier gives.</param>
/// <param name="When">Facts that must hold for the tier to be open at all.</param>
/// <param name="Limits">All must hold.</param>
/// <param name="Provided">Conditions of the vocabulary that must be met or shown.</param>
/// <param name="Codes">The jurisdiction's modification codes.</param>
/// <param name="Sources">Sources of this tier, beside the version's.</param>
/// <param name="Note">What a reader should know.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Tier(
    string Name,
    Pathway Pathway,
    Predicate When,
    ImmutableArray<Limit> Limits,
    ImmutableArray<string> Provided,
    ImmutableArray<string> Codes,
    ImmutableArray<Citation> Sources,
    string? Note,
    Mark Mark
);
