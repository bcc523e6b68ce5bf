using Fractions;
using RuleBook.Physics.Tyres;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>
/// The load-index table: UN Regulation 54, Annex 4, by way of three published charts of the tyre trade (one from 0 to 119, one from 60 to
/// 119, one from 75 to 150), which agree on all 71 values but for the misprints below.
/// </summary>
public sealed class LoadIndexTests
{
    private static readonly (int Index, int Kilograms)[] Charts =
    [
        (60, 250),
        (69, 325),
        (78, 425),
        (87, 545),
        (96, 710),
        (105, 925),
        (114, 1180),
        (123, 1550),
        (61, 257),
        (70, 335),
        (79, 437),
        (88, 560),
        (97, 730),
        (106, 950),
        (115, 1215),
        (124, 1600),
        (62, 265),
        (71, 345),
        (80, 450),
        (89, 580),
        (98, 750),
        (107, 975),
        (116, 1250),
        (125, 1650),
        (63, 272),
        (72, 355),
        (81, 462),
        (90, 600),
        (99, 775),
        (108, 1000),
        (117, 1285),
        (126, 1700),
        (64, 280),
        (73, 365),
        (82, 475),
        (91, 615),
        (100, 800),
        (109, 1030),
        (118, 1320),
        (127, 1750),
        (65, 290),
        (74, 375),
        (83, 487),
        (92, 630),
        (101, 825),
        (110, 1060),
        (119, 1360),
        (128, 1800),
        (66, 300),
        (75, 387),
        (84, 500),
        (93, 650),
        (102, 850),
        (111, 1090),
        (120, 1400),
        (129, 1850),
        (67, 307),
        (76, 400),
        (85, 515),
        (94, 670),
        (103, 875),
        (112, 1120),
        (121, 1450),
        (130, 1900),
        (68, 315),
        (77, 412),
        (86, 530),
        (95, 690),
        (104, 900),
        (113, 1150),
        (122, 1500),
    ];

    [Fact]
    public void Every_load_index_from_60_to_130_carries_what_the_published_charts_say()
    {
        Charts.Length.ShouldBe(71);
        foreach (var (index, kilograms) in Charts)
            new LoadIndex(index).Kilograms.ShouldBe(new Fraction(kilograms), $"load index {index}");
    }

    [Fact]
    public void A_higher_load_index_carries_more() => RisesStrictly(Table()).ShouldBeTrue();

    [Fact] // derived: the indices follow the R80 series of preferred numbers, a step of 2.9 per cent, rounded
    public void Each_step_is_between_two_and_four_per_cent() => StepsEvenly(Table()).ShouldBeTrue();

    [Theory]
    [InlineData(62, 165)] // misprint of the first chart, for 265
    [InlineData(61, 265)] // misprint of the second chart, for 257: the same as index 62
    public void A_misprint_that_breaks_the_rise_is_caught_by_the_rise(int index, int misprint) =>
        RisesStrictly(Table(index, misprint)).ShouldBeFalse();

    [Theory]
    [InlineData(62, 165)]
    [InlineData(61, 265)]
    [InlineData(83, 478)] // misprint of the second chart, for 487: it still rises (475, 478, 500), so the size of the step must show it
    public void Every_misprint_of_the_charts_is_caught_by_the_size_of_the_step(int index, int misprint) =>
        StepsEvenly(Table(index, misprint)).ShouldBeFalse();

    [Theory]
    [InlineData(59)]
    [InlineData(131)]
    [InlineData(0)]
    public void An_index_outside_the_table_is_not_established(int index)
    {
        new LoadIndex(index).Kilograms.ShouldBeNull();
        new LoadIndex(index).Derivation.ShouldContain("60 to 130");
    }

    [Fact]
    public void A_dual_index_carries_less_than_the_single_one() // published: LT265/75R16 112/109 carries 1120 and 1030 kg
    {
        var size = TyreSize.Parse("LT265/75R16 112/109Q");
        size.LoadIndex!.Kilograms.ShouldBe(new Fraction(1120));
        size.DualLoadIndex!.Kilograms.ShouldBe(new Fraction(1030));
        AxleCapacity.Single(size).ShouldBe(new DerivedFigure(2240, "2 x 1120 = 2240 kg (load index 112 = 1120 kg)")); // derived
        AxleCapacity.Dual(size).ShouldBe(new DerivedFigure(4120, "4 x 1030 = 4120 kg (load index 109 = 1030 kg)")); // derived
    }

    [Fact]
    public void Without_a_load_index_the_capacity_of_an_axle_is_not_established()
    {
        AxleCapacity.Single(TyreSize.Parse("265/70R17")).Amount.ShouldBeNull();
        AxleCapacity.Dual(TyreSize.Parse("265/70R17 115S")).Derivation.ShouldContain("dual");
        AxleCapacity.Single(TyreSize.Parse("7.50R16LT 131Q")).Derivation.ShouldContain("outside the table");
    }

    private static int[] Table(int index = 0, int misprint = 0) =>
        [.. Enumerable.Range(60, 71).Select(each => each == index ? misprint : (int)new LoadIndex(each).Kilograms!.Value)];

    private static bool RisesStrictly(int[] table) => table.Zip(table.Skip(1)).All(pair => pair.First < pair.Second);

    private static bool StepsEvenly(int[] table) =>
        table.Zip(table.Skip(1)).All(pair => pair.Second * 100 >= pair.First * 102 && pair.Second * 100 <= pair.First * 104);
}
