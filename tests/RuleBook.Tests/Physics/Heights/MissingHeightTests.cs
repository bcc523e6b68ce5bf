using Fractions;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;

namespace RuleBook.Tests.Physics.Heights;

/// <summary>What is asked for where a lift cannot be told, and figures that are refused (derived).</summary>
public sealed class MissingHeightTests
{
    private static readonly HeightReading Reading = At(MassState.Unladen);

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_any_height_the_one_after_the_work_and_the_makers_are_asked_for_because_they_give_the_lift() =>
        MeasuredLift
            .Of(new LiftMeasurement())
            .Missing.ShouldBe([new MissingFact("measured.after", "the lift"), new MissingFact("vehicle.trim-height", "the lift")]);

    [Fact]
    [Trait("Basis", "derived")]
    public void With_a_height_before_the_work_the_makers_height_tells_what_sagged_springs_hide()
    {
        var missing = MeasuredLift.Of(new LiftMeasurement { Before = Reading, After = Reading }).Missing.ShouldHaveSingleItem();
        missing.Fact.ShouldBe("vehicle.trim-height");
        missing.Adds.ShouldContain("sagged");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_two_loaded_readings_the_load_is_doubted_and_of_two_states_both_are_named()
    {
        Refusal(MassState.Loaded, MassState.Loaded).ShouldContain("not known that the loads were alike");
        Refusal(MassState.Tare, MassState.Loaded).ShouldContain("at tare and the reading after the work at loaded mass");
        Refusal(MassState.Unladen, MassState.Tare).ShouldContain("at unladen and the reading after the work at tare mass");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_axle_that_carries_no_more_than_before_needs_no_wheel_rate()
    {
        // 20 kg more on the rear: 100 N/mm at each wheel is 2 x 100 / 9.80665 = 20.394 kg a mm, so that the rear is 0.981 mm low.
        var measurement = new LiftMeasurement
        {
            MakersTrim = Reading,
            After = At(MassState.Loaded),
            LoadDifferenceKg = new AxleMasses(0, 20),
            RearWheelRateNPerMm = 100,
        };
        var lift = MeasuredLift.Of(measurement);
        lift.Refusal.ShouldBeNull();
        lift.Front!.SuspensionMm.ShouldBe(Fraction.Zero);
        lift.Rear!.SuspensionMm.ShouldBe(new Fraction(980665, 1000000));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(20, 0, "modification.springs.front.wheel-rate")]
    [InlineData(0, 20, "modification.springs.rear.wheel-rate")]
    public void The_wheel_rate_of_the_axle_that_carries_more_is_asked_for(int front, int rear, string fact) =>
        MeasuredLift
            .Of(
                new LiftMeasurement
                {
                    MakersTrim = Reading,
                    After = At(MassState.Loaded),
                    LoadDifferenceKg = new AxleMasses(front, rear),
                }
            )
            .Missing.ShouldHaveSingleItem()
            .Fact.ShouldBe(fact);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(true, "vehicle.trim-height")]
    [InlineData(false, "measured.before")]
    public void Each_corner_that_lacks_is_named_where_the_job_would_state_it(bool maker, string reference)
    {
        var none = new HeightReading(MassState.Unladen, new AxleHeights(null, null), new AxleHeights(null, null));
        var lift = MeasuredLift.Of(
            new LiftMeasurement
            {
                MakersTrim = maker ? none : null,
                Before = maker ? null : none,
                After = none,
            }
        );
        lift.Front.ShouldBeNull();
        lift.Rear.ShouldBeNull();
        lift.Missing.Select(missing => missing.Fact)
            .Where(fact => fact != "vehicle.trim-height")
            .ShouldBe([
                $"{reference}.front-left",
                $"{reference}.front-right",
                "measured.after.front-left",
                "measured.after.front-right",
                $"{reference}.rear-left",
                $"{reference}.rear-right",
                "measured.after.rear-left",
                "measured.after.rear-right",
            ]);
        lift.Missing.Count(missing => missing.Adds == "the lift of the rear axle").ShouldBe(4);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_guard_band_is_a_multiple_of_the_expanded_uncertainty()
    {
        // JCGM 106:2012: w = r U (memory for its clause, not opened). With U = 2 mm and r = 1/2 the band is 1 mm.
        GuardedResult.Of(49, 2, 50, LimitSense.AtMost, new Fraction(1, 2)).Conformity.ShouldBe(Conformity.Within);
        GuardedResult
            .Of(new Fraction(491, 10), 2, 50, LimitSense.AtMost, new Fraction(1, 2))
            .Conformity.ShouldBe(Conformity.TooCloseToCall);
        GuardedResult.Of(49, 2, 50, LimitSense.AtMost, new Fraction(1, 2)).GuardBand.ShouldBe(Fraction.One);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void No_uncertainty_and_no_guard_is_below_zero()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => GuardedResult.Of(49, -1, 50, LimitSense.AtMost, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => GuardedResult.Of(49, 1, 50, LimitSense.AtMost, -1));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_table_of_lift_against_mass_goes_down_in_steps_and_is_not_endless()
    {
        var lift = PredictedLift.Of(
            new AxleSprings("modification.springs.front", Axle.Front, 30, new SpringHeight.Gain(50, 1350)),
            1350,
            "x"
        );
        lift.Table(10, 1000).Length.ShouldBe(1001);
        lift.Table(10, 0).ShouldHaveSingleItem().LiftMm.ShouldBe((Fraction)50);
        Should.Throw<ArgumentOutOfRangeException>(() => lift.Table(0, 5));
        Should.Throw<ArgumentOutOfRangeException>(() => lift.Table(10, -1));
        Should.Throw<ArgumentOutOfRangeException>(() => lift.Table(10, 1001));
    }

    private static string Refusal(MassState before, MassState after) =>
        MeasuredLift.Of(new LiftMeasurement { Before = At(before), After = At(after) }).Refusal.ShouldNotBeNull();

    private static HeightReading At(MassState state) => new(state, new AxleHeights(480, 480), new AxleHeights(520, 520));
}
