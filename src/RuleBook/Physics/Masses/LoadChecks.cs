using System.Collections.Immutable;
using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>Gathers comparisons, and the facts that kept others from being made.</summary>
internal sealed class LoadChecks
{
    private readonly ImmutableArray<LoadCheck>.Builder checks = ImmutableArray.CreateBuilder<LoadCheck>();
    private readonly ImmutableArray<MissingFact>.Builder missing = ImmutableArray.CreateBuilder<MissingFact>();

    internal ImmutableArray<LoadCheck> Checks => checks.ToImmutable();

    internal ImmutableArray<MissingFact> Missing => [.. missing.Distinct()];

    internal void Lacks(string fact, string adds) => missing.Add(new MissingFact(fact, adds));

    internal void Compare(string subject, string what, Fraction? valueKg, Fraction? limitKg, string limitFact)
    {
        if (limitKg is not { } limit) Lacks(limitFact, $"what is left: {what}");
        else if (valueKg is { } value) checks.Add(new LoadCheck(subject, what, value, limit, limitFact));
    }

    /// <summary>Against the maker's rating and, where a modification states one, against the new rating too.</summary>
    internal void CompareRated(string what, Fraction? valueKg, VehicleLimits limits, Func<Ratings, Fraction?> rating, string key)
    {
        var rerated = limits.Rerated is { } ratings ? rating(ratings) : null;
        if (rating(limits.Original) is not null || rerated is null)
            Compare(key, what, valueKg, rating(limits.Original), $"vehicle.ratings.{key}");
        if (rerated is not null) Compare(key, $"{what}, re-rated", valueKg, rerated, $"modification.ratings.{key}");
    }

    internal void CompareVehicle(Fraction? totalKg, AxleMasses? axles, VehicleLimits limits)
    {
        CompareRated("vehicle against its GVM", totalKg, limits, ratings => ratings.GvmKg, "gvm");
        CompareRated("front axle against its rating", axles?.FrontKg, limits, ratings => ratings.FrontAxleKg, "front-axle");
        CompareRated("rear axle against its rating", axles?.RearKg, limits, ratings => ratings.RearAxleKg, "rear-axle");
        Compare("front-axle-tyres", "front axle against its tyres", axles?.FrontKg, limits.FrontTyresKg, limits.TyresFact);
        Compare("rear-axle-tyres", "rear axle against its tyres", axles?.RearKg, limits.RearTyresKg, limits.TyresFact);
    }
}
