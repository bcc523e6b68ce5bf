using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>The straight line between axle load and height: two springs of one wheel rate under one axle.</summary>
internal static class Springs
{
    /// <summary>Standard acceleration of gravity, m/s2: exactly 9.806 65 (3rd CGPM, 1901).</summary>
    internal static readonly Fraction Gravity = new(980665, 100000);

    /// <summary>Mass on the axle that lowers it by 1 mm, kg/mm.</summary>
    internal static Fraction KgPerMm(Fraction wheelRateNPerMm)
    {
        Must.BeAboveZero(wheelRateNPerMm, nameof(wheelRateNPerMm));
        return 2 * wheelRateNPerMm / Gravity;
    }
}
