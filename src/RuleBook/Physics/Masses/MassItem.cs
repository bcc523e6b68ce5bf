using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>Something with a mass that stands on or hangs from the vehicle.</summary>
/// <param name="Path">Its path in the job, such as <c>modification.accessories[0]</c>.</param>
/// <param name="Name">What a reader calls it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="MassKg">Its mass, kg; null when not known, negative when something was taken off.</param>
/// <param name="BehindFrontAxleMm">Its centre behind the front axle, mm; negative ahead of it; null when not known.</param>
internal sealed record MassItem(string Path, string Name, ItemKind Kind, Fraction? MassKg, Fraction? BehindFrontAxleMm)
{
    /// <summary>The path of the position, where it is not simply a key of the item.</summary>
    public string PositionFact { get; init; } = Path + ".behind-front-axle";

    /// <summary>The path of the mass, where it is not simply a key of the item.</summary>
    public string MassFact { get; init; } = Path + ".mass";

    /// <summary>What is known of its mass, kg: what is not known is at least nothing.</summary>
    public Interval Possible => MassKg is { } mass ? Interval.Of(mass) : MassRange.FromZero;

    /// <summary>The ball load of a coupled trailer, standing one wheelbase and the overhang of the ball behind the front axle.</summary>
    /// <param name="ballKg">Ball load, kg.</param>
    /// <param name="wheelbaseMm">Wheelbase, mm.</param>
    /// <param name="ballBehindRearAxleMm">Centre of the ball behind the rear axle, mm.</param>
    public static MassItem BallLoad(Fraction? ballKg, Fraction? wheelbaseMm, Fraction? ballBehindRearAxleMm) =>
        new("trailer", "ball load", ItemKind.BallLoad, ballKg, wheelbaseMm + ballBehindRearAxleMm)
        {
            MassFact = "trailer.ball-load",
            PositionFact = ballBehindRearAxleMm is null ? "vehicle.ball-behind-rear-axle" : "vehicle.wheelbase",
        };
}
