using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>A version that is or may be in force on a day, with every adoption followed to the end.</summary>
/// <param name="Rule">The rule of the jurisdiction asked about.</param>
/// <param name="From">Start of the version; null when unknown or when nothing is recorded for the day.</param>
/// <param name="Until">Start of the next version, or its stated end; null when open.</param>
/// <param name="Adopted">Ids of the adopted rules, nearest first, with the day as on which each was taken over.</param>
/// <param name="Content">Stated tiers, not established or not regulated; never an adoption.</param>
/// <param name="Measured">How the measures are taken.</param>
/// <param name="Sources">The version's citations, then those of the adopted versions.</param>
/// <param name="Disputes">Disagreements of all versions involved.</param>
/// <param name="Notes">Notes of all versions involved.</param>
public sealed record ResolvedVersion(
    Rule Rule,
    PartialDate? From,
    PartialDate? Until,
    ImmutableArray<AdoptionStep> Adopted,
    Content Content,
    Measured? Measured,
    ImmutableArray<CitedSource> Sources,
    ImmutableArray<Dispute> Disputes,
    ImmutableArray<string> Notes
)
{
    /// <summary>Where the start is unknown: the day by which the place's own version is seen in force.</summary>
    public PartialDate? InForceBy { get; init; }

    /// <summary>A breach brings a warning only: so the place itself says, whatever the place does whose rule it adopts.</summary>
    public bool WarningOnly { get; init; }

    /// <summary>The keys that the place's own version leaves to the head of its file.</summary>
    public ImmutableArray<string> OfHead { get; init; } = [];

    /// <summary>What was looked for and not found, of all versions involved.</summary>
    public ImmutableArray<string> NotFound { get; init; } = [];

    /// <summary>The unit in whole numbers of which the law writes its classes.</summary>
    public string? InWhole { get; init; }

    /// <summary>The day on which what it says ends: its own end, or that of what it adopts as amended; null when open.</summary>
    internal PartialDate? Ends =>
        Adopted.TakeWhile(step => step.Moving).Select(step => step.Until).Prepend(Until).OfType<PartialDate>().MinBy(end => end.Latest);

    /// <summary>How each figure is known.</summary>
    internal Evidence Evidence { get; init; } = Evidence.None;

    /// <summary>The rule and where each version taken over is written: the same for two resolutions that found the same versions.</summary>
    public string Name => $"{Rule.Id} {Until} {Evidence.Written}";

    /// <summary>What adds up to the total lift.</summary>
    public ImmutableArray<string> Parts => FactSet.PartsOf(Measured?.Total);
}

/// <summary>One adoption followed.</summary>
/// <param name="Rule">Full id of the adopted rule.</param>
/// <param name="AsOf">The day as on which it was taken over, or on which it was looked up when as amended.</param>
/// <param name="Moving">As amended from time to time.</param>
/// <param name="From">Start of the version taken over; null when unknown or when nothing is recorded.</param>
/// <param name="Until">Start of the one after it; null when open.</param>
public sealed record AdoptionStep(string Rule, DateOnly AsOf, bool Moving, PartialDate? From, PartialDate? Until);
