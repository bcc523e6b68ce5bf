using Fractions;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>
/// UN Regulation 39, paragraph 5.3 (as quoted; taken over by Australian Design Rule 18/03): 0 &lt;= V1 - V2 &lt;= 0.1 V2 + 4. The earlier
/// rule, by a motoring club's fact sheet: ten per cent of the true speed either way above 40 km/h.
/// </summary>
public sealed class SpeedometerTests
{
    private static readonly SpeedometerRule NeverLow = new(0, 10, 4);
    private static readonly SpeedometerRule EitherWay = new(10, 10, 0, 40);

    [Fact]
    public void At_a_true_100_the_speedometer_may_show_100_to_114() // motoring club's fact sheet
    {
        NeverLow.LowestIndicated(100).ShouldBe(new Fraction(100));
        NeverLow.HighestIndicated(100).ShouldBe(new Fraction(114));
    }

    [Fact]
    public void Under_the_earlier_rule_a_true_100_may_show_90_to_110() // motoring club's fact sheet
    {
        EitherWay.LowestIndicated(100).ShouldBe(new Fraction(90));
        EitherWay.HighestIndicated(100).ShouldBe(new Fraction(110));
    }

    [Theory] // derived from paragraph 5.3: (V1 - 4) / 1.1
    [InlineData(40, "32.73")]
    [InlineData(60, "50.91")]
    [InlineData(80, "69.09")]
    [InlineData(100, "87.27")]
    [InlineData(110, "96.36")]
    [InlineData(120, "105.45")]
    public void The_least_true_speed_at_an_indicated_speed(int indicated, string least) =>
        (NeverLow.LowestTrue(indicated) - Exact(least)).Abs().ShouldBeLessThanOrEqualTo(Exact("0.005"));

    [Fact]
    // The club prints 86 to 100 at an indicated 100; the clause gives 87.27.
    public void The_rounded_86_of_a_fact_sheet_is_outside_the_rule()
    {
        NeverLow.Check(100, 86).ShouldBe(SpeedometerFinding.ReadsHigh);
        NeverLow.Check(100, 87).ShouldBe(SpeedometerFinding.ReadsHigh);
        NeverLow.Check(100, Exact("87.28")).ShouldBe(SpeedometerFinding.Within);
        NeverLow.LowestTrue(100).ShouldBe(new Fraction(960, 11));
    }

    [Theory] // the clause's own ends, included
    [InlineData("100", "100", SpeedometerFinding.Within)]
    [InlineData("99.9", "100", SpeedometerFinding.ReadsLow)]
    [InlineData("114", "100", SpeedometerFinding.Within)]
    [InlineData("114.1", "100", SpeedometerFinding.ReadsHigh)]
    public void A_speedometer_never_shows_less_than_the_true_speed(string indicated, string trueSpeed, SpeedometerFinding finding) =>
        NeverLow.Check(Exact(indicated), Exact(trueSpeed)).ShouldBe(finding);

    [Theory] // the fact sheet's ends, included; no accuracy asked for below 40
    [InlineData("90", "100", SpeedometerFinding.Within)]
    [InlineData("89.9", "100", SpeedometerFinding.ReadsLow)]
    [InlineData("110", "100", SpeedometerFinding.Within)]
    [InlineData("110.1", "100", SpeedometerFinding.ReadsHigh)]
    [InlineData("20", "40", SpeedometerFinding.NotCovered)]
    [InlineData("20", "40.1", SpeedometerFinding.ReadsLow)]
    public void The_earlier_rule_allows_ten_per_cent_either_way(string indicated, string trueSpeed, SpeedometerFinding finding) =>
        EitherWay.Check(Exact(indicated), Exact(trueSpeed)).ShouldBe(finding);

    [Theory] // derived: diameters 776, 804, 832 (memory of the handbook)
    [InlineData("265/65R17", "265/70R17", "1.03608")]
    [InlineData("265/70R17", "285/70R17", "1.03483")]
    public void True_speed_grows_as_the_diameter(string before, string after, string factor)
    {
        var speed = Speedometer.TrueSpeed(100, Handbook(before), Handbook(after)).Amount!.Value;
        (speed / 100 - Exact(factor)).Abs().ShouldBeLessThanOrEqualTo(Exact("0.000005"));
    }

    [Fact]
    public void A_speedometer_that_was_exact_does_not_survive_a_larger_tyre_and_one_that_over_read_may() // derived
    {
        var (before, after) = (Handbook("265/65R17"), Handbook("265/70R17"));
        var exact = Speedometer.TrueSpeed(100, before, after).Amount!.Value;
        var over = Speedometer.TrueSpeed(96, before, after).Amount!.Value;
        NeverLow.Check(100, exact).ShouldBe(SpeedometerFinding.ReadsLow);
        NeverLow.Check(100, over).ShouldBe(SpeedometerFinding.Within);
        EitherWay.Check(100, exact).ShouldBe(SpeedometerFinding.Within);
    }

    [Fact]
    public void The_over_reading_of_the_factory_is_the_whole_allowance() // derived
    {
        Speedometer.LargestGrowthPercent(NeverLow, 100, 100).ShouldBe(Fraction.Zero);
        Speedometer.LargestGrowthPercent(NeverLow, 100, 96).ShouldBe(new Fraction(100, 24));
        Speedometer.LargestGrowthPercent(EitherWay, 100, 100).ShouldBe(new Fraction(100, 9)); // 11.1 per cent
    }

    [Fact]
    public void Without_both_diameters_the_true_speed_is_not_established() =>
        Speedometer.TrueSpeed(100, Handbook("165R14"), Handbook("265/70R17")).Derivation.ShouldContain("165R14");
}
