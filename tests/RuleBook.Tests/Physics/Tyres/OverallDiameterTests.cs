using Fractions;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>Overall diameters that somebody else printed: the Australian Standards Manual as quoted, and others' worked examples.</summary>
public sealed class OverallDiameterTests
{
    [Theory]
    [InlineData("255/70R15", "739")] // Tyre and Rim Association of Australia, Standards Manual 2002, quoted in a forum (t=33495)
    [InlineData("205/65R15", "647")] // tyre retailer's worked example: 133.25 goes to 133, on 381
    [InlineData("7.50R16LT", "804")] // Standards Manual 2002, same forum: highway tread
    [InlineData("205R16C", "736")] // the same
    [InlineData("205R16LT", "736")] // the same
    [InlineData("265/70R17", "804")] // memory of the handbook
    [InlineData("285/70R17", "832")] // memory
    [InlineData("265/65R17", "776")] // memory
    [InlineData("285/75R16", "834")] // memory
    [InlineData("33x12.50R15LT", "826")] // memory: design diameter of a flotation size
    [InlineData("31x10.50R15LT", "775")] // memory
    [InlineData("35x12.50R17LT", "877")] // memory
    public void The_handbook_diameter_is_the_one_that_is_printed(string size, string printed) =>
        Handbook(size).Millimetres.ShouldBe(Exact(printed));

    [Theory]
    [InlineData("285/75R16", "833.9")] // four-wheel-drive blog, worked example
    [InlineData("225/65R17", "724.3")] // question-and-answer page, worked
    [InlineData("215/60R16", "664.4")] // the same
    [InlineData("245/55R18", "726.7")] // club and retail page
    [InlineData("265/70R17", "802.8")] // two explanatory articles print the section height of 185.5 mm; 431.8 + 2 x 185.5
    public void The_nominal_diameter_is_not_rounded(string size, string worked) => Nominal(size).Millimetres.ShouldBe(Exact(worked));

    [Theory]
    [InlineData("285/70R17", "32.71", "0.005")] // four-wheel-drive forum, thread 23715
    [InlineData("265/75R16", "31.64", "0.01")] // the same; its section height is rounded to a tenth of an inch or so before it is doubled
    [InlineData("215/55R16", "25.311", "0.0005")] // mailing list, 2006, worked
    [InlineData("195/50R15", "22.677", "0.0005")] // worked page
    [InlineData("245/55R18", "28.6", "0.05")] // club and retail page
    public void The_nominal_diameter_in_inches_agrees_to_the_last_figure_printed(string size, string inches, string within) =>
        (Nominal(size).Millimetres!.Value / Exact("25.4") - Exact(inches)).Abs().ShouldBeLessThanOrEqualTo(Exact(within));

    [Fact]
    public void A_reckoning_that_rounds_the_rim_alone_falls_on_neither_basis()
    {
        // tyre retailer's worked example for 245/70R16: 406 + 2 x 171.5 = 749; the handbook rounds 171.5 up as well
        Handbook("245/70R16").Millimetres.ShouldBe(Exact("749") + 1);
        Nominal("245/70R16").Millimetres.ShouldBe(Exact("749") + Exact("0.4"));
    }

    [Theory]
    [InlineData("33x12.50R15LT", "810")] // forum measurement
    [InlineData("31x10.50R15LT", "740")] // forum measurement
    public void A_flotation_tyre_measures_less_than_its_design_and_its_design_is_less_than_its_designation(string size, string measured)
    {
        Exact(measured).ShouldBeLessThan(Handbook(size).Millimetres!.Value);
        Handbook(size).Millimetres!.Value.ShouldBeLessThan(Nominal(size).Millimetres!.Value);
    }

    [Theory]
    [InlineData("7.50R16LT", "traction tread is 812 mm")] // Standards Manual 2002, as quoted
    [InlineData("205R16C", "traction tread is 747 mm")] // the same
    public void Where_tread_types_differ_the_highway_value_is_taken_and_the_traction_value_named(string size, string caution) =>
        Handbook(size).Caution.ShouldNotBeNull().ShouldContain(caution);

    [Theory]
    [InlineData("31x10.50R15LT")]
    [InlineData("33x12.50R15LT")]
    [InlineData("35x12.50R17LT")]
    public void A_diameter_known_from_memory_says_so(string size)
    {
        Handbook(size).Derivation.ShouldContain("memory");
        Handbook(size).Caution.ShouldNotBeNull();
    }

    [Theory]
    [InlineData("9.5-16.5LT 121/117R", "table only")] // numeric, not in the entries that were read
    [InlineData("165R14", "table only")]
    [InlineData("35X12.50-15", "table only")]
    [InlineData("245/70R19.5", "rim code 19.5")] // the rim-code table has whole codes only
    [InlineData("275/55R24", "rim code 24")]
    public void A_handbook_diameter_that_was_not_read_anywhere_is_not_established(string size, string reason)
    {
        Handbook(size).Millimetres.ShouldBeNull();
        Handbook(size).Derivation.ShouldContain(reason);
    }

    [Theory]
    [InlineData("205R16C")] // full profile: 82 per cent for some, 80 for others, so no formula
    [InlineData("7.50R16LT")]
    public void A_size_without_an_aspect_ratio_has_no_nominal_diameter(string size) => Nominal(size).Millimetres.ShouldBeNull();

    [Theory]
    [InlineData("33x12.50R15LT", "838.2")] // 33 x 25.4: International Yard and Pound Agreement 1959
    [InlineData("31x10.50R15LT", "787.4")]
    [InlineData("35x12.50R17LT", "889.0")]
    public void A_flotation_size_names_its_diameter_in_inches(string size, string millimetres) =>
        Nominal(size).Millimetres.ShouldBe(Exact(millimetres));

    [Fact]
    public void A_measured_diameter_does_not_follow_from_the_size()
    {
        var size = TyreSize.Parse("33x12.50R15LT");
        OverallDiameter.Of(size, DiameterBasis.Measured).Millimetres.ShouldBeNull();
        OverallDiameter.Measured(size, 810).Millimetres.ShouldBe(new Fraction(810)); // forum measurement
        Should.Throw<ArgumentOutOfRangeException>(() => OverallDiameter.Measured(size, 0));
    }

    [Fact]
    public void The_reckoning_can_be_followed_line_by_line()
    {
        // 431.8 or 432 and 185.5: the explanatory articles; 804: memory of the handbook
        Handbook("265/70R17")
            .Derivation.ShouldBe("432 + 2 x 186 = 804 mm (handbook: rim code 17 = 432 mm, section height 185.5 mm rounded to 186 mm)");
        Nominal("265/70R17").Derivation.ShouldBe("17 x 25.4 + 2 x 185.5 = 802.8 mm (nominal: not rounded)");
    }
}
