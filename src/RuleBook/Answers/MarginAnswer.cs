using System.Collections.Immutable;
using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;

namespace RuleBook.Answers;

/// <summary>What a job leaves: lift, growth, payload, trailer, and the tyre sizes that fit.</summary>
public sealed record MarginAnswer
{
    /// <summary>The job's own name; null where it has none.</summary>
    public string? Job { get; init; }

    /// <summary>Id of the jurisdiction that decides.</summary>
    public required string Jurisdiction { get; init; }

    /// <summary>Its name.</summary>
    public required string JurisdictionName { get; init; }

    /// <summary>The day on which the question is asked.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Digest of the book.</summary>
    public required string Book { get; init; }

    /// <summary>How far each measure may go within each pathway.</summary>
    public required ImmutableArray<Margin> Margins { get; init; }

    /// <summary>What is left of each rating in the heaviest state known.</summary>
    public required ImmutableArray<LoadCheck> Payload { get; init; }

    /// <summary>What the trailer weighed alone may have, by each limit; the least governs. Empty where nothing is known.</summary>
    public required ImmutableArray<TrailerRoom> Trailer { get; init; }

    /// <summary>The listed sizes that some pathway allows, ranked.</summary>
    public required ImmutableArray<SizeFit> Sizes { get; init; }

    /// <summary>Listed sizes that were tried.</summary>
    public required int SizesTried { get; init; }

    /// <summary>Where the list of sizes comes from.</summary>
    public required ImmutableArray<CitedSource> SizeSources { get; init; }

    /// <summary>What is not known, and what it would add.</summary>
    public required ImmutableArray<MissingFact> Missing { get; init; }

    /// <summary>What a reader should bear in mind.</summary>
    public required ImmutableArray<string> Cautions { get; init; }
}

/// <summary>The largest trailer by one limit.</summary>
/// <param name="Limit">The limit, in words.</param>
/// <param name="AloneKg">Most for the trailer weighed alone, kg; negative when the limit is passed without one.</param>
public sealed record TrailerRoom(string Limit, Fraction AloneKg);

/// <summary>Works out what a job leaves.</summary>
public static class MarginFinder
{
    /// <summary>By the rules of the state of registration, or of <paramref name="elsewhere"/> for a what-if.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="elsewhere">Id or alias of another jurisdiction; null for the state of registration.</param>
    /// <exception cref="ArgumentException">The book has no such jurisdiction.</exception>
    public static MarginAnswer Find(Book book, Job job, string? elsewhere = null)
    {
        var place =
            book.Jurisdiction(elsewhere ?? job.RegisteredIn)
            ?? throw new ArgumentException($"the book has no jurisdiction '{elsewhere ?? job.RegisteredIn}'", nameof(elsewhere));
        job = job.AsIfRegisteredIn(place.Id);
        var masses = MassReckoning.Of(job, place.Id);
        var margins = Margins.Measures.Select(measure => Margins.Of(book, job, place, measure)).OfType<Margin>().ToImmutableArray();
        return new MarginAnswer
        {
            Job = job.Name,
            Jurisdiction = place.Id,
            JurisdictionName = place.Name,
            On = job.Dates.Latest,
            Book = book.Digest,
            Margins = margins,
            Payload = masses is null ? [] : (masses.Loaded ?? masses.Unladen).Left,
            Trailer = masses is null ? [] : [.. Rooms(job, masses)],
            Sizes = SizeFits.Of(book, job, place),
            SizesTried = job.PlacardTyres.IsEmpty ? 0 : book.Reference.TyreSizes.Length,
            SizeSources = book.Reference.Sources.GetValueOrDefault("tyre-sizes", []),
            Missing =
            [
                .. Open(margins),
                .. (masses?.Missing ?? []).Concat(
                    job.PlacardTyres.IsEmpty ? [new MissingFact("vehicle.tyres", "which tyre sizes fit")] : []
                ),
            ],
            Cautions =
            [
                .. Margins
                    .Measures.Where(book.Vocabulary.Measures.ContainsKey)
                    .SelectMany(measure =>
                        Cautions.OfLimits(book, place, Judgement.About(book, job, place, DiameterBasis.Handbook, measure))
                    )
                    .Distinct(),
                .. book.Cautions,
            ],
        };
    }

    /// <summary>What decides how far measures may go, each with the measures for which it does.</summary>
    private static IEnumerable<MissingFact> Open(ImmutableArray<Margin> margins) =>
        margins
            .SelectMany(margin => margin.Open.Select(fact => (Fact: fact, margin.Measure.Title)))
            .GroupBy(each => each.Fact, each => each.Title)
            .Select(same => new MissingFact(same.Key, $"what is left for sure of {string.Join(", ", same)}"));

    /// <summary>GCM counts the trailer's axles: the vehicle without ball load and the trailer alone make up the same total.</summary>
    private static IEnumerable<TrailerRoom> Rooms(Job job, MassAnswer masses)
    {
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var vehicle = Budgets.Unhitched(job).TotalKg;
        if (ratings.GcmKg - vehicle is { } byGcm)
            yield return new TrailerRoom("GCM less the vehicle as loaded", byGcm);
        var unbraked = job.Plan.Trailer?.Limits.Braked is false;
        if ((unbraked ? ratings.UnbrakedTowKg : ratings.BrakedTowKg) is { } tow)
            yield return new TrailerRoom($"tow rating of the vehicle, {(unbraked ? "un" : "")}braked trailer", tow);
        if (masses.Towing is null || job.Plan.Trailer?.Limits is not { } limits)
            yield break;
        if (limits.AtmKg is { } atm)
            yield return new TrailerRoom("ATM of the trailer", atm);
        if (limits.GtmKg + Budgets.BallKg(job.Plan.Trailer) is { } gtm)
            yield return new TrailerRoom("GTM of the trailer with the ball load", gtm);
        if (limits.TowbarKg is { } towbar)
            yield return new TrailerRoom("towbar", towbar);
        if (limits.CouplingKg is { } coupling)
            yield return new TrailerRoom("coupling", coupling);
    }
}
