using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>What must be so for a rule or tier to apply: all of its tests.</summary>
/// <param name="Tests">Empty means always.</param>
public sealed record Predicate(ImmutableArray<FactTest> Tests)
{
    /// <summary>Applies to everything.</summary>
    public static Predicate Always { get; } = new([]);
}

/// <summary>The vehicles that a rule binds: those that meet one of some descriptions whole.</summary>
/// <param name="AnyOf">One at least; none of them is part of another.</param>
internal sealed record Descriptions(ImmutableArray<Predicate> AnyOf)
{
    /// <summary>Every vehicle.</summary>
    public static Descriptions Everything { get; } = new([Predicate.Always]);

    /// <summary>The tests of all of them.</summary>
    public IEnumerable<FactTest> Tests => AnyOf.SelectMany(each => each.Tests);
}

/// <summary>One test on a fact or measure: one of some words, or within bounds.</summary>
/// <param name="Fact">Name of a fact or measure of the vocabulary.</param>
/// <param name="OneOf">The words that pass; empty for a test by bounds.</param>
/// <param name="Bounds">The range that passes; null for a test by words.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record FactTest(string Fact, ImmutableArray<string> OneOf, Bounds? Bounds, Mark Mark)
{
    /// <summary>The words are what <c>none-of</c> leaves over; none of them is named.</summary>
    internal bool LeftOver { get; init; }
}
