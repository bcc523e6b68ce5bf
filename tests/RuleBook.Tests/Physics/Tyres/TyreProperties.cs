using CsCheck;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>What holds for every size; derived from the definitions.</summary>
public sealed class TyreProperties
{
    private static readonly Gen<string> Build = Gen.OneOf("R", "ZR", "D", "B");
    private static readonly Gen<string> Service = Gen.OneOf<string>(
        Gen.Const(""),
        Gen.Select(Gen.Int[0, 150], Speeds, (load, speed) => $" {load}{speed}"),
        Gen.Select(Gen.Int[0, 150], Speeds, (load, speed) => $" {load}/{load - load / 10}{speed}"),
        Gen.Int[60, 130].Select(load => $" ({load}Y)")
    );

    private static readonly Gen<string> Metric = Gen.Select(
        Gen.OneOf("", "P", "LT", "T"),
        Gen.Int[25, 80],
        Gen.Int[4, 20],
        Build,
        Gen.Int[16, 60],
        Service,
        (prefix, width, aspect, build, rim, service) => $"{prefix}{width * 5}/{aspect * 5}{build}{Half(rim)}{service}"
    );

    private static readonly Gen<string> Other = Gen.Select(
        Gen.OneOf<string>(
            Gen.Int[100, 300].Select(width => $"{width}"),
            Gen.Int[200, 2000].Select(Hundredths),
            Gen.Select(Gen.Int[31, 60], Gen.Int[200, 2000], (diameter, width) => $"{diameter}x{Hundredths(width)}")
        ),
        Gen.OneOf("R", "ZR", "-", "B"),
        Gen.Int[16, 60],
        Gen.OneOf("", "LT", "C"),
        Service,
        (dimensions, build, rim, suffix, service) => $"{dimensions}{build}{Half(rim)}{suffix}{service}"
    );

    private static readonly Gen<string> OnTableRims = Gen.Select(
        Gen.Int[100, 500],
        Gen.Int[20, 100],
        Gen.OneOf(10, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22),
        (width, aspect, rim) => $"{width}/{aspect}R{rim}"
    );

    private static Gen<string> Speeds =>
        Gen.OneOf<string>(
            Gen.Const(""),
            Gen.Int[0, SpeedSymbol.All.Length - 1]
                .Select(index => SpeedSymbol.All[index].Symbol)
                .Where(symbol => symbol is not ("ZR" or "(Y)"))
        );

    [Fact]
    public void A_size_written_and_read_again_is_the_same_size() =>
        Gen.OneOf<string>(Metric, Other)
            .Sample(
                text =>
                {
                    var size = TyreSize.Parse(text);
                    size.ToString().ShouldBe(text); // the generator writes the canonical form
                    return TyreSize.Parse(size.ToString()) == size;
                },
                iter: 3000
            );

    [Fact]
    public void No_text_makes_the_reader_fail_in_any_other_way_than_by_saying_what_is_wrong() =>
        Gen.String[Gen.Char["0123456789/.xXRLTZC-() YP"], 0, 45]
            .Sample(
                text => TyreSize.TryParse(text, out var size, out var error) ? TyreSize.Parse(size.ToString()) == size : error.Length > 0,
                iter: 5000
            );

    [Fact]
    public void Swapping_the_new_tyre_and_a_single_placard_size_reverses_the_growth() =>
        Gen.Select(OnTableRims, OnTableRims)
            .Sample(
                (one, other) =>
                {
                    foreach (var basis in new[] { DiameterBasis.Handbook, DiameterBasis.Nominal })
                    {
                        var (there, back) = (Growth(one, basis, other), Growth(other, basis, one));
                        there.Growth.Amount.ShouldBe(-back.Growth.Amount!.Value);
                        there.TyreLift.Amount.ShouldBe(-back.TyreLift.Amount!.Value);
                        there.Reduction.Amount.ShouldBe(back.Growth.Amount);
                    }
                },
                iter: 1000
            );

    [Fact]
    public void Handbook_and_nominal_diameter_differ_by_at_most_1_4_mm() => // derived: 0.4 of the rim code, 0.5 of each section height
        OnTableRims.Sample(
            size => (Handbook(size).Millimetres!.Value - Nominal(size).Millimetres!.Value).Abs() <= Exact("1.4"),
            iter: 2000
        );

    [Fact]
    public void The_difference_of_1_4_mm_is_reached() => // derived: 97.5 rounds to 98 twice, and 355.6 to 356
        (Handbook("195/50R14").Millimetres!.Value - Nominal("195/50R14").Millimetres!.Value).ShouldBe(Exact("1.4"));

    [Fact]
    public void A_rule_that_allows_an_indicated_speed_allows_it_between_its_own_bounds() =>
        Gen.Select(Gen.Int[0, 10], Gen.Int[0, 10], Gen.Int[0, 6], Gen.Int[41, 200], Gen.Int[1, 200])
            .Sample(
                (under, over, constant, indicated, trueSpeed) =>
                {
                    var rule = new SpeedometerRule(under, over, constant);
                    var within = rule.Check(indicated, trueSpeed) == SpeedometerFinding.Within;
                    return within == (trueSpeed >= rule.LowestTrue(indicated) && trueSpeed <= rule.HighestTrue(indicated));
                },
                iter: 2000
            );

    private static string Half(int halves) => halves % 2 == 0 ? $"{halves / 2}" : $"{halves / 2}.5";

    private static string Hundredths(int hundredths) => $"{hundredths / 100}.{hundredths % 100:00}";
}
