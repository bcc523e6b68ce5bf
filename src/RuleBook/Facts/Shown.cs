using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;

namespace RuleBook.Facts;

/// <summary>The conditions of the vocabulary that follow from the figures of a job.</summary>
internal static class Shown
{
    private const string TyresKept = "tyre-load-rating-kept";
    private const string TyresCarry = "tyres-carry-new-mass";
    private const string AxlesCarry = "axle-ratings-carry-gvm";

    private const string TrailerBraked = "trailer-braked";
    private const string TrailerWithin = "trailer-within-tow-ratings";

    /// <summary>Each condition that the figures decide, with whether it is met. What they do not decide is left out.</summary>
    public static IEnumerable<(string Condition, bool Met)> Of(Job job)
    {
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var rerated = job.Plan.Rerated is { GvmKg: not null } or { FrontAxleKg: not null } or { RearAxleKg: not null };
        var carry = rerated ? TyresCarryRatings(job, ratings) : null;
        if (TyresKeepPlacard(job) is { } placard)
        {
            if (!placard || carry is false) yield return (TyresKept, false);
            else if (!rerated || carry is true) yield return (TyresKept, true);
        }

        if (carry is { } enough) yield return (TyresCarry, enough);
        if (rerated && AxlesFail(job, ratings)) yield return (AxlesCarry, false);
        if (job.Plan.Trailer is { } trailer)
        {
            if (trailer.Limits.Braked is { } braked) yield return (TrailerBraked, braked);
            if (TrailerKeepsRatings(job, trailer) is { } keeps) yield return (TrailerWithin, keeps);
        }

        foreach (var rule in job.Plan.Reference.TyreSpeeds)
            if (rule.For(VehicleCategory.Words(job).GetValueOrDefault(VehicleCategory.Fact)) is { } speed && job.FittedTyre?.SpeedSymbol?.IsGoodFor(speed) is true)
                yield return (rule.Condition, true);
    }

    /// <summary>Yes from the strongest placard size on, no below the weakest; between them the placard's own wording decides.</summary>
    private static bool? TyresKeepPlacard(Job job)
    {
        if (job.FittedTyre?.LoadIndex?.Kilograms is not { } fitted || job.PlacardTyres.IsEmpty) return null;
        Fraction?[] placard = [.. job.PlacardTyres.Select(size => size.LoadIndex?.Kilograms)];
        if (placard.Contains(null)) return null;
        return fitted >= placard.Max() ? true : fitted < placard.Min() ? false : null;
    }

    private static bool? TyresCarryRatings(Job job, Ratings ratings)
    {
        var tyres = TyreCapacity.Of(job);
        if ((tyres.Front.Amount, tyres.Rear.Amount) is not ({ } front, { } rear)) return null;
        if (front + rear < ratings.GvmKg || front < ratings.FrontAxleKg || rear < ratings.RearAxleKg) return false;
        return ratings is { GvmKg: not null, FrontAxleKg: not null, RearAxleKg: not null } ? true : null;
    }

    /// <summary>Weighed unconnected against the maker's figure for its brakes and against the towbar; both have to be known for a yes.</summary>
    private static bool? TrailerKeepsRatings(Job job, TrailerPlan trailer)
    {
        if ((trailer.MassKg ?? trailer.AxlesKg + trailer.BallKg) is not { } alone || trailer.Limits.Braked is not { } braked) return null;
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var (maker, apparatus) = (braked ? ratings.BrakedTowKg : ratings.UnbrakedTowKg, trailer.Limits.TowbarKg);
        if (alone > maker || alone > apparatus) return false;
        return maker is not null && apparatus is not null ? true : null;
    }

    /// <summary>Only a failure follows from figures: bearings, springs and wheels have to be shown.</summary>
    private static bool AxlesFail(Job job, Ratings ratings)
    {
        var tyres = TyreCapacity.Of(job);
        return ratings.FrontAxleKg + ratings.RearAxleKg < ratings.GvmKg
            || tyres.Front.Amount < ratings.FrontAxleKg
            || tyres.Rear.Amount < ratings.RearAxleKg;
    }
}
