using Fractions;
using RuleBook.Physics.Dynamics;

namespace RuleBook.Tests.Physics.Dynamics;

/// <summary>Figures that no vehicle can have (derived: a length that is divided by, and a part of a whole).</summary>
public sealed class RefusedFiguresTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void No_vehicle_has_axles_at_one_place() => Should.Throw<ArgumentOutOfRangeException>(() => Clearance.LeastMidwayMm(0, 1));

    [Fact]
    [Trait("Basis", "derived")]
    public void No_centre_of_mass_lies_on_the_ground()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => StaticStability.Factor(1600, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => StaticStability.TrackToRecoverMm(1600, 0, 50));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_springs_carry_between_nothing_and_the_whole_vehicle()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => StaticStability.RiseMm(50, new Fraction(-1, 10)));
        Should.Throw<ArgumentOutOfRangeException>(() => StaticStability.RiseMm(50, new Fraction(11, 10)));
        StaticStability.RiseMm(50, 1).ShouldBe((Fraction)50);
        StaticStability.RiseMm(50, 0).ShouldBe(Fraction.Zero);
    }
}
