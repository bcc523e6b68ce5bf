using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>A place that registers vehicles, or the nation above it.</summary>
/// <param name="Id">ISO 3166 code in lower case: <c>au</c>, <c>au-sa</c>, <c>nz</c>.</param>
/// <param name="Aliases">Ids that it had before.</param>
/// <param name="Name">Name.</param>
/// <param name="Within">The nation above it; null for a nation.</param>
/// <param name="Registers">Whether vehicles are registered there.</param>
/// <param name="RegistersNote">Where they are registered instead.</param>
/// <param name="DecidedBy">The date that picks versions unless a rule says otherwise; null where not established.</param>
/// <param name="Ask">The authority, and where to find it.</param>
/// <param name="Coverage">What the book has on each topic.</param>
/// <param name="Cautions">What a verdict here, or in a place within, carries when it applies.</param>
/// <param name="Sources">Documents cited.</param>
/// <param name="Rules">All topics.</param>
/// <param name="Schemes">Who certifies and what is issued.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Jurisdiction(
    string Id,
    ImmutableArray<string> Aliases,
    string Name,
    string? Within,
    bool Registers,
    string? RegistersNote,
    string? DecidedBy,
    Authority Ask,
    ImmutableArray<Coverage> Coverage,
    ImmutableArray<Caution> Cautions,
    ImmutableArray<Source> Sources,
    ImmutableArray<Rule> Rules,
    ImmutableArray<Scheme> Schemes,
    Mark Mark
);

/// <summary>Whom to ask.</summary>
/// <param name="Name">The authority.</param>
/// <param name="Url">Its address, where known.</param>
public sealed record Authority(string Name, string? Url);

/// <summary>A sentence that a verdict carries when it applies.</summary>
/// <param name="Text">In our own words.</param>
/// <param name="When">The jobs it applies to.</param>
/// <param name="Sources">Where it comes from.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Caution(string Text, Predicate When, ImmutableArray<Citation> Sources, Mark Mark);

/// <summary>How much of a topic the book has.</summary>
/// <param name="Topic">Topic id.</param>
/// <param name="State">complete, partial or none.</param>
/// <param name="Lacks">What is missing.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Coverage(string Topic, string State, string? Lacks, Mark Mark);
