using CsCheck;
using Fractions;
using RuleBook.Physics.Heights;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Heights;

/// <summary>
/// Acceptance below limit - w, rejection above limit + w, w the guard band: a testing laboratory's published decision rule with
/// non-binary statements; the rule is that of JCGM 106:2012 (memory for its clause, not opened).
/// </summary>
public sealed class GuardedResultTests
{
    [Theory]
    [Trait("Basis", "published")]
    [InlineData(48.0, Conformity.Within)] // on the acceptance limit 50 - 2
    [InlineData(48.1, Conformity.TooCloseToCall)]
    [InlineData(50.0, Conformity.TooCloseToCall)]
    [InlineData(52.0, Conformity.TooCloseToCall)]
    [InlineData(52.1, Conformity.Beyond)]
    public void A_lift_closer_to_its_limit_than_its_uncertainty_is_too_close_to_call(decimal value, Conformity expected)
    {
        var result = GuardedResult.Of(Of(value), 2, 50, LimitSense.AtMost, 1);
        result.Conformity.ShouldBe(expected);
        result.GuardBand.ShouldBe((Fraction)2);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(102, Conformity.Within)]
    [InlineData(101, Conformity.TooCloseToCall)]
    [InlineData(97, Conformity.Beyond)]
    public void A_clearance_is_guarded_from_the_other_side(int value, Conformity expected) =>
        GuardedResult.Of(value, 2, 100, LimitSense.AtLeast, 1).Conformity.ShouldBe(expected);

    [Fact]
    [Trait("Basis", "property")]
    public void Without_uncertainty_the_limit_alone_decides() =>
        Any.Tenths(40, 60)
            .Sample(value =>
                GuardedResult.Of(value, 0, 50, LimitSense.AtMost, 1).Conformity == (value <= 50 ? Conformity.Within : Conformity.Beyond)
            );

    [Fact]
    [Trait("Basis", "property")]
    public void A_wider_guard_band_never_turns_an_open_result_into_a_decided_one() =>
        Gen.Select(Any.Tenths(40, 60), Any.Tenths(0, 5), Any.Tenths(0, 5))
            .Sample(
                (value, narrow, more) =>
                {
                    var tight = GuardedResult.Of(value, narrow, 50, LimitSense.AtMost, 1).Conformity;
                    var wide = GuardedResult.Of(value, narrow + more, 50, LimitSense.AtMost, 1).Conformity;
                    return wide == tight || wide == Conformity.TooCloseToCall;
                }
            );
}
