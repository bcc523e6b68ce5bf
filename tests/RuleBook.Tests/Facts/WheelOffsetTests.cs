using Fractions;
using RuleBook.Figures;
using RuleBook.Tests.Jobs.Reading;
using RuleBook.Units;

namespace RuleBook.Tests.Facts;

/// <summary>
/// Wheels of less offset stand further out, on both sides: the track grows by twice the loss. "10P" is +10 (South Australian passenger-car
/// track list); the rest is derived.
/// </summary>
public sealed class WheelOffsetTests
{
    private const string Track = "track-increase";

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("30 mm", "10 mm", 40)]
    [InlineData("10 mm", "-20 mm", 60)]
    [InlineData("-10 mm", "0 mm", -20)]
    [InlineData("25.5 mm", "25 mm", 1)]
    public void The_track_grows_by_twice_the_offset_that_is_lost(string before, string after, int increase)
    {
        var job = Offsets(before, after);
        JobBook.Facts(job).Measure(Track, []).ShouldBe(Interval.Of(increase));
        JobBook.Read(job).Plan.WheelOffset!.LostMm.ShouldBe(new Fraction(increase, 2));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "after": "10 mm" """)]
    [InlineData(""" "before": "10 mm", "after": "unknown" """)]
    [InlineData("")]
    public void With_one_of_two_offsets_the_track_is_not_known_and_not_unchanged(string stated) =>
        JobBook.Facts($$""" "modification": { "wheel-offset": { {{stated}} } } """).Measure(Track, []).ShouldBe(Interval.Anything);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_track_that_is_stated_beside_the_offsets_agrees_with_them()
    {
        const string Both = """ "modification": { "track-increase": "40 mm", "wheel-offset": { "before": "30 mm", "after": """;
        JobBook.Facts(Both + """ "10 mm" } } """).Measure(Track, []).ShouldBe(Interval.Of(40));
        JobBook.Wrong(Both + """ "11 mm" } } """).ShouldBe(["contradiction modification.track-increase"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicle_on_a_wider_track_is_told_as_steadier()
    {
        const string Vehicle = """ "vehicle": { "track": "1600 mm", "centre-of-mass": "800 mm" } """;
        Stability("").ShouldBe(new Fraction(1600, 1600));
        Stability(Offsets("30 mm", "10 mm") + ",").ShouldBe(new Fraction(1640, 1600));
        Stability(""" "modification": { "wheel-offset": { "before": "30 mm" } }, """).ShouldBeNull();

        static Fraction? Stability(string more) => RoadReckoning.Of(JobBook.Read(more + Vehicle), null).StabilityAfter;
    }

    private static string Offsets(string before, string after) =>
        $$""" "modification": { "wheel-offset": { "before": "{{before}}", "after": "{{after}}" } } """;
}
