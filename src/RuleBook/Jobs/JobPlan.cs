using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Jobs;

/// <summary>What a job says of masses, axles, springs, heights and the trailer; null where it says nothing.</summary>
internal sealed record JobPlan
{
    /// <summary>Nothing said.</summary>
    public static JobPlan None { get; } = new();

    /// <summary>The figures of no single jurisdiction against which the job was read.</summary>
    public Reference Reference { get; init; } = Reference.None;

    /// <summary>Where the mass budget starts: a weighbridge reading in a stated state, or tare.</summary>
    public StartingMass Start { get; init; } = StartingMass.Tare(null, null, null, Fraction.Zero);

    /// <summary>Tare mass, kg.</summary>
    public Fraction? TareKg { get; init; }

    /// <summary>Distance between the axles, mm.</summary>
    public Fraction? WheelbaseMm { get; init; }

    /// <summary>From the rear axle back to the ball, mm.</summary>
    public Fraction? BallBehindRearAxleMm { get; init; }

    /// <summary>Seats with the driver's.</summary>
    public int? Seats { get; init; }

    /// <summary>Ratings that the maker states.</summary>
    public Ratings Ratings { get; init; } = Ratings.None;

    /// <summary>Ratings that the modification asks for; null where it asks for none.</summary>
    public Ratings? Rerated { get; init; }

    /// <summary>Every tank, those that the modification adds too.</summary>
    public ImmutableArray<FuelTank> Tanks { get; init; } = [];

    /// <summary>Accessories, occupants, luggage and goods, without the ball load.</summary>
    public ImmutableArray<MassItem> Items { get; init; } = [];

    /// <summary>A maker's graduated table of the GVM against ball load.</summary>
    public ImmutableArray<DownRatingRow> DownRating { get; init; } = [];

    /// <summary>The rear axle has two tyres on each side.</summary>
    public bool DualRearWheels { get; init; }

    /// <summary>Widest track, mm.</summary>
    public Fraction? TrackMm { get; init; }

    /// <summary>The offset of the wheels before and after others are fitted; null where the job states neither.</summary>
    public WheelOffset? WheelOffset { get; init; }

    /// <summary>Measured height of the centre of mass, mm.</summary>
    public Fraction? CentreOfMassMm { get; init; }

    /// <summary>The speedometer before the change, where it was checked.</summary>
    public SpeedometerReading? Speedometer { get; init; }

    /// <summary>Springs to be fitted in front.</summary>
    public AxleSprings? FrontSprings { get; init; }

    /// <summary>Springs to be fitted at the rear.</summary>
    public AxleSprings? RearSprings { get; init; }

    /// <summary>Maker's trim height, and the heights before and after the work.</summary>
    public LiftMeasurement Heights { get; init; } = new();

    /// <summary>Weighbridge readings; null where nothing was weighed.</summary>
    public WeighbridgeReadings? Weighed { get; init; }

    /// <summary>Expanded uncertainty of one weighbridge reading, kg.</summary>
    public Fraction ReadingKg { get; init; }

    /// <summary>How far two ball loads may be apart, kg: six readings of the weighbridge's uncertainty.</summary>
    public Fraction WeighedToleranceKg => 6 * ReadingKg;

    /// <summary>Guard band of one weighbridge reading, kg.</summary>
    public Fraction ReadingGuardKg => ReadingKg * Reference.GuardFactor;

    /// <summary>Expanded uncertainties that the job states, by measure, in base units.</summary>
    public ImmutableDictionary<string, Fraction> Uncertainties { get; init; } = ImmutableDictionary<string, Fraction>.Empty;

    /// <summary>Clearance midway between the axles as measured, mm.</summary>
    public Fraction? ClearanceMidwayMm { get; init; }

    /// <summary>The trailer; null where there is none.</summary>
    public TrailerPlan? Trailer { get; init; }

    /// <summary>The axle whose lift is judged; null for the one that governs.</summary>
    public Axle? JudgedAxle { get; init; }

    /// <summary>Whether a lift was measured or follows from springs.</summary>
    public bool TellsLift => Heights.After is not null || FrontSprings is not null || RearSprings is not null;

    /// <summary>The springs of one axle.</summary>
    public AxleSprings? Springs(Axle axle) => axle == Axle.Front ? FrontSprings : RearSprings;
}

/// <summary>What a speedometer shows at a true speed.</summary>
/// <param name="Indicated">Shown, km/h.</param>
/// <param name="True">True, km/h.</param>
internal sealed record SpeedometerReading(Fraction Indicated, Fraction True);

/// <summary>A trailer as planned.</summary>
/// <param name="MassKg">Loaded, alone on its jockey wheel, kg.</param>
/// <param name="AxlesKg">On its axles when hitched, kg.</param>
/// <param name="BallKg">On the ball, kg.</param>
/// <param name="Limits">What the trailer, towbar and coupling are rated for.</param>
internal sealed record TrailerPlan(Fraction? MassKg, Fraction? AxlesKg, Fraction? BallKg, TrailerLimits Limits)
{
    /// <summary>Standing alone, kg: as stated, or its axles and the ball together.</summary>
    public Fraction? AloneKg => MassKg ?? AxlesKg + BallKg;
}
