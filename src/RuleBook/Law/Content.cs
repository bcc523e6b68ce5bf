using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>What a version says.</summary>
public abstract record Content;

/// <summary>Stated in full.</summary>
/// <param name="Tiers">From the least to the most onerous.</param>
/// <param name="Beyond">The pathway when no tier holds; null when not established (anything up to prohibited).</param>
public sealed record Stated(ImmutableArray<Tier> Tiers, Pathway? Beyond) : Content;

/// <summary>Takes over another jurisdiction's rule.</summary>
/// <param name="Rule">Full id, <c>jurisdiction/topic/rule</c>.</param>
/// <param name="AsOf">The day as on which it is taken over; null when as amended from time to time.</param>
/// <param name="Exceptions">What the adopting jurisdiction changes.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Adoption(string Rule, DateOnly? AsOf, ImmutableArray<Departure> Exceptions, Mark Mark) : Content;

/// <summary>Nobody has found out what the rule says.</summary>
/// <param name="Ask">Whom to ask.</param>
/// <param name="Open">Which document to open.</param>
/// <param name="Indication">A rule that shows what a national guideline would give; never the verdict.</param>
public sealed record NotEstablished(string Ask, string? Open, string? Indication) : Content;

/// <summary>The jurisdiction has no such rule.</summary>
/// <param name="Why">How that is known.</param>
public sealed record NotRegulated(string Why) : Content;

/// <summary>
/// A change: of an adopting jurisdiction to a tier of the adopted rule, of a version to a tier of an earlier one; or a tier of its own.
/// </summary>
/// <param name="Tier">Name of the adopted tier; null where a tier is added or what holds beyond them is changed.</param>
/// <param name="Limits">Replace the limits on the same measures; of a range only the ends that are named.</param>
/// <param name="Provided">Replaces the conditions when not null.</param>
/// <param name="Dropped">The tier does not apply here.</param>
/// <param name="Added">A tier of its own, placed after the adopted tiers of the same pathway.</param>
/// <param name="Sources">Sources of the exception.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Departure(
    string? Tier,
    ImmutableArray<Limit> Limits,
    ImmutableArray<string>? Provided,
    bool Dropped,
    Tier? Added,
    ImmutableArray<Citation> Sources,
    Mark Mark
)
{
    /// <summary>Why the jurisdiction allows more here than the adopted rule does; null where it does not.</summary>
    public string? Loosens { get; init; }

    /// <summary>The tier after which the added one is placed; null for after all of its pathway.</summary>
    public string? After { get; init; }

    /// <summary>Replaces what the tier gives when not null.</summary>
    public Pathway? Pathway { get; init; }

    /// <summary>Replaces the facts on which the tier is open when not null.</summary>
    public Predicate? When { get; init; }

    /// <summary>Replaces the modification codes when not null.</summary>
    public ImmutableArray<string>? Codes { get; init; }

    /// <summary>Replaces the note when not null.</summary>
    public string? Note { get; init; }

    /// <summary>Replaces what holds beyond the tiers when not null; it then names no tier.</summary>
    public BeyondChange? Beyond { get; init; }

    /// <summary>Whether it says something of the part.</summary>
    public bool Changes(Part part) =>
        Beyond is not null ? part == Part.Beyond
        : Added is { } added ? added.Name == part.Tier
        : Tier == part.Tier
            && part.Name switch
            {
                Part.Conditions => Provided is not null,
                Part.Codes => Codes is not null,
                Part.When => When is not null,
                Part.Gives => Pathway is not null,
                var measure => Limits.Any(limit => limit.Measure == measure),
            };

    /// <summary>Whether it names a tier and says nothing of it.</summary>
    public bool IsEmpty =>
        this
            is { Tier: not null, Limits.IsEmpty: true, Provided: null, Dropped: false, Pathway: null, When: null, Codes: null, Note: null };
}

/// <summary>What holds beyond the tiers, instead of what the adopted rule says.</summary>
/// <param name="Pathway">The pathway; null for not established.</param>
internal sealed record BeyondChange(Pathway? Pathway);
