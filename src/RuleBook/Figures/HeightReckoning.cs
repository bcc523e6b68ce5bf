using System.Collections.Immutable;
using Fractions;
using RuleBook.Answers;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Figures;

/// <summary>Works out the heights of a job.</summary>
internal static class HeightReckoning
{
    private const int StepKg = 50;
    private const int Steps = 6;

    /// <param name="job">The job.</param>
    /// <param name="reach">How much suspension lift each pathway allows.</param>
    public static HeightAnswer? Of(Job job, Func<Margin?> reach)
    {
        if (!job.Plan.TellsLift) return null;
        var measured = Lifts.Measured(job);
        var predicted = Predicted(job, reach);
        var lift = Lifts.Of(job);
        return new HeightAnswer(
            measured,
            predicted,
            lift?.Value.Exact,
            lift?.Derivation,
            measured is null ? null : Uncertainty(job),
            Note(job, lift),
            [.. (measured?.Missing ?? []).Concat(predicted.SelectMany(axle => axle.Lift.Missing)).Distinct()]);
    }

    private static Fraction? Uncertainty(Job job) =>
        job.Plan.Uncertainties.TryGetValue(Lifts.Measure, out var stated) ? stated
        : job.Plan.Reference.Uncertainties.TryGetValue(Lifts.Measure, out var usual) ? usual.Expanded
        : null;

    private static string? Note(Job job, Derived? lift) =>
        job.Plan.Heights.After is null && job.Measures.TryGetValue(Lifts.Measure, out var stated)
        && lift?.Value.Exact is { } follows && follows != stated.Base
            ? $"The lift is stated as {stated}, and that decides; the springs would give {Numbers.Show(follows)} mm."
            : null;

    private static ImmutableArray<PredictedAxle> Predicted(Job job, Func<Margin?> reach)
    {
        if (job.Plan.FrontSprings is null && job.Plan.RearSprings is null) return [];
        var unladen = Budgets.Unladen(job);
        return
        [
            .. Enum.GetValues<Axle>()
                .Select(axle => Lifts.Predicted(job, axle, unladen))
                .OfType<PredictedLift>()
                .Select(lift => new PredictedAxle(lift, unladen.Axles?.On(lift.Axle), lift.Table(StepKg, Steps), Needs(job, lift, reach()))),
        ];
    }

    private static ImmutableArray<MassNeeded> Needs(Job job, PredictedLift lift, Margin? margin)
    {
        if (margin is null || lift.LiftMm is null) return [];
        var (wheelbase, arm) = (job.Plan.WheelbaseMm, job.Plan.BallBehindRearAxleMm);
        return
        [
            .. margin.Reaches
                .Where(reach => reach.Certain.Value is not null)
                .DistinctBy(reach => reach.Certain.Value)
                .Select(reach => new MassNeeded(
                    reach.Pathway,
                    reach.Certain.Value!.Value,
                    lift.MassToComeDownTo(reach.Certain.Value.Value)!.Value,
                    wheelbase is { } length ? lift.MassToComeDownTo(reach.Certain.Value.Value, length / 2, length) : null,
                    wheelbase is { } span && arm is { } behind ? lift.MassToComeDownTo(reach.Certain.Value.Value, span + behind, span) : null)),
        ];
    }
}
