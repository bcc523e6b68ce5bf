using Fractions;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>A lift measured at the corners, or expected from springs, carried into the verdict.</summary>
public sealed class HeightScenarioTests
{
    private const string Before =
        "before: { mass-state: unladen, front-left: 480 mm, front-right: 482 mm, rear-left: 500 mm, rear-right: 500 mm }";

    [Fact]
    public void Springs_rated_for_a_constant_load_that_is_not_aboard_raise_the_vehicle_to_about_75_mm()
    {
        // Common practice, no source: about 75 mm where 50 mm was meant; the mass they are rated for has to be aboard when it is measured.
        var answer = RealBook.Assess(File.ReadAllText(Path.Combine(RealBook.Root, "examples", "springs-before-work.yaml")));
        var rear = answer.Heights!.Predicted.Single(axle => axle.Lift.Axle == Physics.Masses.Axle.Rear);
        rear.Lift.LiftMm!.Value.ShouldBeInRange(70, 80);
        answer.Heights.Suspension!.Value.Contains(rear.Lift.LiftMm!.Value).ShouldBeTrue(); // within the prediction's uncertainty
        var within50 = rear.Needs.Single(need => need.LimitMm == 50);
        rear.Lift.LiftWith(within50.OnAxleKg).ShouldBe(50);
        within50.MidwayKg.ShouldBe(within50.OnAxleKg * 2); // derived: midway each axle carries half
        rear.Table.Zip(rear.Table.Skip(1)).ShouldAllBe(pair => pair.Second.LiftMm < pair.First.LiftMm);
    }

    [Fact]
    public void The_lift_is_the_mean_of_left_and_right_and_the_larger_axle_governs()
    {
        // Derived: before 480/482, after 530/531: 49.5 mm; tyres 776 to 804 mm: 14 mm; 63.5 mm in all.
        var answer = Measured(
            "after: { mass-state: unladen, front-left: 530 mm, front-right: 531 mm, rear-left: 540 mm, rear-right: 540 mm }",
            "tyres: 265/70R17"
        );
        Value(answer, "suspension-lift").ShouldBe(new Fraction(495, 10));
        Value(answer, "tyre-lift").ShouldBe(14);
        Value(answer, "total-lift").ShouldBe(new Fraction(635, 10));
        answer.Heights!.Measured!.Rear!.SuspensionMm.ShouldBe(40);
    }

    [Fact]
    public void A_body_block_is_inside_the_measured_rise_and_is_taken_out_of_the_suspension()
    {
        // Derived: the same with a block of 25 mm and 555/556: rise 74.5, suspension 49.5, in all 88.5 mm.
        var answer = Measured(
            "after: { mass-state: unladen, front-left: 555 mm, front-right: 556 mm, rear-left: 560 mm, rear-right: 560 mm }",
            "tyres: 265/70R17, body-lift: 25 mm"
        );
        answer.Heights!.Measured!.Front!.GuardRiseMm.ShouldBe(new Fraction(745, 10));
        Value(answer, "suspension-lift").ShouldBe(new Fraction(495, 10));
        Value(answer, "total-lift").ShouldBe(new Fraction(885, 10));
    }

    [Fact]
    public void Readings_at_two_mass_states_are_refused_and_the_lift_stays_open()
    {
        // Workshop manuals: a full tank and nothing aboard; derived: otherwise the difference is load, not lift.
        var answer = Measured(
            "after: { mass-state: tare, front-left: 530 mm, front-right: 530 mm, rear-left: 540 mm, rear-right: 540 mm }"
        );
        answer.Heights!.Measured!.Refusal.ShouldNotBeNull().ShouldContain("load, not lift");
        answer.Verdict.ShouldBeNull();
        answer.Undecided.ShouldContain(effect => effect.Opening.Name == "measured.after");
    }

    [Fact]
    public void They_are_corrected_where_the_wheel_rates_and_the_difference_in_load_are_given()
    {
        // Derived: 2 x 49.03325 N/mm / 9.80665 m/s2 = 10 kg a millimetre; 50 kg less on the axle hide nothing, they raise it by 5 mm.
        var answer = Measured(
            "after: { mass-state: tare, front-left: 530 mm, front-right: 532 mm, rear-left: 540 mm, rear-right: 540 mm }, "
                + "axle-load-difference: { front: -50 kg, rear: 0 kg }",
            "springs: { front: { wheel-rate: 49.03325 N/mm }, rear: { wheel-rate: 60 N/mm } }"
        );
        answer.Heights!.Measured!.Correction.ShouldNotBeNull();
        Value(answer, "suspension-lift").ShouldBe(45);
    }

    [Fact]
    public void A_stated_lift_that_the_corner_readings_deny_is_an_error_at_its_place()
    {
        var problem = Should
            .Throw<InputException>(() =>
                Measured(
                    "after: { mass-state: unladen, front-left: 530 mm, front-right: 531 mm, rear-left: 540 mm, rear-right: 540 mm }",
                    "suspension-lift: 45 mm"
                )
            )
            .Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("contradiction");
        problem.Text.ShouldContain("49.5 mm");
        problem.Mark.Line.ShouldBe(4);
    }

    [Theory]
    [InlineData(44, Conformity.Within)]
    [InlineData(45, Conformity.Within)]
    [InlineData(46, Conformity.TooCloseToCall)]
    [InlineData(55, Conformity.TooCloseToCall)]
    [InlineData(56, Conformity.Beyond)]
    public void A_measured_lift_nearer_to_its_limit_than_its_uncertainty_is_too_close_to_call(int lift, Conformity expected)
    {
        // The guard band of JCGM 106:2012 (clause not opened), 5 mm stated, at the 50 mm of Queensland's notification LS9.
        var answer = Measured(
            $"after: {{ mass-state: unladen, front-left: {480 + lift} mm, front-right: {482 + lift} mm, rear-left: 500 mm, "
                + $"rear-right: 500 mm }}, uncertainty: {{ suspension-lift: 5 mm }}"
        );
        var check = answer
            .Findings.SelectMany(finding => finding.Limits.Concat(finding.Exceeded))
            .First(each => each.Measure.Name == "suspension-lift" && each.Bound!.Value == 50);
        check.Guarded.ShouldNotBeNull().Conformity.ShouldBe(expected);
    }

    [Fact]
    public void A_planned_lift_has_no_uncertainty_of_measurement()
    {
        var answer = RealBook.Assess(
            "au-qld",
            "category: MC, four-wheel-drive: yes, stability-control: yes",
            "",
            "2026-11-20",
            "suspension-lift: 50 mm"
        );
        answer.Verdict.ShouldBe(Pathway.NoCertificate); // Queensland, notification LS9, 26 October 2018
        answer.Findings.SelectMany(finding => finding.Limits).ShouldAllBe(check => check.Guarded == null);
    }

    private static Fraction? Value(Assessment answer, string measure) =>
        answer.Measures.Single(known => known.Measure.Name == measure).Value.Exact;

    private static Assessment Measured(string after, string modification = "") =>
        RealBook.Assess(
            $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes, tyres: 265/65R17 }
            modification: { {{modification}} }
            measured: { {{Before}}, {{after}} }
            """
        );
}
