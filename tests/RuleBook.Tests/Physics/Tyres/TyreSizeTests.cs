using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>
/// How sizes are written: the charts in makers' owner's manuals (P passenger, LT light truck, T temporary, no letter the European way;
/// a size that begins with 31 has that overall diameter in inches) and pages of the tyre trade.
/// </summary>
public sealed class TyreSizeTests
{
    [Theory]
    [InlineData("265/70R17 115T", nameof(TyreService.Unmarked), nameof(TyreConstruction.Radial), "265", 70, "17", 115, 0, "T")]
    [InlineData("P215/65R15 95H", nameof(TyreService.Passenger), nameof(TyreConstruction.Radial), "215", 65, "15", 95, 0, "H")]
    [InlineData("LT285/75R16 126/123Q", nameof(TyreService.LightTruck), nameof(TyreConstruction.Radial), "285", 75, "16", 126, 123, "Q")]
    [InlineData("225/55ZR17 97W", nameof(TyreService.Unmarked), nameof(TyreConstruction.HighSpeedRadial), "225", 55, "17", 97, 0, "W")]
    [InlineData("T145/80D18 103M", nameof(TyreService.Temporary), nameof(TyreConstruction.Diagonal), "145", 80, "18", 103, 0, "M")]
    public void A_metric_size_names_width_aspect_ratio_construction_rim_load_and_speed(
        string text,
        string service,
        string construction,
        string width,
        int aspect,
        string rim,
        int single,
        int dual,
        string speed
    )
    {
        var size = TyreSize.Parse(text);
        size.Form.ShouldBe(TyreForm.Metric);
        ($"{size.Service}", $"{size.Construction}").ShouldBe((service, construction));
        (size.SectionWidth, size.AspectRatio, size.RimDiameterCode).ShouldBe((Exact(width), aspect, Exact(rim)));
        (size.LoadIndex!.Value, size.DualLoadIndex?.Value ?? 0, size.SpeedSymbol!.Symbol).ShouldBe((single, dual, speed));
    }

    [Theory] // 25.4 mm to the inch: International Yard and Pound Agreement 1959
    [InlineData("205R16C", nameof(TyreForm.FullProfile), nameof(TyreService.Commercial), nameof(TyreConstruction.Radial), "205", "16")]
    [InlineData("165R14", nameof(TyreForm.FullProfile), nameof(TyreService.Unmarked), nameof(TyreConstruction.Radial), "165", "14")]
    [InlineData("7.50R16LT", nameof(TyreForm.Numeric), nameof(TyreService.LightTruck), nameof(TyreConstruction.Radial), "190.5", "16")]
    [InlineData(
        "9.5-16.5LT 121/117R",
        nameof(TyreForm.Numeric),
        nameof(TyreService.LightTruck),
        nameof(TyreConstruction.Diagonal),
        "241.3",
        "16.5"
    )]
    [InlineData(
        "31x10.50R15LT 109Q",
        nameof(TyreForm.Flotation),
        nameof(TyreService.LightTruck),
        nameof(TyreConstruction.Radial),
        "266.7",
        "15"
    )]
    [InlineData(
        "33x12.50R15LT",
        nameof(TyreForm.Flotation),
        nameof(TyreService.LightTruck),
        nameof(TyreConstruction.Radial),
        "317.5",
        "15"
    )]
    [InlineData("35X12.50-15", nameof(TyreForm.Flotation), nameof(TyreService.Unmarked), nameof(TyreConstruction.Diagonal), "317.5", "15")]
    public void A_size_without_an_aspect_ratio_is_full_profile_numeric_or_flotation(
        string text,
        string form,
        string service,
        string construction,
        string width,
        string rim
    )
    {
        var size = TyreSize.Parse(text);
        ($"{size.Form}", $"{size.Service}", $"{size.Construction}").ShouldBe((form, service, construction));
        (size.SectionWidth, size.RimDiameterCode, size.AspectRatio).ShouldBe((Exact(width), Exact(rim), null));
    }

    [Theory] // the trade's spelling of the same sizes
    [InlineData(" 265/70 R17  115 s ", "265/70R17 115S")]
    [InlineData("265 / 70 R 17", "265/70R17")]
    [InlineData("LT 265/70R17", "LT265/70R17")]
    [InlineData("265/70R17LT 121/118S", "LT265/70R17 121/118S")]
    [InlineData("lt285/75r16 126 / 123 q", "LT285/75R16 126/123Q")]
    [InlineData("235/60R17XL 106H", "235/60R17 106H XL")]
    [InlineData("235/60R17 106H XL", "235/60R17 106H XL")]
    [InlineData("235/60R17 RF", "235/60R17 RF")]
    [InlineData("205 R16 C 110/108R", "205R16C 110/108R")]
    [InlineData("205R16 LT", "205R16LT")]
    [InlineData("7.5-16LT", "7.50-16LT")]
    [InlineData("31X10.5R15LT 109Q", "31x10.50R15LT 109Q")]
    [InlineData("LT31x10.50R15", "31x10.50R15LT")]
    [InlineData("T145/80-18", "T145/80D18")]
    [InlineData("185/70B13", "185/70B13")]
    [InlineData("P235/75R15 S", "P235/75R15 S")]
    [InlineData("245/40ZR18 (97Y)", "245/40ZR18 (97Y)")]
    [InlineData("245/40ZR18 97(Y)", "245/40ZR18 (97Y)")]
    [InlineData("245/40ZR18 ( 97 Y )", "245/40ZR18 (97Y)")]
    [InlineData("5.00-10 A6", "5.00-10 A6")]
    public void Spacing_and_case_do_not_matter(string text, string canonical) => TyreSize.Parse(text).ToString().ShouldBe(canonical);

    [Fact]
    public void ZR_without_a_symbol_is_over_240_and_with_one_the_symbol_counts() // published charts of the tyre trade
    {
        TyreSize.Parse("225/55ZR17").SpeedSymbol.ShouldBe(new SpeedSymbol("ZR", 240, true));
        TyreSize.Parse("225/55ZR17 97W").SpeedSymbol.ShouldBe(new SpeedSymbol("W", 270));
        TyreSize.Parse("225/55ZR17 (97Y)").SpeedSymbol.ShouldBe(new SpeedSymbol("(Y)", 300, true));
    }

    [Fact]
    public void Load_index_and_speed_symbol_are_no_part_of_the_size_alone() =>
        TyreSize.Parse("LT285/75R16 126/123Q").Designation.ShouldBe("LT285/75R16");

    [Fact]
    public void Two_spellings_of_one_size_are_equal() =>
        TyreSize.Parse("LT265/70 R17 121/118S").ShouldBe(TyreSize.Parse("265/70r17lt 121/118s"));
}
