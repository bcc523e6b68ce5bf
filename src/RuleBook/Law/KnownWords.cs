namespace RuleBook.Law;

/// <summary>
/// The measures, facts and topics of the vocabulary that code knows by name, because it computes, compares or draws them.
/// No other code names one; a test sees to it.
/// </summary>
internal static class KnownWords
{
    /// <summary>Measure: how far the springs raise the body.</summary>
    public const string SuspensionLift = "suspension-lift";

    /// <summary>Measure: height of the blocks between body and frame.</summary>
    public const string BodyLift = "body-lift";

    /// <summary>Measure: the suspension lift to be expected from the springs.</summary>
    public const string PredictedLift = "predicted-lift";

    /// <summary>Measure: half of the growth in overall diameter.</summary>
    public const string TyreLift = "tyre-lift";

    /// <summary>Measure: the sum of the parts that a version counts.</summary>
    public const string TotalLift = "total-lift";

    /// <summary>Measure: growth of the overall diameter over the largest placard tyre.</summary>
    public const string TyreGrowth = "tyre-diameter-growth";

    /// <summary>Measure: the same as a share of that tyre's diameter.</summary>
    public const string TyreGrowthPercent = "tyre-diameter-growth-percent";

    /// <summary>Measure: reduction of the overall diameter under the smallest placard tyre.</summary>
    public const string TyreReduction = "tyre-diameter-reduction";

    /// <summary>Measure: reduction under the largest placard tyre as a share of that tyre's diameter.</summary>
    public const string TyreReductionPercent = "tyre-diameter-reduction-percent";

    /// <summary>Measure: section width as a share of the widest placard tyre's.</summary>
    public const string TyreWidthRatio = "tyre-section-width-ratio";

    /// <summary>Measure: what the tyre fitted carries by its index, less what the placard's carries.</summary>
    public const string LoadRatingChange = "load-rating-change";

    /// <summary>Measure: the speed for which the tyre fitted is made, less that of the placard's.</summary>
    public const string SpeedRatingChange = "speed-rating-change";

    /// <summary>Measure: the overall diameter as measured.</summary>
    public const string TyreDiameter = "tyre-diameter";

    /// <summary>Measure: growth of the wheel track.</summary>
    public const string TrackIncrease = "track-increase";

    /// <summary>Measure: least distance from a level road to the vehicle.</summary>
    public const string GroundClearance = "ground-clearance";

    /// <summary>Measure: the gross vehicle mass before.</summary>
    public const string Gvm = "gvm";

    /// <summary>Gross vehicle mass asked for; the stated one where it does not change.</summary>
    public const string NewGvm = "new-gvm";

    /// <summary>Measures: the ratings before, by which their increase and what holds afterwards are named.</summary>
    public static IReadOnlyList<string> Ratings { get; } = [Gvm, "gcm", "braked-tow"];

    /// <summary>Measure: the rating of the front axle before.</summary>
    public const string FrontAxle = "front-axle";

    /// <summary>Measure: the rating of the rear axle before.</summary>
    public const string RearAxle = "rear-axle";

    /// <summary>Measure: the mass of an unbraked trailer that the maker states.</summary>
    public const string UnbrakedTow = "unbraked-tow";

    /// <summary>Measure: the ball load that the maker states.</summary>
    public const string Ball = "ball";

    /// <summary>Measure: the GVM asked for less the sum of the axle ratings.</summary>
    public const string GvmOverAxles = "new-gvm-over-axle-ratings";

    /// <summary>Measure: the loaded trailer standing alone.</summary>
    public const string TrailerMass = "trailer-mass";

    /// <summary>Measure: what the trailer's own wheels may carry.</summary>
    public const string TrailerGtm = "trailer-gtm";

    /// <summary>Measure: what the trailer may weigh standing alone.</summary>
    public const string TrailerAtm = "trailer-atm";

    /// <summary>Measure: the trailer's mass as a share of the towing vehicle's unladen mass.</summary>
    public const string TrailerShareOfUnladen = "trailer-share-of-unladen";

    /// <summary>Measure: vehicle and trailer together.</summary>
    public const string CombinationMass = "combination-mass";

    /// <summary>Measure: what fuel tanks hold beyond the maker's.</summary>
    public const string AddedFuel = "added-fuel-capacity";

    /// <summary>
    /// Measures from which code computes tyres, heights, clearance, loads or other measures; every other one is read by the rules alone.
    /// </summary>
    public static IReadOnlyList<string> ComputedFrom { get; } =
    [
        TyreLift,
        TyreGrowth,
        TyreGrowthPercent,
        TyreReduction,
        TyreReductionPercent,
        TyreWidthRatio,
        LoadRatingChange,
        SpeedRatingChange,
        TyreDiameter,
        PredictedLift,
        TotalLift,
        GroundClearance,
        AddedFuel,
        GvmOverAxles,
        TrailerMass,
        TrailerGtm,
        TrailerAtm,
        TrailerShareOfUnladen,
        CombinationMass,
    ];

    /// <summary>Measure: the date of manufacture.</summary>
    public const string Built = "built";

    /// <summary>Measure: the day of first registration.</summary>
    public const string FirstRegistered = "first-registered";

    /// <summary>Measure: the day of the work.</summary>
    public const string Altered = "altered";

    /// <summary>Fact: whether the vehicle has been registered for the first time.</summary>
    public const string Registered = "registered";

    /// <summary>Fact: whether the towing vehicle's maker gives a towing mass.</summary>
    public const string MakerGivesTowingMass = "maker-gives-towing-mass";

    /// <summary>Fact: the category of the vehicle.</summary>
    public const string Category = "category";

    /// <summary>Topic: the height of the body.</summary>
    public const string RideHeight = "ride-height";
}
