using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>The springs that are to be fitted to one axle.</summary>
/// <param name="Path">Their path in the job, such as <c>modification.springs.front</c>.</param>
/// <param name="Axle">The axle.</param>
/// <param name="WheelRateNPerMm">Rate at the wheel, N/mm for one wheel (not the rate of the spring itself).</param>
/// <param name="Height">One point of their line.</param>
internal sealed record AxleSprings(string Path, Axle Axle, Fraction? WheelRateNPerMm, SpringHeight? Height);
