using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>A rule as in force in <c>[From, Until)</c>.</summary>
/// <param name="From">First day in force; null when unknown or only announced.</param>
/// <param name="InForceBy">
/// Where the start is unknown: the day, month or year in which it is seen in force; it counts from its last day.
/// </param>
/// <param name="Until">First day no longer in force; null when the next version ends it, or nothing does.</param>
/// <param name="Announced">Announced for this day, or on it; such a version never decides.</param>
/// <param name="Proposed">Proposed only; never decides.</param>
/// <param name="Sources">At least one.</param>
/// <param name="Measured">Between which points, at which mass state, what counts toward the total.</param>
/// <param name="Content">Tiers, an adoption, or the statement that nothing is established or regulated.</param>
/// <param name="Disputes">Where sources disagree.</param>
/// <param name="Note">What a reader should know.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record RuleVersion(
    PartialDate? From,
    PartialDate? InForceBy,
    PartialDate? Until,
    PartialDate? Announced,
    bool Proposed,
    ImmutableArray<Citation> Sources,
    Measured? Measured,
    Content Content,
    ImmutableArray<Dispute> Disputes,
    string? Note,
    Mark Mark
)
{
    /// <summary>The earlier version that it is like, and what it changes; null where it is stated by itself.</summary>
    public Likeness? Like { get; init; }

    /// <summary>It is in force, but a breach brings a warning only; what counts in full is a version of its own.</summary>
    public bool WarningOnly { get; init; }

    /// <summary>The keys that it leaves to the head of its file, above the rules.</summary>
    public ImmutableArray<string> OfHead { get; init; } = [];

    /// <summary>What was looked for in what was read, and not found.</summary>
    public ImmutableArray<string> NotFound { get; init; } = [];

    /// <summary>The unit in whole numbers of which the law writes its classes (pounds); null where it says nothing of the kind.</summary>
    public string? InWhole { get; init; }

    /// <summary>What this book said wrongly of the version until it was corrected.</summary>
    public ImmutableArray<Correction> Corrected { get; init; } = [];

    /// <summary>
    /// Whether what it takes over from its rule or an earlier version says nothing of the part: its own days, and what it changes.
    /// </summary>
    public bool SaysAnew(Part part) =>
        part == Part.From || part == Part.Until || (Like is { } like && like.Changes.Any(change => change.Changes(part)));

    /// <summary>Announced or proposed versions are shown and never decide.</summary>
    public bool Decides => Announced is null && !Proposed;
}

/// <summary>How a version follows from an earlier one of its rule.</summary>
/// <param name="From">Start of the earlier version, as written there.</param>
/// <param name="Changes">What is different.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Likeness(string From, ImmutableArray<Departure> Changes, Mark Mark);

/// <summary>A figure that the book had wrong: answers given before were wrong for jobs like those that it decides.</summary>
/// <param name="On">The day on which the book was corrected.</param>
/// <param name="Was">What it said before, in words.</param>
/// <param name="Because">How that was found out.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Correction(DateOnly On, string Was, string Because, Mark Mark);

/// <summary>How a measure is taken.</summary>
/// <param name="Between">Points measured between.</param>
/// <param name="MassState">tare, unladen, loaded or not-established.</param>
/// <param name="Total">What is added up to the total lift; empty where the rule has no total.</param>
/// <param name="Note">What a reader should know.</param>
public sealed record Measured(ImmutableArray<string> Between, string? MassState, ImmutableArray<string> Total, string? Note)
{
    /// <summary>The measures that are taken within a tolerance or to the nearest step, each once.</summary>
    public ImmutableArray<Allowance> Allowances { get; init; } = [];
}

/// <summary>Sources that disagree.</summary>
/// <param name="About">What the disagreement is about.</param>
/// <param name="Readings">Each reading with its sources.</param>
/// <param name="Taken">The reading taken.</param>
/// <param name="Because">Why.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Dispute(string About, ImmutableArray<DisputedReading> Readings, string Taken, string Because, Mark Mark);

/// <summary>One reading in a dispute.</summary>
/// <param name="Says">What it says, in our own words.</param>
/// <param name="Sources">Who says so.</param>
public sealed record DisputedReading(string Says, ImmutableArray<Citation> Sources);
