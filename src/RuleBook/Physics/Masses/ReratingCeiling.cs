using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>The highest GVM that a re-rating can reach, and what holds it there.</summary>
/// <param name="Kg">The least of the known ceilings, kg; null when none is known.</param>
/// <param name="Binding">The ceilings that are as low as that.</param>
/// <param name="Missing">The ceilings that are not known and could be lower still.</param>
public sealed record ReratingCeiling(Fraction? Kg, ImmutableArray<string> Binding, ImmutableArray<MissingFact> Missing)
{
    /// <summary>Common practice, no source: what a re-rating leaves as it is.</summary>
    public const string Condition =
        "the braking rule for the vehicle's category must still be met at the new mass; the GCM does not rise with the GVM";

    /// <summary>GVM not above the sum of the axle ratings, the certificate's figure and the most for the vehicle's class.</summary>
    /// <param name="frontAxleKg">Rating of the front axle, kg.</param>
    /// <param name="rearAxleKg">Rating of the rear axle, kg.</param>
    /// <param name="certificateKg">GVM that the certificate states, kg.</param>
    /// <param name="classKg">Most for the class that the vehicle is to stay in, kg, by the jurisdiction's rule; null where it need not.</param>
    public static ReratingCeiling Of(Fraction? frontAxleKg, Fraction? rearAxleKg, Fraction? certificateKg, Fraction? classKg)
    {
        (string Name, Fraction? Kg, string? Fact)[] ceilings =
        [
            ("sum of the axle ratings", frontAxleKg + rearAxleKg, $"vehicle.ratings.{(frontAxleKg is null ? "front" : "rear")}-axle"),
            ("certificate", certificateKg, "modification.ratings.gvm"),
            ("class of the vehicle", classKg, null),
        ];
        var least = ceilings.Min(ceiling => ceiling.Kg);
        return new ReratingCeiling(
            least,
            [.. ceilings.Where(ceiling => ceiling.Kg is not null && ceiling.Kg == least).Select(ceiling => ceiling.Name)],
            [
                .. ceilings.Where(ceiling => ceiling is { Kg: null, Fact: not null })
                    .Select(ceiling => new MissingFact(ceiling.Fact!, $"whether the {ceiling.Name} holds the GVM lower")),
            ]);
    }
}
