using Fractions;
using RuleBook.Quantities;

namespace RuleBook.Tests.Quantities;

/// <summary>Unit factors against UnitsNet (a general-purpose library) and the International Yard and Pound Agreement, 1959.</summary>
public sealed class QuantityTests
{
    [Theory]
    [InlineData("1 in", 25.4)] // International Yard and Pound Agreement 1959
    [InlineData("2 in", 50.8)]
    [InlineData("1 lb", 0.45359237)] // the same
    [InlineData("3.5 t", 3500)]
    [InlineData("-26 mm", -26)]
    [InlineData("7 %", 7)]
    public void A_quantity_converts_exactly_to_its_base_unit(string text, decimal expected) =>
        Quantity.Parse(text).Base.ShouldBe((Fraction)expected);

    [Theory]
    [InlineData("50", "unit is missing")]
    [InlineData("50 furlongs", "not a known unit")]
    [InlineData("3,500 kg", "a number and its unit")]
    [InlineData("about 50 mm", "a number and its unit")]
    [InlineData("", "a number and its unit")]
    public void A_quantity_that_cannot_be_read_says_what_would_be_right(string text, string hint)
    {
        Quantity.TryParse(text, out _, out var error).ShouldBeFalse();
        error.ShouldContain(hint);
    }

    [Fact]
    public void UnitsNet_agrees_with_the_inch_the_pound_and_the_wheel_rate()
    {
        ((double)Quantity.Parse("27 in").Base).ShouldBe(UnitsNet.Length.FromInches(27).Millimeters, 1e-9);
        ((double)Quantity.Parse("4500 lb").Base).ShouldBe(UnitsNet.Mass.FromPounds(4500).Kilograms, 1e-9);
        ((double)Quantity.Parse("200 lbf/in").Base)
            .ShouldBe(UnitsNet.ForcePerLength.FromPoundsForcePerInch(200).NewtonsPerMillimeter, 1e-6);
    }

    [Theory]
    [InlineData(5, 2, "2.5")]
    [InlineData(803, 1, "803")]
    [InlineData(-1, 3, "-0.333")]
    [InlineData(2, 3, "0.667")]
    public void A_number_is_shown_exactly_or_to_three_decimals(int numerator, int denominator, string shown) =>
        Numbers.Show(new Fraction(numerator, denominator)).ShouldBe(shown);

    [Theory]
    [InlineData(357, 2, 179)] // 255/70R15: 178.5 mm of section height is printed as 179 (TRAA Standards Manual 2002, as quoted)
    [InlineData(133, 1, 133)]
    [InlineData(533, 4, 133)] // 205/65R15: 133.25 goes to 133 (tyre retailer's worked example)
    public void A_section_height_of_half_a_millimetre_rounds_up(int numerator, int denominator, int expected) =>
        Numbers.RoundHalfUp(new Fraction(numerator, denominator)).ShouldBe(new Fraction(expected));
}
