using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>How a source is known.</summary>
public enum ReadAs
{
    /// <summary>The authority's own text.</summary>
    Primary,

    /// <summary>Someone's account of it.</summary>
    Secondary,

    /// <summary>A fact of the trade without a published source.</summary>
    CommonPractice,

    /// <summary>Remembered, not found in any text.</summary>
    Memory,
}

/// <summary>A document cited.</summary>
/// <param name="Id">Its name within the jurisdiction.</param>
/// <param name="Jurisdiction">The jurisdiction whose list it is on.</param>
/// <param name="Aliases">Names that it had before.</param>
/// <param name="Title">Title.</param>
/// <param name="Publisher">Who published it.</param>
/// <param name="Edition">Edition or number, where it has one.</param>
/// <param name="Dated">Date of the document, where known.</param>
/// <param name="Url">Address, where there is one.</param>
/// <param name="ReadAs">How it is known.</param>
/// <param name="Checked">The day somebody last compared it.</param>
/// <param name="RecheckAfter">From this day on it is overdue.</param>
/// <param name="Note">What a reader should know.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Source(
    string Id,
    string Jurisdiction,
    ImmutableArray<string> Aliases,
    string Title,
    string Publisher,
    string? Edition,
    PartialDate? Dated,
    string? Url,
    ReadAs ReadAs,
    PartialDate Checked,
    PartialDate RecheckAfter,
    string? Note,
    Mark Mark
)
{
    /// <summary>
    /// The parts that were read, as clauses name them; null where nothing is said: then it was read whole, as far as its note does not say
    /// otherwise.
    /// </summary>
    public ImmutableArray<string>? PartsRead { get; init; }

    /// <summary>What copy of it was read, in the words of <see cref="CopyWords"/>; empty where nothing is said.</summary>
    public ImmutableArray<string> Copy { get; init; } = [];

    /// <summary>The words that say what copy was read; <c>whole</c> says that nothing of it was left unread.</summary>
    internal static readonly ImmutableArray<string> CopyWords =
    [
        "own",
        "reproduction",
        "database",
        "mirror",
        "re-hosted",
        "upload",
        "stored",
        "undated",
        "whole",
    ];

    /// <summary>First day on which what it states is in force, where that is known of the document itself.</summary>
    public PartialDate? From { get; init; }

    /// <summary>First day on which what it states is no longer in force.</summary>
    public PartialDate? Until { get; init; }

    /// <summary>Whether it has numbers or headings that a citation could name; one of a page without them names none.</summary>
    public bool HasClauses { get; init; } = true;

    /// <summary>
    /// Whether the clause names a part that was read: <c>13.2(a)</c> where <c>13.2</c> was. Of a document read whole every clause does, and
    /// none too.
    /// </summary>
    /// <param name="clause">As a citation has it; null where it names none.</param>
    internal bool WasRead(string? clause) => PartsRead is not { } parts || (clause is not null && parts.Any(part => Names(clause, part)));

    private static bool Names(string clause, string part)
    {
        for (var at = clause.IndexOf(part, StringComparison.Ordinal); at >= 0; at = clause.IndexOf(part, at + 1, StringComparison.Ordinal))
            if (!IsWord(clause, at - 1) && !IsWord(clause, at + part.Length))
                return true;
        return false;
    }

    private static bool IsWord(string text, int at) => at >= 0 && at < text.Length && char.IsLetterOrDigit(text[at]);
}

/// <summary>A place in a source.</summary>
/// <param name="Cite">Id of a source of the same jurisdiction, or <c>jurisdiction/id</c>.</param>
/// <param name="Clause">Clause, section, page or item; null where the source has none.</param>
/// <param name="Note">What it says here, in our own words.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Citation(string Cite, string? Clause, string? Note, Mark Mark)
{
    /// <summary>The words of the parts that it carries; null where nothing is said: then it carries all that it stands on.</summary>
    public ImmutableArray<string>? Carries { get; init; }

    /// <summary>
    /// Stands on the rule or on an earlier version: it carries neither the days of this version nor what this version changes.
    /// </summary>
    public bool IsInherited { get; init; }

    /// <summary>Whether it carries the part: named, or nothing is said.</summary>
    internal bool DoesCarry(Part part) => Carries is null || DoesName(part);

    /// <summary>Whether it names the part among those that it carries.</summary>
    internal bool DoesName(Part part) => Carries is { } words && words.Any(part.IsNamed);
}

/// <summary>A citation with its source found.</summary>
/// <param name="Citation">Where in the source.</param>
/// <param name="Source">The source.</param>
public sealed record CitedSource(Citation Citation, Source Source);
