using Fractions;
using RuleBook.Physics.Dynamics;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Dynamics;

/// <summary>SSF = T / 2h: NHTSA, chapter on rollover. The figures are derived from it.</summary>
public sealed class StaticStabilityTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(1600, 720, "1.1111")]
    [InlineData(1600, 770, "1.0390")] // centre of mass 50 mm higher
    [InlineData(1640, 720, "1.1389")] // track 40 mm wider
    public void The_factor_falls_with_height_and_grows_with_track(int track, int height, string factor) =>
        StaticStability.Factor(track, height).ShouldRead(factor);

    [Fact]
    [Trait("Basis", "derived")]
    public void Fifty_millimetres_of_height_take_111_millimetres_of_track_to_win_back()
    {
        (StaticStability.Factor(1600, 720) - StaticStability.Factor(1600, 770)).ShouldRead("0.072");
        var track = StaticStability.TrackToRecoverMm(1600, 720, 50);
        track.ShouldRead("111.1");
        StaticStability.Factor(1600 + track, 770).ShouldBe(StaticStability.Factor(1600, 720));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_centre_of_mass_rises_by_less_than_the_suspension_because_axles_and_wheels_stay_down()
    {
        StaticStability.RiseMm(50, Of(0.8m)).ShouldBe((Fraction)40);
        Should.Throw<ArgumentOutOfRangeException>(() => StaticStability.RiseMm(50, Of(1.1m)));
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_factor_is_called_an_indicator_and_not_a_limit() => // NHTSA: a general US indicator; no Australian rule
        StaticStability.Caution.ShouldContain("not a limit");
}
