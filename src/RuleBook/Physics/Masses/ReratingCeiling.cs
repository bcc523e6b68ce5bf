using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>The highest GVM that axles and tyres can carry together, apart from what is asked for.</summary>
/// <param name="Kg">
/// On each axle the lesser of its rating and what its tyres carry, both axles together, kg; null when neither is known.
/// </param>
/// <param name="Binding">What holds it there, an axle each.</param>
/// <param name="AskedKg">The GVM asked for, kg; null where none is.</param>
/// <param name="Missing">The ratings and tyres that are not known and could hold it lower.</param>
public sealed record ReratingCeiling(Fraction? Kg, ImmutableArray<string> Binding, Fraction? AskedKg, ImmutableArray<MissingFact> Missing)
{
    /// <summary>Common practice, no source: what a re-rating leaves as it is.</summary>
    public const string Condition =
        "the braking rule for the vehicle's category must still be met at the new mass; the GCM does not rise with the GVM";

    /// <summary>
    /// Whether axles and tyres carry what is asked for; null while that is not known. Anything lacking can only hold it lower.
    /// </summary>
    public bool? Carries =>
        AskedKg is not { } asked || Kg is not { } most ? null
        : asked > most ? false
        : Missing.IsEmpty ? true
        : null;

    /// <summary>
    /// A GVM is not above the sum of the axle ratings, and no axle carries more than its tyres (common practice; the axle half in the New
    /// South Wales notice of April 2020, as quoted).
    /// </summary>
    /// <param name="ratings">The axle ratings that will apply.</param>
    /// <param name="frontTyresKg">What the front tyres carry together, kg.</param>
    /// <param name="rearTyresKg">What the rear tyres carry together, kg.</param>
    /// <param name="tyresFact">The path in the job from which that follows.</param>
    /// <param name="askedKg">The GVM asked for, kg.</param>
    internal static ReratingCeiling Of(Ratings ratings, Fraction? frontTyresKg, Fraction? rearTyresKg, string tyresFact, Fraction? askedKg)
    {
        var front = Least(ratings.FrontAxleKg, frontTyresKg, "front");
        var rear = Least(ratings.RearAxleKg, rearTyresKg, "rear");
        return new ReratingCeiling(
            front.Kg + rear.Kg,
            front.Kg is null || rear.Kg is null ? [] : [front.Binding, rear.Binding],
            askedKg,
            [
                .. Lacking(ratings.FrontAxleKg, "vehicle.ratings.front-axle", "rating of the front axle"),
                .. Lacking(ratings.RearAxleKg, "vehicle.ratings.rear-axle", "rating of the rear axle"),
                .. Lacking(frontTyresKg, tyresFact, "load index of the front tyres"),
                .. Lacking(rearTyresKg, tyresFact, "load index of the rear tyres"),
            ]
        );
    }

    private static (Fraction? Kg, string Binding) Least(Fraction? rating, Fraction? tyres, string axle) =>
        tyres is { } carried && (rating is not { } rated || carried < rated) ? (tyres, $"{axle} tyres") : (rating, $"{axle} axle");

    private static IEnumerable<MissingFact> Lacking(Fraction? figure, string fact, string name) =>
        figure is null ? [new MissingFact(fact, $"whether the {name} holds the GVM lower")] : [];
}
