using CsCheck;
using Fractions;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>Random exact figures for property tests.</summary>
internal static class Any
{
    /// <summary>Tenths from one bound to the other, both whole numbers.</summary>
    internal static Gen<Fraction> Tenths(int from, int to) => Gen.Int[from * 10, to * 10].Select(tenths => new Fraction(tenths, 10));

    internal static Gen<Fraction> Mass { get; } = Tenths(0, 400);

    internal static Gen<Fraction> Place { get; } = Tenths(-1200, 5200);

    internal static Gen<Fraction> Wheelbase { get; } = Tenths(2000, 4000);

    internal static Gen<Fraction> Rate { get; } = Tenths(10, 120);
}
