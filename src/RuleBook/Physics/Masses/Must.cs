using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>Refuses figures that no vehicle can have.</summary>
internal static class Must
{
    internal static void BeAboveZero(Fraction value, string name)
    {
        if (value <= Fraction.Zero)
            throw new ArgumentOutOfRangeException(name, "must be above zero");
    }

    internal static void NotBeNegative(Fraction value, string name)
    {
        if (value < Fraction.Zero)
            throw new ArgumentOutOfRangeException(name, "must not be negative");
    }
}
