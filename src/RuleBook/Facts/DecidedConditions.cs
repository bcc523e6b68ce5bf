using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;

namespace RuleBook.Facts;

/// <summary>The conditions of the vocabulary that follow from the figures of a job.</summary>
internal static class DecidedConditions
{
    /// <summary>
    /// Each condition of the vocabulary that the figures decide, with whether it is met. What they do not decide is left out.
    /// </summary>
    public static IEnumerable<(string Condition, bool Met)> Of(Job job, Vocabulary vocabulary)
    {
        var compared = Compared(job).ToDictionary(each => each.Comparison, each => each.Met);
        foreach (var condition in VocabularyIndex.Of(vocabulary).Decided)
            if (
                condition is { DecidedBy: Comparison.WheelOffsetAgainstFigure, Figure: { } figure }
                && job.Plan.WheelOffset?.LostMm is { } lost
            )
                yield return (condition.Name, lost <= figure.Base);
            else if (condition.DecidedBy is { } comparison && compared.TryGetValue(comparison, out var met))
                yield return (condition.Name, met);
            else if (condition.FailsOver is { } failing && job.Measures.GetValueOrDefault(failing.Measure)?.Base > failing.Percent)
                yield return (condition.Name, false);
        foreach (var rule in job.Plan.Reference.TyreSpeeds.Where(rule => vocabulary.Conditions.ContainsKey(rule.Condition)))
            if (
                rule.For(VehicleCategory.Words(job).GetValueOrDefault(VehicleCategory.Fact), job.RegisteredIn) is { } speed
                && job.FittedTyre?.SpeedSymbol?.IsGoodFor(speed) is true
            )
                yield return (rule.Condition, true);
    }

    private static IEnumerable<(Comparison Comparison, bool Met)> Compared(Job job)
    {
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var rerated = job.Plan.Rerated is { GvmKg: not null } or { FrontAxleKg: not null } or { RearAxleKg: not null };
        var carry = rerated ? TyresCarryRatings(job, ratings) : null;
        if (TyresKeepPlacard(job) is { } placard)
        {
            if (!placard || carry is false)
                yield return (Comparison.TyresAgainstPlacard, false);
            else if (!rerated || carry is true)
                yield return (Comparison.TyresAgainstPlacard, true);
        }

        if (carry is { } enough)
            yield return (Comparison.TyresAgainstRatings, enough);
        if (rerated && AxlesFail(job, ratings))
            yield return (Comparison.AxlesAgainstGvm, false);
        if (job.Plan.Trailer is not { } trailer)
            yield break;
        if (trailer.Limits.Braked is { } braked)
            yield return (Comparison.TrailerBrakes, braked);
        if (TrailerKeepsRatings(job, trailer) is { } keeps)
            yield return (Comparison.TrailerAgainstRatings, keeps);
        if (trailer is { AloneKg: { } alone, Limits.TowbarKg: { } towbar })
            yield return (Comparison.TrailerAgainstApparatus, alone <= towbar);
    }

    /// <summary>Yes from the strongest placard size on, no below the weakest; between them the placard's own wording decides.</summary>
    private static bool? TyresKeepPlacard(Job job)
    {
        if (job.FittedTyre?.LoadIndex?.Kilograms is not { } fitted || job.PlacardTyres.IsEmpty)
            return null;
        Fraction?[] placard = [.. job.PlacardTyres.Select(size => size.LoadIndex?.Kilograms)];
        if (placard.Contains(null))
            return null;
        return fitted >= placard.Max() ? true
            : fitted < placard.Min() ? false
            : null;
    }

    private static bool? TyresCarryRatings(Job job, Ratings ratings)
    {
        var tyres = TyreCapacity.Of(job);
        if ((tyres.Front.Amount, tyres.Rear.Amount) is not ({ } front, { } rear))
            return null;
        if (front + rear < ratings.GvmKg || front < ratings.FrontAxleKg || rear < ratings.RearAxleKg)
            return false;
        return ratings is { GvmKg: not null, FrontAxleKg: not null, RearAxleKg: not null } ? true : null;
    }

    /// <summary>
    /// Weighed unconnected against the maker's figure for its brakes and against the towbar; both have to be known for a yes.
    /// </summary>
    private static bool? TrailerKeepsRatings(Job job, TrailerPlan trailer)
    {
        if (trailer.AloneKg is not { } alone || trailer.Limits.Braked is not { } braked)
            return null;
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var (maker, apparatus) = (braked ? ratings.BrakedTowKg : ratings.UnbrakedTowKg, trailer.Limits.TowbarKg);
        if (alone > maker || alone > apparatus)
            return false;
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
