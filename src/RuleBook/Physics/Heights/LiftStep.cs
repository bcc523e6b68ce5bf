using Fractions;

namespace RuleBook.Physics.Heights;

/// <summary>One row of a table of lift against constant mass added to the axle.</summary>
/// <param name="AddedKg">Mass added to the axle, kg.</param>
/// <param name="LiftMm">Predicted lift with it, mm.</param>
internal sealed record LiftStep(Fraction AddedKg, Fraction LiftMm);
