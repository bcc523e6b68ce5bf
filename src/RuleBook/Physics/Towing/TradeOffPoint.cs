using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>A corner of a trade-off; between two neighbours it runs straight.</summary>
/// <param name="GivenKg">What is chosen: the vehicle's mass, or the ball load, kg.</param>
/// <param name="LeftKg">What is left at that choice: trailer mass, or mass over the rear axle, kg; never negative.</param>
/// <param name="Binding">The limits that are reached there, in alphabetical order.</param>
internal sealed record TradeOffPoint(Fraction GivenKg, Fraction LeftKg, ImmutableArray<string> Binding);
