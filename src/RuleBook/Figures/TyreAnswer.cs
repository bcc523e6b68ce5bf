using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>The tyres on the road; clearance and stability also where nothing is stated of tyres.</summary>
/// <param name="Fitted">The tyre fitted; null where the tyres stay.</param>
/// <param name="Growth">Against the placard; null where the tyres stay.</param>
/// <param name="Capacity">What they carry, by axle.</param>
/// <param name="Loads">The axle ratings that will apply against what the tyres carry.</param>
/// <param name="Needs">The least load index for each axle rating that will apply.</param>
/// <param name="Missing">What is not known, and what it would add.</param>
public sealed record TyreAnswer(
    TyreSize? Fitted,
    TyreGrowth? Growth,
    TyreCapacity Capacity,
    ImmutableArray<LoadCheck> Loads,
    ImmutableArray<LoadIndexNeed> Needs,
    ImmutableArray<MissingFact> Missing
)
{
    /// <summary>
    /// What the tyre fitted could not be held against the placard's by, since it is not stated of each: <c>load index</c>,
    /// <c>speed symbol</c>.
    /// </summary>
    public ImmutableArray<string> NotCompared { get; init; } = [];

    /// <summary>The speed symbol against the speed for which a tyre in service has to be made.</summary>
    internal ImmutableArray<TyreSpeedCheck> Speeds { get; init; } = [];

    /// <summary>The speedometer after the change, under each rule that may hold.</summary>
    internal SpeedometerAnswer? Speedometer { get; init; }

    /// <summary>Clearance and stability.</summary>
    internal RoadAnswer Road { get; init; } = new(null, null, null, null, null, null);

    /// <summary>
    /// Whether a clearance was measured midway between the axles, and the wheelbase that tells the least one is not known.
    /// </summary>
    internal bool LacksWheelbase => Missing.Any(missing => missing.Fact == "vehicle.wheelbase");
}

/// <summary>The least load index that carries an axle rating.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="RatingKg">The rating that will apply, kg.</param>
/// <param name="Tyres">Tyres on the axle.</param>
/// <param name="Index">The index; null where none in the table is enough.</param>
public sealed record LoadIndexNeed(Axle Axle, Fraction RatingKg, int Tyres, LoadIndex? Index);

/// <summary>A speed symbol against a least speed.</summary>
/// <param name="Condition">The condition of the vocabulary.</param>
/// <param name="Symbol">The symbol.</param>
/// <param name="LeastKmH">The least speed, km/h, where the vehicle itself is not slower.</param>
/// <param name="Enough">Whether it is enough; null where only the tyre's maker can say.</param>
/// <param name="Rule">Where the least speed comes from.</param>
internal sealed record TyreSpeedCheck(string Condition, SpeedSymbol Symbol, Fraction LeastKmH, bool? Enough, TyreSpeedRule Rule);

/// <summary>What the change does to the speedometer.</summary>
/// <param name="Indicated">Speed shown, km/h.</param>
/// <param name="TrueBefore">True speed then before the change, km/h.</param>
/// <param name="Assumed">True when nobody checked the speedometer and it is taken to have been exact.</param>
/// <param name="TrueAfter">True speed after the change with its reckoning.</param>
/// <param name="Findings">One a rule that may hold; empty where none asks for accuracy.</param>
/// <param name="Periods">
/// The periods of manufacture that were looked up: two where the day may lie in either; none where it is not known.
/// </param>
internal sealed record SpeedometerAnswer(
    Fraction Indicated,
    Fraction TrueBefore,
    bool Assumed,
    DerivedFigure TrueAfter,
    ImmutableArray<SpeedometerCheck> Findings,
    ImmutableArray<SpeedometerPeriod> Periods
);

/// <summary>A speedometer under one rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Finding">How it stands; null where the true speed is not known.</param>
/// <param name="LargestGrowthPercent">The largest growth in diameter over the placard that still complies, %.</param>
/// <param name="GrowthLeftPercent">
/// What of it the tyre fitted leaves, % of the placard's diameter; null where its growth is not known.
/// </param>
internal sealed record SpeedometerCheck(
    NamedSpeedometerRule Rule,
    SpeedometerFinding? Finding,
    Fraction LargestGrowthPercent,
    Fraction? GrowthLeftPercent
);

/// <summary>Clearance and stability.</summary>
/// <param name="LeastMidwayMm">Least clearance midway between the axles, mm; null where the wheelbase is not known.</param>
/// <param name="Midway">As measured against it.</param>
/// <param name="Running">Least clearance anywhere, as measured.</param>
/// <param name="StabilityBefore">Static stability factor before; an indicator only.</param>
/// <param name="StabilityAfter">The lowest it can be after: the centre of mass taken to rise with the whole lift.</param>
/// <param name="Clearance">The rule of clearance; null where none is recorded.</param>
internal sealed record RoadAnswer(
    Fraction? LeastMidwayMm,
    LengthCheck? Midway,
    LengthCheck? Running,
    Fraction? StabilityBefore,
    Fraction? StabilityAfter,
    ClearanceRule? Clearance
)
{
    /// <summary>Whether a clearance was measured, or the stability factor can be told.</summary>
    internal bool TellsSomething => Midway is not null || Running is not null || StabilityBefore is not null;
}
