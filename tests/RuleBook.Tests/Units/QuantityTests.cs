using Fractions;
using RuleBook.Units;

namespace RuleBook.Tests.Units;

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
    [InlineData("3,500 kg", "write 3.500 kg, or 3500 kg where thousands are meant")]
    [InlineData("45,5 mm", "a comma is no decimal point here: write 45.5 mm")]
    [InlineData("45,55mm", "write 45.55mm")]
    [InlineData("1,234,567 kg", "a number and its unit")]
    [InlineData("45, mm", "a number and its unit")]
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
        ((double)Quantity.Parse("200 lbf/in").Base).ShouldBe(
            UnitsNet.ForcePerLength.FromPoundsForcePerInch(200).NewtonsPerMillimeter,
            1e-6
        );
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

    [Theory]
    [InlineData(-1, 2, 0)] // half a millimetre below zero goes up as well: to zero
    [InlineData(-8, 5, -2)]
    [InlineData(-7, 5, -1)]
    [InlineData(-2, 1, -2)]
    [InlineData(0, 1, 0)]
    public void Below_zero_too_a_half_goes_up_and_all_else_to_the_nearest(int numerator, int denominator, int expected) =>
        Numbers.RoundHalfUp(new Fraction(numerator, denominator)).ShouldBe(new Fraction(expected));

    [Theory] // derived: half away from zero; nothing after the point but what is there
    [InlineData(1, 2, 0, "1")]
    [InlineData(-1, 2, 0, "-1")]
    [InlineData(1, 2000, 3, "0.001")]
    [InlineData(-1, 3000, 3, "0")]
    [InlineData(800, 1, 0, "800")]
    [InlineData(800, 1, 3, "800")]
    [InlineData(-5, 2, 3, "-2.5")]
    public void A_number_shown_to_a_reader_is_rounded_half_away_from_zero(int numerator, int denominator, int decimals, string shown) =>
        Numbers.Show(new Fraction(numerator, denominator), decimals).ShouldBe(shown);

    [Theory]
    [InlineData("2 in", "mm", 50.8)] // International Yard and Pound Agreement 1959
    [InlineData("3500 kg", "t", 3.5)]
    [InlineData("250 mL", "L", 0.25)]
    public void An_amount_is_the_same_in_another_unit_of_its_kind(string text, string unit, decimal expected) =>
        Quantity.Parse(text).In(Unit.Find(unit)!).ShouldBe(new Quantity((Fraction)expected, Unit.Find(unit)!));

    [Fact]
    public void A_length_is_not_a_mass() => Should.Throw<ArgumentException>(() => Quantity.Parse("50 mm").In(Unit.Find("kg")!));

    [Fact]
    public void A_quantity_is_written_as_data_write_it()
    {
        Quantity.Parse("3.50 t").ToString().ShouldBe("3.5 t");
        Quantity.Of(7, Dimension.Count).ToString().ShouldBe("7");
    }

    [Theory] // the dimensions of SI, and millimetre, kilogram and litre as the trade's own base
    [InlineData(Dimension.Length, "mm")]
    [InlineData(Dimension.Mass, "kg")]
    [InlineData(Dimension.Volume, "L")]
    [InlineData(Dimension.Density, "kg/L")]
    [InlineData(Dimension.Ratio, "%")]
    [InlineData(Dimension.Speed, "km/h")]
    [InlineData(Dimension.Rate, "N/mm")]
    [InlineData(Dimension.Angle, "deg")]
    public void Each_kind_of_quantity_has_one_base_unit(Dimension dimension, string symbol)
    {
        Unit.Base(dimension).Symbol.ShouldBe(symbol);
        Unit.Base(dimension).ToBase.ShouldBe(Fraction.One);
    }

    [Theory] // ISO 4217: a currency is three capital letters
    [InlineData("83.20 AUD", "AUD")]
    [InlineData("5 NZD", "NZD")]
    public void Money_is_written_with_the_code_of_its_currency(string text, string currency)
    {
        var money = Quantity.Parse(text);
        (money.Dimension, money.Unit.Symbol, money.ToString()).ShouldBe(
            (Dimension.Money, currency, text.Replace(".20", ".2", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void One_currency_is_not_converted_to_another() => Quantity.Parse("5 NZD").Unit.ShouldNotBe(Quantity.Parse("5 AUD").Unit);

    [Fact]
    public void Who_writes_an_unknown_unit_is_shown_those_that_are_known_from_the_smallest_up_by_kind()
    {
        Quantity.TryParse("50 furlongs", out _, out var error).ShouldBeFalse();
        error.ShouldEndWith("known are mm, cm, in, m, lb, kg, t, mL, L, kg/L, %, km/h, lbf/in, N/mm, deg");
    }

    [Fact]
    public void A_quantity_longer_than_any_that_is_meant_is_refused()
    {
        Quantity.TryParse(new string('1', Quantity.LongestText - 3) + " mm", out _, out _).ShouldBeTrue();
        Quantity.TryParse(new string('1', Quantity.LongestText - 2) + " mm", out _, out _).ShouldBeFalse();
    }
}
