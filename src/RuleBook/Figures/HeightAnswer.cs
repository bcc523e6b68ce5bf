using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;

namespace RuleBook.Figures;

/// <summary>How far the suspension raises the vehicle: as measured, and as to expect before the work.</summary>
/// <param name="Measured">From the corner readings; null where nothing was measured after the work.</param>
/// <param name="Predicted">From the springs, an axle each; empty where no springs are given.</param>
/// <param name="SuspensionMm">The lift of the governing axle, mm; null where it cannot be told.</param>
/// <param name="Derivation">How it came about.</param>
/// <param name="UncertaintyMm">Expanded uncertainty that counts at the limits, mm; null where nothing was measured.</param>
/// <param name="Note">What a reader should know; null where there is nothing.</param>
/// <param name="Missing">What is not known, and what it would add.</param>
public sealed record HeightAnswer(
    MeasuredLift? Measured,
    ImmutableArray<PredictedAxle> Predicted,
    Fraction? SuspensionMm,
    string? Derivation,
    Fraction? UncertaintyMm,
    string? Note,
    ImmutableArray<MissingFact> Missing);

/// <summary>The lift to expect on one axle.</summary>
/// <param name="Lift">The prediction at the unladen mass.</param>
/// <param name="AxleLoadKg">What the axle carries at that mass, kg.</param>
/// <param name="Table">Lift against constant mass added to the axle.</param>
/// <param name="Needs">What still has to come onto the axle to come within each pathway that reaches further than an easier one.</param>
public sealed record PredictedAxle(PredictedLift Lift, Fraction? AxleLoadKg, ImmutableArray<LiftStep> Table, ImmutableArray<MassNeeded> Needs);

/// <summary>Constant mass still needed to come down to a pathway's limit, and where it would have to sit.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="LimitMm">The most suspension lift within it, the rest of the job unchanged, mm.</param>
/// <param name="OnAxleKg">Mass on this axle, kg; zero when it is kept already.</param>
/// <param name="MidwayKg">The same standing midway between the axles, kg.</param>
/// <param name="AtBallKg">The same at the ball, kg; null where mass there does not load this axle, or the place is not known.</param>
public sealed record MassNeeded(Pathway Pathway, Fraction LimitMm, Fraction OnAxleKg, Fraction? MidwayKg, Fraction? AtBallKg);
