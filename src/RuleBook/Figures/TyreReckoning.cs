using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;

namespace RuleBook.Figures;

/// <summary>Works out the tyres on the road.</summary>
internal static class TyreReckoning
{
    /// <param name="job">The job.</param>
    /// <param name="growth">Its growth by the handbook's diameters; null where the tyres stay.</param>
    public static TyreAnswer? Of(Job job, TyreGrowth? growth)
    {
        var road = RoadReckoning.Of(job, growth);
        var ofTyres = job.FittedTyre is not null || !job.PlacardTyres.IsEmpty;
        var missing = ImmutableArray.CreateBuilder<MissingFact>();
        Name(
            job.Plan.ClearanceMidwayMm is not null && road is { Clearance: not null, LeastMidwayMm: null },
            "vehicle.wheelbase",
            "the least clearance midway between the axles"
        );
        string[] notCompared = [.. NotCompared(job)];
        if (!ofTyres && !road.TellsSomething && missing.Count == 0 && notCompared.Length == 0)
            return null;
        var capacity = TyreCapacity.Of(job);
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        Name(ofTyres && job.PlacardTyres.IsEmpty, "vehicle.tyres", "the growth in diameter, the load index to keep");
        Name(ofTyres && capacity.Front.Amount is null, capacity.Fact, "what the tyres carry (a size with its load index)");
        Name(ofTyres && ratings.FrontAxleKg is null, "vehicle.ratings.front-axle", "the load index that the front tyres need");
        Name(ofTyres && ratings.RearAxleKg is null, "vehicle.ratings.rear-axle", "the load index that the rear tyres need");
        Name(growth is not null && job.Built is null, "vehicle.built", "which rule the speedometer falls under");
        Name(
            growth is not null && job.Plan.Speedometer is null,
            "vehicle.speedometer",
            "the true speed after the change; until then it is taken to have been exact"
        );
        return new TyreAnswer(
            job.FittedTyre,
            growth,
            capacity,
            [.. Loads(capacity, ratings), .. Total(capacity, ratings)],
            [.. Needs(job, ratings)],
            missing.ToImmutable()
        )
        {
            NotCompared = [.. notCompared],
            Speeds = [.. Speeds(job)],
            Speedometer = growth is null ? null : SpeedometerReckoning.Of(job, growth),
            Road = road,
        };

        void Name(bool lacks, string fact, string adds)
        {
            if (lacks)
                missing.Add(new MissingFact(fact, adds));
        }
    }

    /// <summary>The least load index for each axle rating that is known.</summary>
    public static IEnumerable<LoadIndexNeed> Needs(Job job, Ratings ratings)
    {
        if (ratings.FrontAxleKg is { } front)
            yield return Need(Axle.Front, front, 2);
        if (ratings.RearAxleKg is { } rear)
            yield return Need(Axle.Rear, rear, job.Plan.DualRearWheels ? 4 : 2);
    }

    private static LoadIndexNeed Need(Axle axle, Fraction ratingKg, int tyres) =>
        new(axle, ratingKg, tyres, LoadIndex.LeastCarrying(ratingKg / tyres));

    private static IEnumerable<LoadCheck> Loads(TyreCapacity capacity, Ratings ratings)
    {
        if (ratings.FrontAxleKg is { } front && capacity.Front.Amount is { } ahead)
            yield return new LoadCheck("front-axle-rating-tyres", "front axle rating against its tyres", front, ahead, capacity.Fact);
        if (ratings.RearAxleKg is { } rear && capacity.Rear.Amount is { } behind)
            yield return new LoadCheck("rear-axle-rating-tyres", "rear axle rating against its tyres", rear, behind, capacity.Fact);
    }

    /// <summary>
    /// The GVM where all the tyres together carry less. Each axle's rating shows it where both are known, and a total that is enough
    /// says nothing of the axles.
    /// </summary>
    private static IEnumerable<LoadCheck> Total(TyreCapacity capacity, Ratings ratings)
    {
        if (
            ratings is { GvmKg: { } gvm } and ({ FrontAxleKg: null } or { RearAxleKg: null })
            && capacity.Front.Amount + capacity.Rear.Amount is { } carried
            && carried < gvm
        )
            yield return new LoadCheck("gvm-tyres", "GVM against all its tyres", gvm, carried, capacity.Fact);
    }

    /// <summary>
    /// A tyre as the placard has it, to the letter, is no other tyre; of one known by its diameter alone nothing can be compared.
    /// </summary>
    private static IEnumerable<string> NotCompared(Job job)
    {
        var fitted = job.FittedTyre;
        if (fitted is null ? !FittedTyre.IsOtherWithoutSize(job) : job.PlacardTyres.Contains(fitted))
            yield break;
        if (fitted is null)
            yield return "section width";
        TyreSize[] placard = fitted is null ? [] : FittedTyre.StandsFor(job, fitted);
        if (fitted?.LoadIndex is null || placard.Length == 0 || placard.Any(tyre => tyre.LoadIndex is null))
            yield return "load index";
        if (fitted?.SpeedSymbol is null || placard.Length == 0 || placard.Any(tyre => tyre.SpeedSymbol is null))
            yield return "speed symbol";
    }

    private static IEnumerable<TyreSpeedCheck> Speeds(Job job)
    {
        if (job.FittedTyre?.SpeedSymbol is not { } symbol)
            yield break;
        foreach (var rule in job.Plan.Reference.TyreSpeeds)
            if (rule.For(VehicleCategory.Words(job).GetValueOrDefault(VehicleCategory.Fact), job.RegisteredIn) is { } least)
                yield return new TyreSpeedCheck(rule.Condition, symbol, least, symbol.IsGoodFor(least), rule);
    }
}
