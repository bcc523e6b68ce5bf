using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>A figure with the reckoning that leads to it.</summary>
/// <param name="Amount">The figure, exact, in the unit that its property names; null where it is not established.</param>
/// <param name="Derivation">The reckoning, or why the figure is not established; one line.</param>
public sealed record DerivedFigure(Fraction? Amount, string Derivation);
