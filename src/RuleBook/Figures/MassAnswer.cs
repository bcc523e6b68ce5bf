using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;

namespace RuleBook.Figures;

/// <summary>What the vehicle weighs, line by line, and what is left of each rating. Loads decide no pathway.</summary>
/// <param name="Unladen">Fixed accessories aboard and every tank full.</param>
/// <param name="Loaded">As it travels; null where the job names nobody and nothing aboard and no trailer.</param>
/// <param name="Rerating">The highest GVM that axles and tyres carry; null where no re-rating is asked for.</param>
/// <param name="Towing">The combination; null where there is no trailer.</param>
/// <param name="Missing">What is not known, and what it would add.</param>
public sealed record MassAnswer(
    MassBudget Unladen,
    MassBudget? Loaded,
    ReratingCeiling? Rerating,
    TowingAnswer? Towing,
    ImmutableArray<MissingFact> Missing
)
{
    /// <summary>The vehicle alone as it stood on the weighbridge; null where it was not weighed.</summary>
    internal VehicleWeighed? Weighed { get; init; }

    /// <summary>What the trailer's axles may carry at each mass of the vehicle, by the ratings as they were.</summary>
    internal ImmutableArray<TradeOffPoint> TradeOff { get; init; } = [];

    /// <summary>The same after the re-rating; empty where the GVM and the GCM stay.</summary>
    internal ImmutableArray<TradeOffPoint> ReratedTradeOff { get; init; } = [];

    /// <summary>What may still stand over the rear axle at each ball load.</summary>
    internal ImmutableArray<TradeOffPoint> RearLoadAgainstBall { get; init; } = [];

    /// <summary>The comparisons that fail against a rating that will apply, each once, in the lightest state in which it does.</summary>
    public IEnumerable<StateCheck> Failing => Where((check, all) => !check.Holds && !IsRerated(check, all));

    /// <summary>
    /// The comparisons that fail against a rating that gives way to the one asked for: they count where that one is refused.
    /// </summary>
    public IEnumerable<StateCheck> FailingBeforeRerating => Where((check, all) => !check.Holds && IsRerated(check, all));

    /// <summary>The comparisons with weighed masses that are too close to call.</summary>
    public IEnumerable<StateCheck> TooClose => Where((check, all) => check.TooClose && !IsRerated(check, all));

    /// <summary>All comparisons against a rating that will apply, subject by subject, from the lightest state to the heaviest.</summary>
    public IEnumerable<StateCheck> Standing =>
        Where((check, all) => !IsRerated(check, all)).GroupBy(each => each.Check.Subject).SelectMany(same => same);

    /// <summary>Whether the rating of a comparison gives way to a re-rated one.</summary>
    /// <param name="check">The comparison.</param>
    /// <param name="all">The comparisons of the same state.</param>
    internal static bool IsRerated(LoadCheck check, IEnumerable<LoadCheck> all) =>
        all.Any(other =>
            other != check
            && other.LimitFact == check.LimitFact.Replace("vehicle.ratings.", "modification.ratings.", StringComparison.Ordinal)
        );

    private IEnumerable<StateCheck> Where(Func<LoadCheck, IReadOnlyCollection<LoadCheck>, bool> counts)
    {
        (string State, ImmutableArray<LoadCheck> Checks)[] states =
        [
            ("unladen", Unladen.Left),
            ("loaded", Loaded?.Left ?? []),
            ("weighed-alone", Weighed?.Checks ?? []),
            ("planned", Towing?.Planned?.Checks ?? []),
            ("weighed", Towing?.Weighed?.Checks ?? []),
        ];
        return states
            .SelectMany(each => each.Checks.Where(check => counts(check, each.Checks)).Select(check => new StateCheck(each.State, check)))
            .DistinctBy(each => each.Check);
    }
}

/// <summary>A comparison with the state in which it was made.</summary>
/// <param name="State">
/// <c>unladen</c>, <c>loaded</c>, <c>weighed-alone</c>, <c>planned</c> (hitched, by the plan) or <c>weighed</c> (hitched).
/// </param>
/// <param name="Check">The comparison.</param>
public sealed record StateCheck(string State, LoadCheck Check);

/// <summary>A combination, from the plan and from the weighbridge.</summary>
/// <param name="PlannedCombination">Masses as planned.</param>
/// <param name="Planned">The plan against every rating; null where no trailer is planned.</param>
/// <param name="WeighedCombination">Masses as weighed; null where nothing was weighed coupled.</param>
/// <param name="Weighed">The readings against every rating.</param>
/// <param name="BallByTrailerKg">Ball load as what leaves the trailer, kg.</param>
/// <param name="BallByVehicleKg">Ball load as what the vehicle gains, kg.</param>
/// <param name="BallDisagreementKg">The two apart, kg.</param>
/// <param name="ImpliedArmMm">Overhang of the ball that would explain the gain of the rear axle, mm.</param>
public sealed record TowingAnswer(
    Combination? PlannedCombination,
    CombinationCheck? Planned,
    Combination? WeighedCombination,
    CombinationCheck? Weighed,
    Fraction? BallByTrailerKg,
    Fraction? BallByVehicleKg,
    Fraction? BallDisagreementKg,
    Fraction? ImpliedArmMm
)
{
    /// <summary>
    /// Rated towing capacity: the maker's figure, or where there is none the lesser of the towbar's rating and GCM less GVM.
    /// </summary>
    internal TowRating? Capacity { get; init; }

    /// <summary>What the vehicle may still carry by GVM and by GCM; null where a mass or rating lacks.</summary>
    internal CargoLeft? CargoLeft { get; init; }

    /// <summary>The maker's advice at this ball load; null where there is none.</summary>
    internal DownRating? DownRating { get; init; }

    /// <summary>A ball load below zero: the trailer lifts the back of the vehicle; kg, null where it is not so.</summary>
    public Fraction? LiftsBallKg => (WeighedCombination?.BallKg ?? PlannedCombination?.BallKg) is { IsNegative: true } ball ? -ball : null;
}
