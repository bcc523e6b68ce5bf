using Fractions;

namespace RuleBook.Physics.Heights;

/// <summary>Heights on one axle, each from the wheel centre straight up to the lower edge of the guard.</summary>
/// <param name="LeftMm">Left side, mm.</param>
/// <param name="RightMm">Right side, mm.</param>
/// <remarks>
/// The measure of the South Australian government's page on suspension modification ("eyebrow height"); unlike a height from the
/// ground it does not change with the tyre.
/// </remarks>
internal sealed record AxleHeights(Fraction? LeftMm, Fraction? RightMm);
