using Fractions;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>The rim-code table of UN Regulations 30 and 54.</summary>
public sealed class RimCodeTests
{
    [Theory]
    [InlineData(15, 381)] // tyre retailer's worked example
    [InlineData(16, 406)] // the same; a forum's 407 rounds 406.4 the wrong way
    [InlineData(10, 254)] // memory, as all below
    [InlineData(12, 305)]
    [InlineData(13, 330)]
    [InlineData(14, 356)]
    [InlineData(17, 432)]
    [InlineData(18, 457)]
    [InlineData(19, 483)]
    [InlineData(20, 508)]
    [InlineData(21, 533)]
    [InlineData(22, 559)]
    public void A_rim_code_stands_for_whole_millimetres(int code, int millimetres)
    {
        RimCode.Millimetres(code).ShouldBe(new Fraction(millimetres));
        (Exact("25.4") * code - millimetres).Abs().ShouldBeLessThan(Exact("0.5")); // inch of 1959, nearest millimetre
    }

    [Theory]
    [InlineData(15, "380.2")] // ISO 4000-2 specified rim diameters: memory
    [InlineData(16, "405.6")]
    [InlineData(17, "436.6")]
    [InlineData(18, "462.0")]
    public void The_bead_seat_diameter_of_a_rim_is_never_part_of_an_overall_diameter(int code, string beadSeat)
    {
        var diameter = Handbook($"200/50R{code}").Millimetres!.Value;
        diameter.ShouldNotBe(Exact(beadSeat) + 200);
        (diameter - 200).ShouldBe(RimCode.Millimetres(code)!.Value);
    }

    [Theory]
    [InlineData("11")]
    [InlineData("16.5")]
    [InlineData("19.5")]
    [InlineData("23")]
    [InlineData("24")]
    public void A_code_outside_the_table_is_not_established(string code) => RimCode.Millimetres(Exact(code)).ShouldBeNull();
}
