using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Physics.Towing;

/// <summary>A combination as planned, before anything is weighed.</summary>
internal sealed record TowingPlan
{
    /// <summary>The loaded vehicle without the ball load, kg; where null, the sum of its axles.</summary>
    public Fraction? UnhitchedKg { get; init; }

    /// <summary>The loaded vehicle without the ball load, axle by axle.</summary>
    public AxleMasses? UnhitchedAxles { get; init; }

    /// <summary>What is known of the loaded vehicle with the ball load, whole and axle by axle.</summary>
    public MassRange? HitchedPossible { get; init; }

    /// <summary>What is known of the loaded vehicle without the ball load, kg.</summary>
    public Interval UnhitchedPossible { get; init; } = Interval.Anything;

    /// <summary>The loaded trailer alone on its jockey wheel, kg.</summary>
    public Fraction? TrailerAloneKg { get; init; }

    /// <summary>What the trailer's axles carry when hitched, kg.</summary>
    public Fraction? TrailerAxlesKg { get; init; }

    /// <summary>Ball load, kg.</summary>
    public Fraction? BallKg { get; init; }

    /// <summary>Wheelbase of the vehicle, mm.</summary>
    public Fraction? WheelbaseMm { get; init; }

    /// <summary>Centre of the ball behind the rear axle, mm.</summary>
    public Fraction? BallBehindRearAxleMm { get; init; }

    /// <summary>Ball load, given or as trailer alone less trailer axles, kg.</summary>
    public Fraction? AnyBallKg => BallKg ?? TrailerAloneKg - TrailerAxlesKg;

    /// <summary>Why the figures contradict each other; null when they do not.</summary>
    public string? Problem =>
        TrailerAloneKg - TrailerAxlesKg is { } ball && BallKg is { } stated && ball != stated
            ? $"trailer alone less trailer axles is {Numbers.Show(ball)} kg, but the ball load is given as {Numbers.Show(stated)} kg"
        : UnhitchedKg is { } mass && UnhitchedAxles?.TotalKg is { } sum && sum != mass
            ? $"the vehicle's axles together are {Numbers.Show(sum)} kg, but its mass is given as {Numbers.Show(mass)} kg"
        : null;

    /// <summary>The combination once hitched: of trailer alone, trailer axles and ball load, two give the third.</summary>
    /// <exception cref="InvalidOperationException"><see cref="Problem"/> says why the figures contradict each other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is given but not above zero.</exception>
    public Combination Hitched()
    {
        if (Problem is { } problem)
            throw new InvalidOperationException(problem);
        var combination = HitchedExactly();
        return combination.TotalKg is null && UnhitchedPossible != Interval.Anything
            ? combination with
            {
                TotalPossible = UnhitchedPossible + TrailerPossible(),
            }
            : combination;
    }

    private Combination HitchedExactly()
    {
        var change =
            AnyBallKg is { } ball && BallBehindRearAxleMm is { } arm && WheelbaseMm is { } wheelbase
                ? LeverArm.OnAxles(ball, arm, wheelbase)
                : null;
        return new Combination(
            (UnhitchedKg ?? UnhitchedAxles?.TotalKg) + AnyBallKg,
            UnhitchedAxles is { } axles && change is not null ? axles + change : null,
            TrailerAxlesKg ?? TrailerAloneKg - BallKg,
            TrailerAloneKg ?? TrailerAxlesKg + BallKg,
            AnyBallKg
        )
        {
            VehiclePossible = HitchedPossible,
        };
    }

    /// <summary>The ball load rests on the vehicle: without it the vehicle and the trailer alone make up the combination.</summary>
    private Interval TrailerPossible() =>
        TrailerAloneKg is { } alone ? Interval.Of(alone) : new Interval(TrailerAxlesKg ?? Fraction.Zero, null);

    /// <summary>The facts that would complete the combination.</summary>
    public ImmutableArray<MissingFact> Missing()
    {
        var missing = ImmutableArray.CreateBuilder<MissingFact>();
        Name((UnhitchedKg ?? UnhitchedAxles?.TotalKg) is null, "vehicle.tare", "the mass of the hitched vehicle and of the combination");
        Name(UnhitchedAxles is null, "vehicle.tare-axles", "what each axle carries when hitched");
        Name(AnyBallKg is null, "trailer.ball-load", "the mass of the hitched vehicle, and what its axles and the trailer's carry");
        Name(
            (TrailerAloneKg ?? TrailerAxlesKg + BallKg) is null,
            "trailer.mass",
            "the trailer against its ratings, the combination against GCM"
        );
        Name(WheelbaseMm is null, "vehicle.wheelbase", "how the ball load is shared between the axles");
        Name(BallBehindRearAxleMm is null, "vehicle.ball-behind-rear-axle", "how the ball load is shared between the axles");
        return missing.ToImmutable();

        void Name(bool lacks, string fact, string adds)
        {
            if (lacks)
                missing.Add(new MissingFact(fact, adds));
        }
    }
}
