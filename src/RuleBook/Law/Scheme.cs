using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>A jurisdiction's way of appointing certifiers, and what they issue.</summary>
/// <param name="Name">Its name within the jurisdiction.</param>
/// <param name="Aliases">Names that it had before.</param>
/// <param name="Title">For a reader.</param>
/// <param name="For">The jobs it serves; a nation's scheme serves the jobs of a state only where it says which.</param>
/// <param name="Versions">Oldest first.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Scheme(
    string Name,
    ImmutableArray<string> Aliases,
    string Title,
    Predicate For,
    ImmutableArray<SchemeVersion> Versions,
    Mark Mark
);

/// <summary>A scheme as in force in <c>[From, Until)</c>; dates as in <see cref="RuleVersion"/>.</summary>
/// <param name="From">First day in force; null when unknown.</param>
/// <param name="InForceBy">Where the start is unknown: the day by which it is seen in force.</param>
/// <param name="Until">First day no longer in force.</param>
/// <param name="Certifier">What the certifier is called.</param>
/// <param name="AppointedBy">Who appoints.</param>
/// <param name="Decides">Who has the last word: <c>certifier</c> or <c>authority</c>.</param>
/// <param name="AcceptsAppointedIn">Other jurisdictions whose certifiers may certify; null when not established.</param>
/// <param name="Issued">What is issued, by pathway.</param>
/// <param name="Steps">In order.</param>
/// <param name="Reregistering">What a modified vehicle needs when its registration moves here; null when not established.</param>
/// <param name="Fees">Published fees.</param>
/// <param name="NotEstablished">What nobody has found out.</param>
/// <param name="Sources">At least one.</param>
/// <param name="Note">What a reader should know.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record SchemeVersion(
    PartialDate? From,
    PartialDate? InForceBy,
    PartialDate? Until,
    string? Certifier,
    string? AppointedBy,
    string? Decides,
    ImmutableArray<string>? AcceptsAppointedIn,
    ImmutableArray<Issued> Issued,
    ImmutableArray<Step> Steps,
    string? Reregistering,
    ImmutableArray<Fee> Fees,
    ImmutableArray<string> NotEstablished,
    ImmutableArray<Citation> Sources,
    string? Note,
    Mark Mark
);

/// <summary>What is issued on a pathway.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="Papers">Certificate, plate, permit, report.</param>
public sealed record Issued(Pathway Pathway, ImmutableArray<string> Papers);

/// <summary>One step of a scheme.</summary>
/// <param name="Text">What is done, in our own words.</param>
/// <param name="BeforeWork">Whether it comes before the work.</param>
/// <param name="Pathways">On which pathways.</param>
/// <param name="Sources">Sources of this step, beside the version's.</param>
public sealed record Step(string Text, bool BeforeWork, ImmutableArray<Pathway> Pathways, ImmutableArray<Citation> Sources)
{
    /// <summary>The topics that ask for it; empty where every topic does.</summary>
    public ImmutableArray<string> Topics { get; init; } = [];
}

/// <summary>A published fee.</summary>
/// <param name="What">For what.</param>
/// <param name="Amount">How much, in the currency of the place.</param>
/// <param name="From">Since when.</param>
/// <param name="Sources">Where published.</param>
public sealed record Fee(string What, Quantity Amount, PartialDate From, ImmutableArray<Citation> Sources);
