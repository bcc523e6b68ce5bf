using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>One row of a maker's table that takes mass out of the vehicle as the ball load grows.</summary>
/// <param name="BallUpToKg">The row holds up to this ball load, reached included, kg.</param>
/// <param name="LessKg">What is taken off the GVM, kg.</param>
internal sealed record DownRatingRow(Fraction BallUpToKg, Fraction LessKg);
