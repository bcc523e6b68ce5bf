using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Reading;

namespace RuleBook.Authoring.Pinning;

/// <summary>A change that no case notices, although it changes an answer.</summary>
/// <param name="Rule">Full id of the rule.</param>
/// <param name="Mark">Where it is written.</param>
/// <param name="What">What is changed.</param>
/// <param name="To">What it becomes.</param>
/// <param name="Witness">A job whose answer changes; null where only days or words that a job gives otherwise show it.</param>
/// <param name="Before">The answer before, in words.</param>
/// <param name="After">The answer after.</param>
public sealed record Unpinned(string Rule, Mark Mark, string What, string To, Witness? Witness, string Before, string After);

/// <summary>How much of a book its cases pin.</summary>
/// <param name="Points">Numbers, date edges, words, conditions, tiers and exceptions that bear on some answer.</param>
/// <param name="Pinned">Those of which no change goes unnoticed.</param>
/// <param name="Mutations">Changes tried.</param>
/// <param name="WithoutEffect">Changes that change no answer: what is changed is implied by the rest.</param>
/// <param name="Unnoticed">Changes that no case notices, in the order of their places.</param>
public sealed record PinReport(int Points, int Pinned, int Mutations, int WithoutEffect, ImmutableArray<Unpinned> Unnoticed);
