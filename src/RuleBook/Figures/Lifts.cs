using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Figures;

/// <summary>The suspension lift that follows from heights measured at the corners or, before the work, from the springs.</summary>
internal static class Lifts
{
    /// <summary>The measure that it becomes.</summary>
    public const string Measure = KnownWords.SuspensionLift;

    /// <summary>Name of the uncertainty of a predicted lift.</summary>
    public const string PredictedMeasure = KnownWords.PredictedLift;

    /// <summary>As measured; null where nothing was measured after the work.</summary>
    public static MeasuredLift? Measured(Job job) =>
        job.Plan.Heights.After is null
            ? null
            : MeasuredLift.Of(
                job.Plan.Heights with
                {
                    BodyBlockMm = job.Measures.GetValueOrDefault(KnownWords.BodyLift)?.Base ?? Fraction.Zero,
                }
            );

    /// <summary>As predicted at the unladen mass; null for an axle whose springs stay.</summary>
    public static PredictedLift? Predicted(Job job, Axle axle, MassBudget unladen)
    {
        if (job.Plan.Springs(axle) is not { } springs)
            return null;
        var fact =
            unladen.Missing.FirstOrDefault(missing => missing.Fact.StartsWith("vehicle.tare", StringComparison.Ordinal))?.Fact
            ?? unladen
                .Missing.FirstOrDefault(missing =>
                    !missing.Fact.Contains("ratings", StringComparison.Ordinal) && missing.Fact != "vehicle.tyres"
                )
                ?.Fact
            ?? "vehicle.tare-axles";
        return PredictedLift.Of(springs, unladen.Axles?.On(axle), fact);
    }

    /// <summary>
    /// Between which two heights a predicted lift lies, mm: the more the axle carries the lower it stands, and the prediction's own
    /// uncertainty to each side.
    /// </summary>
    public static Interval PredictedRange(Job job, AxleSprings springs, MassBudget unladen)
    {
        var load = unladen.Possible.On(springs.Axle);
        var uncertainty = PredictedUncertainty(job);
        return new Interval(LiftAt(load.High) - uncertainty, LiftAt(load.Low) + uncertainty);

        Fraction? LiftAt(Fraction? kg) => kg is null ? null : PredictedLift.Of(springs, kg, "").LiftMm;
    }

    /// <summary>Expanded uncertainty of a predicted lift, mm.</summary>
    public static Fraction PredictedUncertainty(Job job) =>
        job.Plan.Uncertainties.TryGetValue(PredictedMeasure, out var stated) ? stated
        : job.Plan.Reference.Uncertainties.TryGetValue(PredictedMeasure, out var usual) ? usual.Expanded
        : Fraction.Zero;

    /// <summary>The lift of the axle that is judged, or of the one that governs; null where the job tells no lift.</summary>
    public static Derived? Of(Job job)
    {
        if (!job.Plan.TellsLift)
            return null;
        return job.Plan.JudgedAxle is { } axle ? On(job, axle) : Governing(On(job, Axle.Front), On(job, Axle.Rear));
    }

    /// <summary>
    /// The lift of one axle as measured, as predicted within its uncertainty, or not known; an axle whose springs stay is not raised.
    /// </summary>
    public static Derived On(Job job, Axle axle)
    {
        var measured = Measured(job);
        var word = Word(axle);
        if ((axle == Axle.Front ? measured?.Front : measured?.Rear) is { } lift)
            return new Derived(
                Interval.Of(lift.SuspensionMm),
                $"{word} {Numbers.Show(lift.SuspensionMm)} mm, measured, mean of left and right"
            );
        if (job.Plan.Springs(axle) is not { } springs)
            return measured is null
                ? new Derived(Interval.Of(0), $"{word} springs stay")
                : new Derived(Interval.Anything, $"{word} not measured");
        var range = PredictedRange(job, springs, Budgets.Unladen(job));
        return new Derived(
            range,
            range is { Low: { } low, High: { } high }
                ? $"{word} {Numbers.Show(low, 0)} to {Numbers.Show(high, 0)} mm, predicted at the unladen mass from the springs"
                : $"{word} not known"
        );
    }

    /// <summary>A stated lift and the measured one must agree; a problem to report otherwise.</summary>
    public static string? Contradiction(Job job) =>
        job.Measures.TryGetValue(Measure, out var stated)
        && Measured(job) is not null
        && Of(job) is { Value.Exact: { } measured } lift
        && measured != stated.Base
            ? $"the suspension lift is stated as {stated}, but the corner readings give {lift.Derivation}"
            : null;

    /// <summary>
    /// A stated lift that the springs cannot give, within the prediction's uncertainty; null where they can, or nothing is predicted.
    /// </summary>
    public static DeniedLift? Denied(Job job) =>
        job.Plan.Heights.After is null
        && job.Measures.TryGetValue(Measure, out var stated)
        && Of(job) is { } lift
        && (stated.Base < lift.Value.Low || stated.Base > lift.Value.High)
            ? new DeniedLift(stated.Base, lift.Value, lift.Derivation)
            : null;

    /// <summary>
    /// The axles that are judged one by one, because one figure cannot stand for both: one raised and one lowered, or one that is known
    /// only in part. Empty where one figure does.
    /// </summary>
    public static IEnumerable<Axle> ToJudge(Job job)
    {
        if (!job.Plan.TellsLift || job.Plan.JudgedAxle is not null || job.Measures.ContainsKey(Measure))
            return [];
        var (front, rear) = (On(job, Axle.Front).Value, On(job, Axle.Rear).Value);
        var raised = front.Low is { IsNegative: false } && rear.Low is { IsNegative: false };
        var lowered = front.High is { IsPositive: false } && rear.High is { IsPositive: false };
        return front == rear || (raised || lowered) ? [] : Enum.GetValues<Axle>();
    }

    /// <summary>
    /// What to ask for in place of the lift of an axle: the first corner that lacks, the first fact of the prediction, or the measurement.
    /// </summary>
    public static string Ask(Job job, Axle? axle)
    {
        Axle[] axles = axle is { } one ? [one] : Enum.GetValues<Axle>();
        var corner = Measured(job) is { Refusal: null } measured
            ? measured.Missing.FirstOrDefault(missing =>
                axles.Any(each => missing.Fact.Contains($".{Word(each)}-", StringComparison.Ordinal))
            )
            : null;
        if (corner is not null)
            return corner.Fact;
        var unladen = Budgets.Unladen(job);
        return axles.Select(each => Predicted(job, each, unladen)?.Missing.FirstOrDefault()?.Fact).FirstOrDefault(fact => fact is not null)
            ?? "measured.after";
    }

    internal static string Word(Axle axle) => axle == Axle.Front ? "front" : "rear";

    /// <summary>The larger lift of the two; where both axles are lowered the lower one.</summary>
    private static Derived Governing(Derived front, Derived rear)
    {
        var lowered = front.Value.High is { IsPositive: false } && rear.Value.High is { IsPositive: false };
        var value = lowered
            ? new Interval(Least(front.Value.Low, rear.Value.Low), Smaller(front.Value.High!.Value, rear.Value.High!.Value))
            : new Interval(
                Most(front.Value.Low, rear.Value.Low),
                front.Value.High is { } a && rear.Value.High is { } b ? Larger(a, b) : null
            );
        var governing =
            value == rear.Value && front.Value != rear.Value ? "the rear axle governs"
            : value == front.Value ? "the front axle governs"
            : "";
        return new Derived(value, string.Join("; ", new[] { front.Derivation, rear.Derivation, governing }.Where(part => part.Length > 0)));

        static Fraction? Most(Fraction? one, Fraction? other) => one is { } a && other is { } b ? Larger(a, b) : one ?? other;

        static Fraction? Least(Fraction? one, Fraction? other) => one is { } a && other is { } b ? Smaller(a, b) : null;

        static Fraction Larger(Fraction one, Fraction other) => one > other ? one : other;

        static Fraction Smaller(Fraction one, Fraction other) => one < other ? one : other;
    }
}
