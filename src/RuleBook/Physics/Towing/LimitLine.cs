using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>What one limit leaves, as a straight line: <c>AtZeroKg + Slope x</c>.</summary>
internal sealed record LimitLine(string Limit, Fraction AtZeroKg, Fraction Slope)
{
    internal Fraction At(Fraction x) => AtZeroKg + (Slope * x);

    /// <summary>Where two lines cross; null for parallel ones.</summary>
    internal Fraction? Crosses(LimitLine other) => Slope == other.Slope ? null : (other.AtZeroKg - AtZeroKg) / (Slope - other.Slope);
}
