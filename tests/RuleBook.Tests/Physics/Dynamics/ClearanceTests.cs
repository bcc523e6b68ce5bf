using Fractions;
using RuleBook.Physics.Dynamics;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Dynamics;

/// <summary>Australian Design Rule 43/04 cl 6.4.2: 33.33 mm a metre between two axles (clause as quoted verbatim in a forum).</summary>
public sealed class ClearanceTests
{
    private static readonly Fraction Factor = Of(33.33m);

    [Theory] // derived from the quoted factor
    [Trait("Basis", "derived")]
    [InlineData(2400, "79.99")]
    [InlineData(2850, "94.99")]
    [InlineData(3085, "102.82")]
    [InlineData(3220, "107.32")]
    public void Least_clearance_midway_grows_with_the_wheelbase(int wheelbase, string least) =>
        Clearance.LeastMidwayMm(wheelbase, Factor).ShouldRead(least);

    [Fact]
    [Trait("Basis", "published")]
    public void The_rules_two_limbs_agree_because_the_ridge_of_seven_degrees_thirty_eight_has_the_same_slope()
    {
        // The same rule, cl 6.4.3: a ridge of planes that meet at 7 degrees 38 minutes; half of it over half a metre is 33.36 mm.
        var ridge = Math.Tan((7 + (38 / 60.0)) / 2 * Math.PI / 180) * 500;
        ((double)Clearance.LeastMidwayMm(1000, Factor)).ShouldBe(ridge, 0.05);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_clearance_that_just_reaches_the_least_is_enough()
    {
        Clearance.Check(Of(79.992m), 2400, Factor).Holds.ShouldBeTrue();
        Clearance.Check(Of(79.99m), 2400, Factor).MarginMm.ShouldBeExactly(-0.002m);
    }
}
