using Fractions;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>
/// Growth over the placard's sizes. Tyre lift is half of it: state road authority and police, quoted in the press 2018-19.
/// </summary>
public sealed class TyreGrowthTests
{
    [Theory] // derived from the diameters 776, 804, 832 (memory of the handbook) and the unrounded formula
    [InlineData("265/70R17", DiameterBasis.Handbook, "28", "14", "3.61")]
    [InlineData("265/70R17", DiameterBasis.Nominal, "26.5", "13.25", "3.41")]
    [InlineData("285/70R17", DiameterBasis.Handbook, "56", "28", "7.22")]
    [InlineData("285/70R17", DiameterBasis.Nominal, "54.5", "27.25", "7.02")]
    public void A_larger_tyre_on_a_placard_of_265_65R17_grows_and_lifts(
        string fitted,
        DiameterBasis basis,
        string growth,
        string lift,
        string percent
    )
    {
        var tyre = Growth(fitted, basis, "265/65R17");
        tyre.Growth.Amount.ShouldBe(Exact(growth));
        tyre.TyreLift.Amount.ShouldBe(Exact(lift));
        (tyre.GrowthPercent.Amount!.Value - Exact(percent)).Abs().ShouldBeLessThanOrEqualTo(Exact("0.005"));
    }

    [Fact]
    public void Fifty_millimetres_of_diameter_lift_the_vehicle_twenty_five() // state road authority, as quoted in the press 2018-19
    {
        var size = TyreSize.Parse("265/65R17");
        var tyre = TyreGrowth.Of(OverallDiameter.Measured(size, 826), [OverallDiameter.Measured(size, 776)]);
        tyre.TyreLift.Amount.ShouldBe(new Fraction(25));
    }

    [Fact]
    public void Growth_is_over_the_largest_placard_size_and_reduction_under_the_smallest()
    {
        // 739: Standards Manual 2002 as quoted; 647: retailer's worked example; 804: memory of the handbook
        var placard = new[] { "255/70R15", "205/65R15" };
        var larger = Growth("265/70R17", DiameterBasis.Handbook, placard);
        larger.Largest!.Size.ToString().ShouldBe("255/70R15");
        larger.Smallest!.Size.ToString().ShouldBe("205/65R15");
        larger.Growth.Amount.ShouldBe(new Fraction(804 - 739));
        larger.Reduction.Amount.ShouldBe(new Fraction(647 - 804));
        larger.GrowthPercent.Amount.ShouldBe(new Fraction(100 * (804 - 739), 739));

        var smaller = Growth("205/65R15", DiameterBasis.Handbook, "255/70R15", "265/70R17");
        smaller.Reduction.Amount.ShouldBe(new Fraction(739 - 647));
        smaller.ReductionPercent.Amount.ShouldBe(new Fraction(100 * (739 - 647), 739));
        smaller.Growth.Amount.ShouldBe(new Fraction(647 - 804));
    }

    [Fact]
    public void The_width_is_compared_with_the_widest_placard_size() // derived: 285 / 265
    {
        var tyre = Growth("285/70R17", DiameterBasis.Handbook, "245/70R16", "265/65R17");
        tyre.WidthPercent.Amount.ShouldBe(new Fraction(28500, 265));
        tyre.WidthPercent.Derivation.ShouldBe("100 x 285 / 265 = 107.547 % of the widest placard size");
    }

    [Fact]
    public void A_placard_size_whose_diameter_is_not_established_leaves_the_growth_open_and_names_it()
    {
        var tyre = Growth("265/70R17", DiameterBasis.Handbook, "265/65R17", "165R14");
        tyre.Growth.Amount.ShouldBeNull();
        tyre.TyreLift.Amount.ShouldBeNull();
        tyre.GrowthPercent.Derivation.ShouldContain("165R14");
        tyre.WidthPercent.Amount.ShouldBe(new Fraction(100));
    }

    [Fact]
    public void Without_a_placard_size_nothing_is_compared()
    {
        var tyre = Growth("265/70R17", DiameterBasis.Handbook);
        tyre.Growth.ShouldBe(new DerivedFigure(null, "no placard size is given"));
        tyre.WidthPercent.Amount.ShouldBeNull();
    }

    [Fact]
    public void The_reckoning_names_the_basis_of_each_diameter()
    {
        var tyre = Growth("265/70R17", DiameterBasis.Handbook, "265/65R17"); // 804 and 776: memory of the handbook
        tyre.Growth.Derivation.ShouldBe("804 - 776 = 28 mm (265/70R17 handbook less 265/65R17 handbook)");
        tyre.TyreLift.Derivation.ShouldBe("28 / 2 = 14 mm (half the growth in diameter)");
        tyre.GrowthPercent.Derivation.ShouldBe("100 x 28 / 776 = 3.608 % of 265/65R17 handbook");
    }
}
