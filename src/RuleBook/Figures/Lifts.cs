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

    /// <summary>As measured; null where nothing was measured after the work.</summary>
    public static MeasuredLift? Measured(Job job) => job.Plan.Heights.After is null
        ? null
        : MeasuredLift.Of(job.Plan.Heights with { BodyBlockMm = job.Measures.GetValueOrDefault(KnownWords.BodyLift)?.Base ?? Fraction.Zero });

    /// <summary>As predicted at the unladen mass; null for an axle whose springs stay.</summary>
    public static PredictedLift? Predicted(Job job, Axle axle, MassBudget unladen)
    {
        if (job.Plan.Springs(axle) is not { } springs) return null;
        var fact = unladen.Missing.FirstOrDefault(missing => missing.Fact.StartsWith("vehicle.tare", StringComparison.Ordinal))?.Fact
            ?? unladen.Missing.FirstOrDefault(
                missing => !missing.Fact.Contains("ratings", StringComparison.Ordinal) && missing.Fact != "vehicle.tyres")?.Fact
            ?? "vehicle.tare-axles";
        return PredictedLift.Of(springs, unladen.Axles?.On(axle), fact);
    }

    /// <summary>The lift of the governing axle, the larger one; null where it cannot be told.</summary>
    public static Derived? Of(Job job)
    {
        if (Measured(job) is { } measured)
            return Governing(measured.Front?.SuspensionMm, measured.Rear?.SuspensionMm, "measured, mean of left and right");
        if (job.Plan.FrontSprings is null && job.Plan.RearSprings is null) return null;
        var unladen = Budgets.Unladen(job);
        return Governing(On(Axle.Front), On(Axle.Rear), "predicted at the unladen mass from the springs");

        Fraction? On(Axle axle) => job.Plan.Springs(axle) is null ? Fraction.Zero : Predicted(job, axle, unladen)!.LiftMm;
    }

    /// <summary>A stated lift and the measured one must agree; a problem to report otherwise.</summary>
    public static string? Contradiction(Job job) =>
        job.Measures.TryGetValue(Measure, out var stated) && Measured(job) is not null && Of(job) is { } measured && measured.Value.Exact != stated.Base
            ? $"the suspension lift is stated as {stated}, but the corner readings give {measured.Derivation}"
            : null;

    private static Derived? Governing(Fraction? front, Fraction? rear, string how)
    {
        if (front is not { } ahead || rear is not { } behind) return null;
        var (governing, axle) = behind > ahead ? (behind, "rear") : (ahead, "front");
        return new Derived(
            Interval.Of(governing),
            $"front {Numbers.Show(ahead)} mm, rear {Numbers.Show(behind)} mm, the {axle} axle governs: {Numbers.Show(governing)} mm ({how})");
    }
}
