using Fractions;

namespace RuleBook.Physics.Dynamics;

/// <summary>One section of a lane-change track.</summary>
/// <param name="Number">Its number along the track, from 1.</param>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="WidthMm">Width between the cones, mm; null where the vehicle changes lane and no cones bound it.</param>
public sealed record LaneSection(int Number, Fraction LengthMm, Fraction? WidthMm);
