using Fractions;

namespace RuleBook.Physics.Dynamics;

/// <summary>A length held against the least that it may be.</summary>
/// <param name="ValueMm">The length as it is, mm.</param>
/// <param name="LeastMm">The least that it may be, mm; reached is still within.</param>
internal sealed record LengthCheck(Fraction ValueMm, Fraction LeastMm)
{
    /// <summary>What is left, mm; negative when it is too short.</summary>
    public Fraction MarginMm => ValueMm - LeastMm;

    /// <summary>True when the length is enough.</summary>
    public bool Holds => ValueMm >= LeastMm;
}
