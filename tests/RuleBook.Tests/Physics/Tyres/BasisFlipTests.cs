using Fractions;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>
/// Pairs for which the basis of the diameters decides whether a limit is met. Derived: reckoned apart from this code from the two formulas.
/// The limits are round figures that occur in rules; here they are numbers only.
/// </summary>
public sealed class BasisFlipTests
{
    [Theory] // derived, every row
    [InlineData("265/70R16", "285/65R18", "50", "49", "50.3")]
    [InlineData("245/70R16", "265/55R20", "50", "50", "50.1")]
    [InlineData("285/65R17", "275/70R17", "15", "16", "14.5")]
    [InlineData("265/55R20", "275/65R18", "15", "15", "15.2")]
    [InlineData("265/70R16", "265/75R16", "26", "26", "26.5")]
    [InlineData("245/70R16", "265/65R17", "26", "26", "26.9")]
    public void A_limit_in_millimetres_is_met_on_one_basis_only(string from, string to, string limit, string handbook, string nominal)
    {
        var (h, n) = (Growth(to, DiameterBasis.Handbook, from).Growth.Amount, Growth(to, DiameterBasis.Nominal, from).Growth.Amount);
        h.ShouldBe(Exact(handbook));
        n.ShouldBe(Exact(nominal));
        (h <= Exact(limit)).ShouldNotBe(n <= Exact(limit));
    }

    [Theory] // derived, every row
    [InlineData("265/70R17", "285/75R17", "7", "6.965", "7.038")]
    [InlineData("255/70R16", "275/70R17", "7", "7.068", "6.995")]
    [InlineData("245/65R17", "265/70R17", "7", "7.200", "6.997")]
    public void A_limit_in_per_cent_is_met_on_one_basis_only(string from, string to, string limit, string handbook, string nominal)
    {
        var h = Growth(to, DiameterBasis.Handbook, from).GrowthPercent.Amount!.Value;
        var n = Growth(to, DiameterBasis.Nominal, from).GrowthPercent.Amount!.Value;
        (h - Exact(handbook)).Abs().ShouldBeLessThanOrEqualTo(new Fraction(1, 2000));
        (n - Exact(nominal)).Abs().ShouldBeLessThanOrEqualTo(new Fraction(1, 2000));
        (h <= Exact(limit)).ShouldNotBe(n <= Exact(limit));
    }

    [Theory] // derived: far from a limit both bases agree
    [InlineData("265/65R17", "285/70R17", "56", "54.5", "50")]
    public void Well_past_a_limit_the_basis_does_not_matter(string from, string to, string handbook, string nominal, string limit)
    {
        var (h, n) = (Growth(to, DiameterBasis.Handbook, from).Growth.Amount, Growth(to, DiameterBasis.Nominal, from).Growth.Amount);
        (h, n).ShouldBe((Exact(handbook), Exact(nominal)));
        (h <= Exact(limit)).ShouldBe(n <= Exact(limit));
    }
}
