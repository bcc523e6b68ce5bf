using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>A tolerance between the indicated speed V1 and the true speed V2, both in km/h.</summary>
/// <param name="UnderPercent">V1 may be under V2 by this per cent of V2; 0 where it may never be under; below 100.</param>
/// <param name="OverPercent">V1 may be over V2 by this per cent of V2 ...</param>
/// <param name="OverConstant">... and by this many km/h more.</param>
/// <param name="AboveTrueSpeed">The rule holds above this true speed (not at it), km/h; null where it holds at every speed.</param>
/// <example>
/// UN Regulation 39, 5.3 (0 &lt;= V1 - V2 &lt;= 0.1 V2 + 4) is <c>new(0, 10, 4)</c>; ten per cent either way above 40 km/h is
/// <c>new(10, 10, 0, 40)</c>. Which of them a vehicle falls under depends on its date of manufacture and is data, not code.
/// </example>
internal sealed record SpeedometerRule(Fraction UnderPercent, Fraction OverPercent, Fraction OverConstant, Fraction? AboveTrueSpeed = null)
{
    /// <summary>The least V1 that the rule allows at the true speed <paramref name="trueSpeed"/>.</summary>
    public Fraction LowestIndicated(Fraction trueSpeed) => trueSpeed * (100 - UnderPercent) / 100;

    /// <summary>The greatest V1 that the rule allows at the true speed <paramref name="trueSpeed"/>.</summary>
    public Fraction HighestIndicated(Fraction trueSpeed) => trueSpeed * (100 + OverPercent) / 100 + OverConstant;

    /// <summary>The least V2 that the rule allows when <paramref name="indicated"/> is shown.</summary>
    public Fraction LowestTrue(Fraction indicated) => (indicated - OverConstant) * 100 / (100 + OverPercent);

    /// <summary>The greatest V2 that the rule allows when <paramref name="indicated"/> is shown.</summary>
    public Fraction HighestTrue(Fraction indicated) => indicated * 100 / (100 - UnderPercent);

    /// <summary>Compares an indicated speed with the true one; the ends of the tolerance comply.</summary>
    public SpeedometerFinding Check(Fraction indicated, Fraction trueSpeed) =>
        trueSpeed <= AboveTrueSpeed ? SpeedometerFinding.NotCovered
        : indicated < LowestIndicated(trueSpeed) ? SpeedometerFinding.ReadsLow
        : indicated > HighestIndicated(trueSpeed) ? SpeedometerFinding.ReadsHigh
        : SpeedometerFinding.Within;
}
