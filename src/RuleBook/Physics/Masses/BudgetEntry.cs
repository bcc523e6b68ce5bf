using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>A change of mass between the starting state and the state asked for, before it is shared between the axles.</summary>
internal sealed record BudgetEntry(string Item, Interval Mass, Fraction? BehindFrontAxleMm, string PositionFact, string? Derivation = null);
