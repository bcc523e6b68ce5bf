using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;

namespace RuleBook.Figures;

/// <summary>Works out the heights of a job.</summary>
internal static class HeightReckoning
{
    private const int StepKg = 50;
    private const int Steps = 6;

    /// <param name="job">The job.</param>
    /// <param name="allowed">How much suspension lift each pathway certainly allows, mm.</param>
    public static HeightAnswer? Of(Job job, Func<IEnumerable<(Pathway Pathway, Fraction LimitMm)>> allowed)
    {
        if (!job.Plan.TellsLift)
            return null;
        var measured = Lifts.Measured(job);
        var predicted = Predicted(job, allowed);
        var lift = Lifts.Of(job);
        return new HeightAnswer(
            measured,
            lift?.Value,
            lift?.Derivation,
            measured is null ? null : Uncertainty(job),
            [.. (measured?.Missing ?? []).Concat(predicted.SelectMany(axle => axle.Lift.Missing)).Distinct()]
        )
        {
            DecidingAxle = job.Plan.JudgedAxle,
            Predicted = predicted,
            Denied = Lifts.Denied(job),
            Uneven = [.. Uneven(job.Plan.Heights)],
        };
    }

    private static Fraction? Uncertainty(Job job) =>
        job.Plan.Uncertainties.TryGetValue(Lifts.Measure, out var stated) ? stated
        : job.Plan.Reference.Uncertainties.TryGetValue(Lifts.Measure, out var usual) ? usual.Expanded
        : null;

    private static IEnumerable<UnevenAxle> Uneven(LiftMeasurement heights) =>
        Enum.GetValues<Axle>()
            .Select(axle =>
                heights is { After: { } after, LeftRightWarningMm: { } warning }
                && after.On(axle) is { LeftMm: { } left, RightMm: { } right }
                    ? new UnevenAxle(axle, left, right, warning)
                    : null
            )
            .OfType<UnevenAxle>()
            .Where(each => each.ApartMm > each.WarningMm);

    private static ImmutableArray<PredictedAxle> Predicted(Job job, Func<IEnumerable<(Pathway Pathway, Fraction LimitMm)>> allowed)
    {
        if (job.Plan.FrontSprings is null && job.Plan.RearSprings is null)
            return [];
        var unladen = Budgets.Unladen(job);
        return
        [
            .. Enum.GetValues<Axle>()
                .Select(axle => Lifts.Predicted(job, axle, unladen))
                .OfType<PredictedLift>()
                .Select(lift => new PredictedAxle(
                    lift,
                    Lifts.PredictedRange(job, job.Plan.Springs(lift.Axle)!, unladen),
                    Lifts.PredictedUncertainty(job),
                    unladen.Axles?.On(lift.Axle),
                    lift.Table(StepKg, Steps),
                    Needs(job, lift, allowed())
                )),
        ];
    }

    private static ImmutableArray<MassNeeded> Needs(Job job, PredictedLift lift, IEnumerable<(Pathway Pathway, Fraction LimitMm)> allowed)
    {
        if (lift.LiftMm is null)
            return [];
        var (wheelbase, arm) = (job.Plan.WheelbaseMm, job.Plan.BallBehindRearAxleMm);
        return
        [
            .. allowed.Select(each => new MassNeeded(
                each.Pathway,
                each.LimitMm,
                lift.MassToComeDownTo(each.LimitMm)!.Value,
                wheelbase is { } length ? lift.MassToComeDownTo(each.LimitMm, length / 2, length) : null,
                wheelbase is { } span && arm is { } behind ? lift.MassToComeDownTo(each.LimitMm, span + behind, span) : null
            )),
        ];
    }
}
