using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>A change that no case notices, although it changes what a rule or a scheme gives.</summary>
/// <param name="Subject">Full id of the rule or scheme, or the jurisdiction.</param>
/// <param name="Mark">Where it is written.</param>
/// <param name="What">What is changed.</param>
/// <param name="To">What it becomes.</param>
/// <param name="Witness">A point at which it shows.</param>
/// <param name="Before">What it gives there.</param>
/// <param name="After">What it would give.</param>
public sealed record Unpinned(string Subject, Mark Mark, string What, string To, Witness Witness, string Before, string After);

/// <summary>How much of a book its cases pin.</summary>
/// <param name="Points">Numbers, date edges, words, conditions, tiers and exceptions that bear on what some rule gives.</param>
/// <param name="Pinned">Those of which no change goes unnoticed.</param>
/// <param name="Changes">Changes tried.</param>
/// <param name="WithoutEffect">Changes that change nothing that any rule gives: what is changed is implied by the rest.</param>
/// <param name="Unnoticed">Changes that no case notices, in the order of their places.</param>
public sealed record PinReport(int Points, int Pinned, int Changes, int WithoutEffect, ImmutableArray<Unpinned> Unnoticed)
{
    /// <summary>Whole per cent of the points pinned, rounded down, so that 100 means all; 100 where there is nothing to pin.</summary>
    public int Percent => Points == 0 ? 100 : Pinned * 100 / Points;
}
