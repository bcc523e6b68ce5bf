using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>Everything that the vehicle itself is held against.</summary>
/// <param name="Original">The ratings that the vehicle left its maker with.</param>
/// <param name="Rerated">The ratings that a modification states anew; null where there is none.</param>
/// <param name="FrontTyresKg">What the tyres of the front axle carry together, kg.</param>
/// <param name="RearTyresKg">What the tyres of the rear axle carry together, kg.</param>
internal sealed record VehicleLimits(Ratings Original, Ratings? Rerated = null, Fraction? FrontTyresKg = null, Fraction? RearTyresKg = null)
{
    /// <summary>The path in the job from which the tyres' capacity follows.</summary>
    public string TyresFact { get; init; } = "vehicle.tyres";

    /// <summary>No figure known.</summary>
    public static VehicleLimits None { get; } = new(Ratings.None);
}
