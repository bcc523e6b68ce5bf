using RuleBook.Physics.Tyres;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>UN Regulation 54, Annex 4, by the charts that agree: 60 = 250 kg, 115 = 1215, 116 = 1250, 130 = 1900 kg.</summary>
public sealed class LeastIndexTests
{
    [Theory]
    [Trait("Basis", "published")]
    [InlineData(0, 60)]
    [InlineData(250, 60)]
    [InlineData(251, 61)]
    [InlineData(1215, 115)]
    [InlineData(1216, 116)]
    [InlineData(1250, 116)]
    [InlineData(1900, 130)]
    public void The_least_index_for_a_mass_is_the_first_whose_figure_reaches_it(int kilograms, int index) =>
        LoadIndex.LeastCarrying(kilograms).ShouldBe(new LoadIndex(index));

    [Fact]
    [Trait("Basis", "published")]
    public void Beyond_the_heaviest_index_there_is_none() => LoadIndex.LeastCarrying(1901).ShouldBeNull();

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("265/70R17 115S", "S")]
    [InlineData("265/70R17", null)] // nothing is marked
    [InlineData("255/40ZR18", "ZR")] // the construction says so
    public void A_speed_symbol_is_what_the_tyre_is_marked_with(string size, string? symbol) =>
        (TyreSize.Parse(size).SpeedSymbol?.Symbol).ShouldBe(symbol);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("20x8.00R15LT", true)] // larger than its rim
    [InlineData("15x8.00R15LT", false)] // a tyre as large as its rim has no height
    [InlineData("995/70R17", true)]
    [InlineData("999/70R17", true)]
    [InlineData("100/70R17", true)]
    public void A_width_has_three_digits_and_a_tyre_is_larger_than_its_rim(string size, bool read) =>
        TyreSize.TryParse(size, out _, out _).ShouldBe(read);
}
