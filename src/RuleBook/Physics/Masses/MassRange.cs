using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>What is known of a mass and of its share on each axle, kg; an end that is not known is open.</summary>
/// <param name="Total">The whole.</param>
/// <param name="Front">On the front axle; below zero where the front is lightened.</param>
/// <param name="Rear">On the rear axle.</param>
public sealed record MassRange(Interval Total, Interval Front, Interval Rear)
{
    /// <summary>Anything from nothing up.</summary>
    internal static Interval FromZero { get; } = new(Fraction.Zero, null);

    /// <summary>What is known of one axle, kg.</summary>
    public Interval On(Axle axle) => axle == Axle.Front ? Front : Rear;

    /// <summary>A mass where it stands; a place or a wheelbase that is not known leaves the shares open.</summary>
    /// <param name="mass">The mass, kg.</param>
    /// <param name="behindFrontAxleMm">Its place behind the front axle, mm.</param>
    /// <param name="wheelbaseMm">Distance between the axles, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    internal static MassRange At(Interval mass, Fraction? behindFrontAxleMm, Fraction? wheelbaseMm)
    {
        if (mass.Exact is { IsZero: true })
            return new MassRange(mass, mass, mass);
        return (behindFrontAxleMm, wheelbaseMm) is ({ } place, { } length)
            ? new MassRange(
                mass,
                Share(mass, Moments.ShareOn(Axle.Front, place, length)),
                Share(mass, Moments.ShareOn(Axle.Rear, place, length))
            )
            : new MassRange(mass, Interval.Anything, Interval.Anything);
    }

    /// <summary>Part by part sum.</summary>
    public static MassRange operator +(MassRange left, MassRange right) => Add(left, right);

    /// <summary>Part by part sum.</summary>
    public static MassRange Add(MassRange left, MassRange right) =>
        new(left.Total + right.Total, left.Front + right.Front, left.Rear + right.Rear);

    private static Interval Share(Interval mass, Fraction share) =>
        share.IsZero ? Interval.Of(share)
        : share.IsPositive ? mass * share
        : new Interval(mass.High * share, mass.Low * share);
}
