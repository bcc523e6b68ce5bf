using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>A combination held against every rating that is known.</summary>
/// <param name="Checks">One record a comparison.</param>
/// <param name="Missing">The ratings and masses that would add a comparison.</param>
public sealed record CombinationCheck(ImmutableArray<LoadCheck> Checks, ImmutableArray<MissingFact> Missing)
{
    /// <summary>True when every comparison that could be made holds.</summary>
    public bool Holds => Checks.All(check => check.Holds);

    /// <summary>Vehicle, axles, tyres, combination, trailer and ball, each against its own limit.</summary>
    /// <param name="combination">The masses, from a plan or from a weighbridge.</param>
    /// <param name="limits">The limits.</param>
    public static CombinationCheck Of(Combination combination, CombinationLimits limits)
    {
        var (vehicle, trailer) = (limits.Vehicle, limits.Trailer);
        var checks = new LoadChecks();
        checks.CompareVehicle(combination.VehicleKg, combination.VehicleAxles, vehicle);
        checks.CompareRated("vehicle and trailer axles against GCM", combination.TotalKg, vehicle, ratings => ratings.GcmKg, "gcm");
        checks.Compare("atm", "trailer alone against its ATM", combination.TrailerAloneKg, trailer.AtmKg, "trailer.ratings.atm");
        checks.Compare("gtm", "trailer axles against GTM", combination.TrailerAxlesKg, trailer.GtmKg, "trailer.ratings.gtm");
        CompareTow(checks, combination.TrailerAloneKg, limits);
        checks.Compare("towbar", "trailer alone against the towbar", combination.TrailerAloneKg, trailer.TowbarKg, "vehicle.towbar.mass");
        checks.Compare("coupling", "trailer alone against the coupling", combination.TrailerAloneKg, trailer.CouplingKg, "trailer.coupling.mass");
        checks.CompareRated("ball load against the vehicle maker's limit", combination.BallKg, vehicle, ratings => ratings.BallKg, "ball");
        checks.Compare("towbar-ball", "ball load against the towbar", combination.BallKg, trailer.TowbarBallKg, "vehicle.towbar.ball");
        checks.Compare("coupling-ball", "ball load against the coupling", combination.BallKg, trailer.CouplingBallKg, "trailer.coupling.ball");
        return new CombinationCheck(checks.Checks, checks.Missing);
    }

    private static void CompareTow(LoadChecks checks, Fraction? trailerAloneKg, CombinationLimits limits)
    {
        if (limits.Trailer.Braked is not { } braked)
        {
            checks.Lacks("trailer.braked", "which tow rating counts");
            return;
        }

        var key = braked ? "braked-tow" : "unbraked-tow";
        Func<Ratings, Fraction?> rating = braked ? ratings => ratings.BrakedTowKg : ratings => ratings.UnbrakedTowKg;
        var byMaker = rating(limits.Vehicle.Original) is not null || (limits.Vehicle.Rerated is { } rerated && rating(rerated) is not null);
        var byMass = byMaker ? null : TowRating.Of(null, "", limits.UnloadedKg, limits.DefaultRatio);
        if (byMass is null) checks.CompareRated("trailer alone against the tow rating", trailerAloneKg, limits.Vehicle, rating, key);
        else checks.Compare(key, "trailer alone against the default by the vehicle's own mass", trailerAloneKg, byMass.Kg, byMass.Fact);
    }
}
