using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Figures;

/// <summary>How far the suspension raises the vehicle: as measured, and as to expect before the work.</summary>
/// <param name="Measured">From the corner readings; null where nothing was measured after the work.</param>
/// <param name="Suspension">What is known of the lift of the axle that decides, mm; null where the job tells none.</param>
/// <param name="Derivation">How it came about.</param>
/// <param name="UncertaintyMm">Expanded uncertainty that counts at the limits, mm; null where nothing was measured.</param>
/// <param name="Missing">What is not known, and what it would add.</param>
public sealed record HeightAnswer(
    MeasuredLift? Measured,
    Interval? Suspension,
    string? Derivation,
    Fraction? UncertaintyMm,
    ImmutableArray<MissingFact> Missing
)
{
    /// <summary>The axle that decides where the axles were judged one by one; null where one figure stands for both.</summary>
    public Axle? DecidingAxle { get; init; }

    /// <summary>From the springs, an axle each; empty where no springs are given.</summary>
    internal ImmutableArray<PredictedAxle> Predicted { get; init; } = [];

    /// <summary>A stated lift that the springs cannot give; null where they can.</summary>
    internal DeniedLift? Denied { get; init; }

    /// <summary>Axles whose left and right stand further apart than they should.</summary>
    internal ImmutableArray<UnevenAxle> Uneven { get; init; } = [];
}

/// <summary>A lift that is stated, and that the springs to be fitted cannot give.</summary>
/// <param name="StatedMm">As stated, mm.</param>
/// <param name="Predicted">Between which two heights the prediction lies, mm.</param>
/// <param name="Derivation">How it came about, axle by axle.</param>
internal sealed record DeniedLift(Fraction StatedMm, Interval Predicted, string Derivation);

/// <summary>An axle whose left and right corners stand too far apart after the work for their mean to mean anything.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="LeftMm">Left, wheel centre to guard edge, mm.</param>
/// <param name="RightMm">Right, mm.</param>
/// <param name="WarningMm">The most that is usual, mm.</param>
internal sealed record UnevenAxle(Axle Axle, Fraction LeftMm, Fraction RightMm, Fraction WarningMm)
{
    /// <summary>How far apart, mm.</summary>
    public Fraction ApartMm => Fraction.Abs(LeftMm - RightMm);
}

/// <summary>The lift to expect on one axle.</summary>
/// <param name="Lift">The prediction at the unladen mass.</param>
/// <param name="Range">Between which two heights it lies, the uncertainty of the prediction counted, mm.</param>
/// <param name="UncertaintyMm">That uncertainty, expanded, mm.</param>
/// <param name="AxleLoadKg">What the axle carries at that mass, kg.</param>
/// <param name="Table">Lift against constant mass added to the axle.</param>
/// <param name="Needs">What still has to come onto the axle to come within each pathway that reaches further than an easier one.</param>
internal sealed record PredictedAxle(
    PredictedLift Lift,
    Interval Range,
    Fraction UncertaintyMm,
    Fraction? AxleLoadKg,
    ImmutableArray<LiftStep> Table,
    ImmutableArray<MassNeeded> Needs
);

/// <summary>Constant mass still needed to come down to a pathway's limit, and where it would have to sit.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="LimitMm">The most suspension lift within it, the rest of the job unchanged, mm.</param>
/// <param name="OnAxleKg">Mass on this axle, kg; zero when it is kept already.</param>
/// <param name="MidwayKg">The same standing midway between the axles, kg.</param>
/// <param name="AtBallKg">The same at the ball, kg; null where mass there does not load this axle, or the place is not known.</param>
internal sealed record MassNeeded(Pathway Pathway, Fraction LimitMm, Fraction OnAxleKg, Fraction? MidwayKg, Fraction? AtBallKg);
