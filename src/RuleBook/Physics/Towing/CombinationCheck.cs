using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;

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
    /// <param name="readingGuardKg">Guard band of one weighbridge reading, kg; a sum of readings has as many. Zero for a plan.</param>
    internal static CombinationCheck Of(Combination combination, CombinationLimits limits, Fraction readingGuardKg = default)
    {
        var (vehicle, trailer, alone) = (limits.Vehicle, limits.Trailer, Of(combination.TrailerAloneKg));
        var ball = Of(combination.BallKg is { IsNegative: false } down ? down : null);
        var checks = new LoadChecks();
        checks.CompareVehicle(combination.Vehicle, vehicle, readingGuardKg);
        checks.CompareRated(
            "vehicle and trailer axles against GCM",
            combination.Total,
            vehicle,
            ratings => ratings.GcmKg,
            "gcm",
            3 * readingGuardKg
        );
        checks.Compare("atm", "trailer alone against its ATM", alone, trailer.AtmKg, "trailer.ratings.atm", readingGuardKg);
        checks.Compare(
            "gtm",
            "trailer axles against GTM",
            Of(combination.TrailerAxlesKg),
            trailer.GtmKg,
            "trailer.ratings.gtm",
            readingGuardKg
        );
        CompareTow(checks, alone, limits, readingGuardKg);
        checks.Compare("towbar", "trailer alone against the towbar", alone, trailer.TowbarKg, "vehicle.towbar.mass", readingGuardKg);
        checks.Compare(
            "coupling",
            "trailer alone against the coupling",
            alone,
            trailer.CouplingKg,
            "trailer.coupling.mass",
            readingGuardKg
        );
        checks.CompareRated(
            "ball load against the vehicle maker's limit",
            ball,
            vehicle,
            ratings => ratings.BallKg,
            "ball",
            2 * readingGuardKg
        );
        checks.Compare(
            "towbar-ball",
            "ball load against the towbar",
            ball,
            trailer.TowbarBallKg,
            "vehicle.towbar.ball",
            2 * readingGuardKg
        );
        checks.Compare(
            "coupling-ball",
            "ball load against the coupling",
            ball,
            trailer.CouplingBallKg,
            "trailer.coupling.ball",
            2 * readingGuardKg
        );
        return new CombinationCheck(checks.Checks, checks.Missing);
    }

    private static void CompareTow(LoadChecks checks, Interval trailerAlone, CombinationLimits limits, Fraction guardKg)
    {
        if (limits.Trailer.Braked is not { } braked)
        {
            CompareEither(checks, trailerAlone, limits.Vehicle, guardKg);
            return;
        }

        var key = braked ? "braked-tow" : "unbraked-tow";
        Func<Ratings, Fraction?> rating = braked ? ratings => ratings.BrakedTowKg : ratings => ratings.UnbrakedTowKg;
        var byMaker = rating(limits.Vehicle.Original) is not null || (limits.Vehicle.Rerated is { } rerated && rating(rerated) is not null);
        var byMass = byMaker ? null : TowRating.Of(null, "", limits.UnloadedKg, limits.DefaultRatio);
        if (byMass is null)
            checks.CompareRated("trailer alone against the tow rating", trailerAlone, limits.Vehicle, rating, key, guardKg);
        else
            checks.Compare(
                key,
                "trailer alone against the default by the vehicle's own mass",
                trailerAlone,
                byMass.Kg,
                byMass.Fact,
                guardKg
            );
    }

    /// <summary>Whether the trailer has brakes is not known: above the rating for a braked one it is too heavy either way.</summary>
    private static void CompareEither(LoadChecks checks, Interval trailerAlone, VehicleLimits limits, Fraction guardKg)
    {
        var braked = limits.Original.Overlaid(limits.Rerated).BrakedTowKg;
        if (braked is not null && trailerAlone.Low > braked)
            checks.Compare(
                "braked-tow",
                "trailer alone against the tow rating, even with brakes",
                trailerAlone,
                braked,
                "vehicle.ratings.braked-tow",
                guardKg
            );
        checks.Lacks("trailer.braked", "which tow rating counts");
    }

    private static Interval Of(Fraction? mass) => mass is { } known ? Interval.Of(known) : Interval.Anything;
}
