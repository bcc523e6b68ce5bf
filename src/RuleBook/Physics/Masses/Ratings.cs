using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>The masses that a vehicle is rated for; null where no figure is known.</summary>
internal sealed record Ratings
{
    /// <summary>No figure known.</summary>
    public static Ratings None { get; } = new();

    /// <summary>Gross vehicle mass (GVM): most that the vehicle may have with its load, ball load included, kg.</summary>
    public Fraction? GvmKg { get; init; }

    /// <summary>Gross combination mass (GCM): most that the hitched vehicle and the trailer's axles may have together, kg.</summary>
    public Fraction? GcmKg { get; init; }

    /// <summary>Most on the front axle, kg.</summary>
    public Fraction? FrontAxleKg { get; init; }

    /// <summary>Most on the rear axle, kg.</summary>
    public Fraction? RearAxleKg { get; init; }

    /// <summary>Most that a braked trailer weighed alone may have, by the vehicle's maker, kg.</summary>
    public Fraction? BrakedTowKg { get; init; }

    /// <summary>Most that an unbraked trailer weighed alone may have, by the vehicle's maker, kg.</summary>
    public Fraction? UnbrakedTowKg { get; init; }

    /// <summary>Most on the tow ball, by the vehicle's maker, kg.</summary>
    public Fraction? BallKg { get; init; }

    /// <summary>The ratings after a re-rating: the figures given anew, the others as they were.</summary>
    /// <param name="rerated">What the modification states.</param>
    public Ratings Overlaid(Ratings? rerated) =>
        rerated is null
            ? this
            : new()
            {
                GvmKg = rerated.GvmKg ?? GvmKg,
                GcmKg = rerated.GcmKg ?? GcmKg,
                FrontAxleKg = rerated.FrontAxleKg ?? FrontAxleKg,
                RearAxleKg = rerated.RearAxleKg ?? RearAxleKg,
                BrakedTowKg = rerated.BrakedTowKg ?? BrakedTowKg,
                UnbrakedTowKg = rerated.UnbrakedTowKg ?? UnbrakedTowKg,
                BallKg = rerated.BallKg ?? BallKg,
            };
}
