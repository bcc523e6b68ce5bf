using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>Section width on a rim other than the measuring rim.</summary>
public static class SectionWidth
{
    private static readonly Fraction Factor = new(4, 10);

    /// <summary>S = S1 + K (A - A1) in whole mm, with K = 0.4 (UN Regulations 30 and 54, as quoted).</summary>
    /// <param name="nominal">S1, section width on the measuring rim, mm.</param>
    /// <param name="rimWidth">A, width of the rim fitted, inches.</param>
    /// <param name="measuringRimWidth">A1, width of the measuring rim, inches.</param>
    public static Fraction OnRim(Fraction nominal, Fraction rimWidth, Fraction measuringRimWidth) =>
        Numbers.RoundHalfUp(nominal + Factor * (rimWidth - measuringRimWidth) * Unit.Find("in")!.ToBase);
}
