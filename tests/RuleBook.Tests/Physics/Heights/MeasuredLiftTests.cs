using Fractions;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Heights;

/// <summary>
/// Wheel centre up to the guard edge, unladen, level ground: South Australian government page "Suspension modification".
/// </summary>
public sealed class MeasuredLiftTests
{
    private static readonly HeightReading Before = Reading(MassState.Unladen, 480, 482, 520, 520);

    [Fact]
    [Trait("Basis", "derived")]
    public void Lift_is_the_mean_of_both_sides_and_both_are_kept()
    {
        // derived: 480/482 before, 530/531 after, no body block; 776 to 804 mm tyres give 14 mm; total 63.5 mm.
        var lift = Measure(Reading(MassState.Unladen, 530, 531, 560, 560)).Front.ShouldNotBeNull();
        lift.LeftMm.ShouldBe((Fraction)50);
        lift.RightMm.ShouldBe((Fraction)49);
        lift.SuspensionMm.ShouldBeExactly(49.5m);
        TotalLift.Mm(lift.SuspensionMm, lift.BodyBlockMm, 14).ShouldBeExactly(63.5m);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_body_block_is_inside_the_rise_of_the_guard_and_is_taken_out_of_the_suspensions_part()
    {
        // derived: 480/482 before, 555/556 after, 25 mm body block; rise 74.5, suspension 49.5, total with 14 mm of tyre 88.5 mm.
        var measurement = Work(Reading(MassState.Unladen, 555, 556, 585, 585)) with
        {
            BodyBlockMm = 25,
        };
        var lift = MeasuredLift.Of(measurement).Front.ShouldNotBeNull();
        lift.GuardRiseMm.ShouldBeExactly(74.5m);
        lift.SuspensionMm.ShouldBeExactly(49.5m);
        TotalLift.Mm(lift.SuspensionMm, lift.BodyBlockMm, 14).ShouldBeExactly(88.5m);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(MassState.Unladen, MassState.Tare)]
    [InlineData(MassState.Unladen, MassState.Loaded)]
    [InlineData(MassState.Tare, MassState.Unladen)]
    [InlineData(MassState.Loaded, MassState.Loaded)] // no two loads are alike
    public void Readings_at_different_mass_states_are_refused_because_part_of_the_difference_is_load(MassState before, MassState after)
    {
        var result = MeasuredLift.Of(
            new LiftMeasurement { Before = Before with { State = before }, After = Before with { State = after } }
        );
        result.Front.ShouldBeNull();
        result.Rear.ShouldBeNull();
        result.Refusal.ShouldNotBeNull().ShouldContain("load");
        result.Missing.Select(missing => missing.Fact).ShouldContain("measured.axle-load-difference");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void With_wheel_rates_and_the_load_difference_a_reading_is_corrected_and_says_so()
    {
        // derived: 2 springs of 30 N/mm and 2 of 40 N/mm; UnitsNet turns the kilograms into newtons.
        var result = MeasuredLift.Of(
            Work(Reading(MassState.Loaded, 500, 502, 530, 530)) with
            {
                FrontWheelRateNPerMm = 30,
                RearWheelRateNPerMm = 40,
                LoadDifferenceKg = new AxleMasses(120, 250),
            }
        );
        result.Refusal.ShouldBeNull();
        result.Correction.ShouldNotBeNull().ShouldContain("linear");
        ((double)result.Front!.CorrectionMm).ShouldBe(UnitsNet.Force.FromKilogramsForce(120).Newtons / 60, 1e-9);
        ((double)result.Rear!.CorrectionMm).ShouldBe(UnitsNet.Force.FromKilogramsForce(250).Newtons / 80, 1e-9);
        result.Front.GuardRiseMm.ShouldBeGreaterThan((Fraction)20);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_makers_trim_height_is_the_reference_so_that_lifting_a_sagged_vehicle_back_to_it_is_no_lift()
    {
        // New South Wales manual of November 2016, 3.1(2)(d), as quoted in a forum: back to original trim height needs no certificate.
        var sagged = Reading(MassState.Unladen, 460, 460, 495, 495);
        var trim = Reading(MassState.Unladen, 480, 480, 520, 520);
        var result = MeasuredLift.Of(
            new LiftMeasurement
            {
                MakersTrim = trim,
                Before = sagged,
                After = trim,
            }
        );
        result.Front!.SuspensionMm.ShouldBe(Fraction.Zero);
        result.Missing.ShouldBeEmpty();
        MeasuredLift.Of(new LiftMeasurement { Before = sagged, After = trim }).Missing.Single().Fact.ShouldBe("vehicle.trim-height");
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData(540, 560, false)] // 20 mm is the difference that one maker's service manual still accepts
    [InlineData(540, 561, true)]
    public void A_difference_between_left_and_right_beyond_the_makers_value_is_flagged(int left, int right, bool uneven)
    {
        var measurement = Work(Reading(MassState.Unladen, left, right, 560, 560)) with { LeftRightWarningMm = 20 };
        MeasuredLift.Of(measurement).Front!.Uneven.ShouldBe(uneven);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_corner_that_was_not_measured_is_named_and_the_other_axle_is_still_answered()
    {
        var result = MeasuredLift.Of(Work(Reading(MassState.Unladen, 530, null, 560, 560)) with { MakersTrim = Before });
        result.Front.ShouldBeNull();
        result.Rear!.SuspensionMm.ShouldBe((Fraction)40);
        result.Rear.Uneven.ShouldBeNull();
        result.Missing.ShouldBe([new MissingFact("measured.after.front-right", "the lift of the front axle")]);
    }

    private static MeasuredLift Measure(HeightReading after) => MeasuredLift.Of(Work(after));

    private static LiftMeasurement Work(HeightReading after) => new() { Before = Before, After = after };

    private static HeightReading Reading(MassState state, int? frontLeft, int? frontRight, int? rearLeft, int? rearRight) =>
        new(state, new AxleHeights(frontLeft, frontRight), new AxleHeights(rearLeft, rearRight));
}
