using System.Collections.Immutable;
using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>Derives from a job what is known: words, measures and what has been shown.</summary>
internal static class JobFacts
{
    /// <summary>Whether the vehicle has been registered for the first time.</summary>
    public const string Registered = KnownWords.Registered;

    /// <summary>The day of the work.</summary>
    public const string Altered = KnownWords.Altered;

    private const string TyreReduction = KnownWords.TyreReduction;

    /// <summary>The measures that follow from the sizes of the tyres.</summary>
    private static readonly ImmutableArray<string> OfTyres =
    [
        FactSet.TyreGrowth,
        KnownWords.TyreGrowthPercent,
        TyreReduction,
        KnownWords.TyreReductionPercent,
        KnownWords.TyreWidthRatio,
        FactSet.TyreLift,
    ];

    /// <summary>The facts of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="days">The days that may decide.</param>
    /// <param name="basis">The basis of tyre diameters.</param>
    public static FactSet Of(Job job, Vocabulary vocabulary, ImmutableArray<DateOnly> days, DiameterBasis basis) =>
        Of(job, vocabulary, days, basis, FittedTyre.Growth(job, basis));

    /// <summary>The same where the growth of the tyres is worked out already.</summary>
    internal static FactSet Of(Job job, Vocabulary vocabulary, ImmutableArray<DateOnly> days, DiameterBasis basis, TyreGrowth? tyres)
    {
        var measures = new Dictionary<string, Derived>(vocabulary.Measures.Count, StringComparer.Ordinal);
        foreach (var (name, quantity) in job.Measures)
            measures[name] = Stated(quantity);
        AddTyres(measures, job, basis, tyres);
        AddService(measures, job);
        RatingFacts.Add(measures, job, vocabulary);
        AddLift(measures, job);
        AddTrack(measures, job);
        AddCombination(measures, job);
        if (Changes.FuelAdded(job) is { } fuel)
            measures[KnownWords.AddedFuel] = fuel;
        TowingFacts.Add(measures, job);
        if (job.Dates.Work is { } work)
            measures[Altered] = Stated(PartialDate.Of(work));
        if (job.Built is { } built)
            measures[KnownWords.Built] = Stated(built);
        if (job.FirstRegistered is { } first)
            measures[KnownWords.FirstRegistered] = Stated(first);
        if (job.NotYetRegistered)
            measures[KnownWords.FirstRegistered] = new Derived(
                new Interval(job.Dates.Latest.DayNumber + 1, null),
                "not yet: later than every day of the job"
            );
        var shown = DecidedConditions
            .Of(job, vocabulary)
            .Aggregate(job.Shown, (all, each) => all.ContainsKey(each.Condition) ? all : all.Add(each.Condition, each.Met));
        shown = VocabularyIndex.Of(vocabulary).AnyOf.Aggregate(shown, WithAnyOf);
        AddUnstated(measures, job, vocabulary);
        measures.AddShares(vocabulary);
        return new FactSet(TowingFacts.Known(job, RegisteredOn(job, days)), measures, shown)
        {
            Uncertainties = Uncertainties(job).With(vocabulary, job.Measures),
            GuardFactor = job.Plan.Reference.GuardFactor,
        };
    }

    /// <summary>
    /// The facts of a job with a tyre fitted by diameters of another basis, for judging: how the growth is derived is not told.
    /// </summary>
    internal static FactSet On(DiameterBasis basis, FactSet facts, Job job, Vocabulary vocabulary)
    {
        var measures = new Dictionary<string, Derived>(facts.Measures, StringComparer.Ordinal);
        foreach (var name in OfTyres)
            if (job.Measures.TryGetValue(name, out var stated))
                measures[name] = Stated(stated);
            else
                measures.Remove(name);
        AddTyres(measures, job, basis, FittedTyre.Growth(job, basis, told: false));
        measures.AddShares(vocabulary);
        return facts with { Measures = measures };
    }

    /// <summary>One of several is met where some is, and not met where none is; it stays to be shown where that is not known.</summary>
    private static ImmutableDictionary<string, bool> WithAnyOf(ImmutableDictionary<string, bool> shown, Term anyOf) =>
        anyOf.AnyOf.Any(name => shown.GetValueOrDefault(name)) ? shown.SetItem(anyOf.Name, true)
        : anyOf.AnyOf.All(shown.ContainsKey) ? shown.SetItem(anyOf.Name, false)
        : shown;

    /// <summary>
    /// Where a growth is stated and also follows from the sizes, both must agree on some basis; a problem to report otherwise.
    /// </summary>
    public static string? Contradiction(Job job)
    {
        if (job.FittedTyre is null || job.PlacardTyres.Length == 0 || !job.Measures.TryGetValue(FactSet.TyreGrowth, out var stated))
            return null;
        var growths = new[] { DiameterBasis.Handbook, DiameterBasis.Nominal }
            .Select(basis => FittedTyre.Growth(job, basis)!.Growth)
            .Where(growth => growth.Amount is not null)
            .ToArray();
        return growths.Length == 0 || growths.Any(growth => growth.Amount == stated.Base)
            ? null
            : $"the growth is stated as {stated}, but the sizes give {growths[0].Derivation}";
    }

    private static ImmutableDictionary<string, string> RegisteredOn(Job job, ImmutableArray<DateOnly> days)
    {
        var words = VehicleCategory.Words(job);
        if (job.NotYetRegistered)
            return words.SetItem(Registered, "no");
        if (job.FirstRegistered is not { } first)
            return words;
        return days.All(day => first.Latest <= day) ? words.SetItem(Registered, "yes")
            : days.All(day => first.Earliest > day) ? words.SetItem(Registered, "no")
            : words;
    }

    private static Derived Stated(Quantity quantity) => new(Interval.Of(quantity.Base), $"{quantity} (stated)");

    private static Derived Stated(PartialDate date) =>
        new(new Interval(date.Earliest.DayNumber, date.Latest.DayNumber), $"{date.Words} (stated)");

    /// <summary>A diameter that was measured on a tyre whose size is not stated: over the largest placard size.</summary>
    private static void AddMeasuredDiameter(Dictionary<string, Derived> measures, Job job, GrowthShares shares)
    {
        if (!job.Measures.TryGetValue(FittedTyre.Diameter, out var measured) || measures.ContainsKey(FactSet.TyreGrowth))
            return;
        var growth = measured.Base - shares.Largest;
        measures[FactSet.TyreGrowth] = new Derived(
            Interval.Of(growth),
            $"{Numbers.Show(measured.Base)} - {Numbers.Show(shares.Largest)} = {Numbers.Show(growth)} mm (measured less the largest "
                + "placard size)"
        );
    }

    /// <summary>
    /// What the measures are of which the job states nothing: unchanged, but for those of which it says that they are not known.
    /// </summary>
    private static void AddUnstated(Dictionary<string, Derived> measures, Job job, Vocabulary vocabulary)
    {
        var unstated = Unstated.Of(vocabulary);
        foreach (var (name, known) in unstated.All)
            if (!(job.Unknown.Contains(name) || name == Lifts.Measure && job.Plan.TellsLift))
                if (job.FittedTyre is null || !unstated.OfTyres.Contains(name))
                    measures.TryAdd(name, known);
    }

    private static void AddLift(Dictionary<string, Derived> measures, Job job)
    {
        if (!measures.ContainsKey(Lifts.Measure) && job.Plan.TellsLift && Lifts.Of(job) is { } lift)
            measures[Lifts.Measure] = lift;
    }

    private static void AddTrack(Dictionary<string, Derived> measures, Job job)
    {
        if (job.Plan.WheelOffset is { } offset && !measures.ContainsKey(KnownWords.TrackIncrease))
            measures[KnownWords.TrackIncrease] = offset is { BeforeMm: { } before, AfterMm: { } after, TrackIncreaseMm: { } wider }
                ? new Derived(
                    Interval.Of(wider),
                    $"2 x ({Numbers.Show(before)} - {Numbers.Show(after)}) = {Numbers.Show(wider)} mm (offset lost, on both sides)"
                )
                : new Derived(Interval.Anything, "the offset of the wheels before or after is not stated");
    }

    private static void AddCombination(Dictionary<string, Derived> measures, Job job)
    {
        if (job.Plan.Trailer is not { } trailer)
            return;
        if (!measures.TryGetValue(KnownWords.TrailerMass, out var towed))
        {
            measures[KnownWords.TrailerMass] = towed = trailer.AxlesKg + trailer.BallKg is { } alone
                ? new Derived(Interval.Of(alone), "trailer axles and ball load together")
                : new Derived(
                    new Interval(trailer.AxlesKg ?? trailer.BallKg ?? Fraction.Zero, null),
                    "a trailer is given, its whole mass is not"
                );
        }

        var total = Budgets.Unhitched(job).Possible.Total + towed.Value;
        measures[KnownWords.CombinationMass] = new Derived(
            total,
            total.Exact is { } known
                ? $"vehicle as loaded and trailer together = {Numbers.Show(known)} kg"
                : "vehicle as loaded and trailer together; part of it is not known"
        );
    }

    /// <summary>What is stated for a measure, and the usual figure for a lift that was measured at the corners.</summary>
    private static ImmutableDictionary<string, Fraction> Uncertainties(Job job)
    {
        var stated = job.Plan.Uncertainties;
        if (
            job.Measures.ContainsKey(FittedTyre.Diameter)
            && !stated.ContainsKey(FactSet.TyreGrowth)
            && (stated.TryGetValue(FittedTyre.Diameter, out var own) || Usual(FittedTyre.Diameter, out own))
        )
            stated = stated.Add(FactSet.TyreGrowth, own);
        return !stated.ContainsKey(Lifts.Measure) && job.Plan.Heights.After is not null && Usual(Lifts.Measure, out var usual)
            ? stated.Add(Lifts.Measure, usual)
            : stated;

        bool Usual(string measure, out Fraction expanded)
        {
            var known = job.Plan.Reference.Uncertainties.GetValueOrDefault(measure);
            expanded = known?.Expanded ?? Fraction.Zero;
            return known is not null;
        }
    }

    /// <summary>What follows from the sizes, or from what is stated of the growth.</summary>
    private static void AddTyres(Dictionary<string, Derived> measures, Job job, DiameterBasis basis, TyreGrowth? fitted)
    {
        if (fitted is not null)
            AddFitted(measures, fitted);
        else if (GrowthShares.Of(job, basis) is { } shares)
        {
            AddMeasuredDiameter(measures, job, shares);
            AddGrowthShares(measures, job, shares);
        }

        AddGrowthSign(measures, job);
    }

    private static void AddFitted(Dictionary<string, Derived> measures, TyreGrowth growth)
    {
        Add(FactSet.TyreGrowth, growth.Growth);
        Add(TyreReduction, growth.Reduction);
        Add(KnownWords.TyreGrowthPercent, growth.GrowthPercent);
        Add(KnownWords.TyreReductionPercent, growth.GrowthPercent with { Amount = -growth.GrowthPercent.Amount });
        Add(KnownWords.TyreWidthRatio, growth.WidthPercent);
        Add(FactSet.TyreLift, growth.TyreLift);

        void Add(string name, DerivedFigure figure)
        {
            if (figure.Amount is { } amount && !measures.ContainsKey(name))
                measures[name] = new Derived(Interval.Of(amount), figure.Derivation);
        }
    }

    /// <summary>
    /// Load index and speed symbol of the tyre fitted, where they differ from those of the placard: of the same size where it has that,
    /// otherwise of every size.
    /// </summary>
    private static void AddService(Dictionary<string, Derived> measures, Job job)
    {
        if (job.FittedTyre is not { } fitted || job.PlacardTyres.IsEmpty)
            return;
        var sizes = FittedTyre.StandsFor(job, fitted);
        Add(KnownWords.LoadRatingChange, "kg", size => size.LoadIndex?.Kilograms);
        Add(KnownWords.SpeedRatingChange, "km/h", size => size.SpeedSymbol?.KilometresPerHour);

        void Add(string measure, string unit, Func<TyreSize, Fraction?> rating)
        {
            var placard = Array.ConvertAll(sizes, size => rating(size));
            if (
                rating(fitted) is not { } now
                || placard.Contains(null)
                || placard.MinBy(before => (now - before!.Value).Abs()) is not { } nearest
            )
                return;
            if (now != nearest)
                measures[measure] = new Derived(
                    Interval.Of(now - nearest),
                    $"{Numbers.Show(now)} - {Numbers.Show(nearest)} = {Numbers.Show(now - nearest)} {unit} (tyre fitted less the placard's)"
                );
        }
    }

    /// <summary>A growth that is stated as such, with the placard's sizes known.</summary>
    private static void AddGrowthShares(Dictionary<string, Derived> measures, Job job, GrowthShares shares)
    {
        if (!measures.TryGetValue(FactSet.TyreGrowth, out var growth) || growth.Value.Exact is not { IsZero: false } amount)
            return;
        foreach (var (measure, value) in shares.From(amount).Where(each => !job.Measures.ContainsKey(each.Measure)))
            measures[measure] = new Derived(
                Interval.Of(value),
                $"follows from a growth of {Numbers.Show(amount)} mm over {Numbers.Show(shares.Largest)} mm"
            );
    }

    /// <summary>
    /// A growth over the largest placard size or a reduction under the smallest that is stated without sizes still bounds what depends on
    /// the sizes: the smallest is no larger than the largest.
    /// </summary>
    private static void AddGrowthSign(Dictionary<string, Derived> measures, Job job)
    {
        var stated = job.FittedTyre is null && job.PlacardTyres.IsEmpty;
        if (stated && !job.Measures.ContainsKey(FactSet.TyreGrowth) && Amount(TyreReduction) is { IsPositive: true } reduction)
            Set(FactSet.TyreGrowth, new Interval(null, -reduction));
        if (Amount(FactSet.TyreGrowth) is not { IsZero: false } amount)
            return;
        var grows = amount.IsPositive;
        Bound(KnownWords.TyreGrowthPercent, grows);
        Bound(KnownWords.TyreReductionPercent, !grows);
        if (grows)
            Bound(TyreReduction, false);
        else if (stated && !job.Measures.ContainsKey(TyreReduction))
            Set(TyreReduction, new Interval(null, -amount));

        Fraction? Amount(string name) => measures.TryGetValue(name, out var known) ? known.Value.Exact : null;

        void Bound(string name, bool above)
        {
            if (Amount(name) is { IsZero: false })
                return;
            Set(name, above ? new Interval(Fraction.Zero, null) : new Interval(null, Fraction.Zero));
        }

        void Set(string name, Interval value) =>
            measures[name] = new Derived(value, "follows from what is stated of the tyres; the sizes are not stated");
    }
}
