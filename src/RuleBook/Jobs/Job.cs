using System.Collections.Immutable;
using RuleBook.Physics.Tyres;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs;

/// <summary>A vehicle, where it is registered, when, and what is or will be fitted.</summary>
public sealed record Job
{
    /// <summary>The job's own name or number; null where it has none.</summary>
    public string? Name { get; init; }

    /// <summary>Id of the jurisdiction of registration.</summary>
    public required string RegisteredIn { get; init; }

    /// <summary>The days that can pick a version.</summary>
    public required JobDates Dates { get; init; }

    /// <summary>As it was typed, so that a what-if can change it; null where it was made otherwise.</summary>
    public Mapping? Written { get; init; }

    /// <summary>Words stated about the vehicle, by fact.</summary>
    public ImmutableDictionary<string, string> Words { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Measures stated, by name.</summary>
    public ImmutableDictionary<string, Quantity> Measures { get; init; } = ImmutableDictionary<string, Quantity>.Empty;

    /// <summary>Measures that the job says are not known.</summary>
    public ImmutableHashSet<string> Unknown { get; init; } = [];

    /// <summary>Masses, axles, springs, heights and the trailer.</summary>
    internal JobPlan Plan { get; init; } = JobPlan.None;

    /// <summary>Every size on the placard.</summary>
    public ImmutableArray<TyreSize> PlacardTyres { get; init; } = [];

    /// <summary>The size fitted; null where the tyres do not change.</summary>
    public TyreSize? FittedTyre { get; init; }

    /// <summary>First registration, as far as it is known; null when not stated or not yet registered.</summary>
    public PartialDate? FirstRegistered { get; init; }

    /// <summary>The vehicle has never been registered.</summary>
    public bool NotYetRegistered { get; init; }

    /// <summary>Day, month or year of manufacture; null when not stated.</summary>
    public PartialDate? Built { get; init; }

    /// <summary>What is hardly possible in the job, though it was read: told before anything else.</summary>
    public ImmutableArray<Problem> Warnings { get; init; } = [];

    /// <summary>Conditions known to be met or not met.</summary>
    public ImmutableDictionary<string, bool> Shown { get; init; } = ImmutableDictionary<string, bool>.Empty;

    /// <summary>The certifier named: ids of the jurisdictions that appointed the person; null where none is named.</summary>
    public ImmutableArray<string>? CertifierAppointedIn { get; init; }

    /// <summary>Papers that the owner holds already.</summary>
    public ImmutableArray<HeldPaper> Held { get; init; } = [];

    /// <summary>Ids of the jurisdictions on whose roads the vehicle will be used.</summary>
    public ImmutableArray<string> TravelsThrough { get; init; } = [];

    /// <summary>The same for a what-if in another jurisdiction: what goes by the place of registration goes by that one.</summary>
    /// <param name="jurisdiction">Its id.</param>
    internal Job AsIfRegisteredIn(string jurisdiction) => jurisdiction == RegisteredIn ? this : this with { RegisteredIn = jurisdiction };
}

/// <summary>The days that can pick a version of a rule; a day not stated is null.</summary>
/// <param name="Work">Day of the work.</param>
/// <param name="Certification">Day of certification.</param>
/// <param name="Inspection">Day of inspection.</param>
public sealed record JobDates(DateOnly? Work, DateOnly? Certification, DateOnly? Inspection)
{
    /// <summary>All three on one day.</summary>
    public static JobDates On(DateOnly day) => new(day, day, day);

    /// <summary>The last day stated: the day on which the question is asked.</summary>
    internal DateOnly Latest => Later(Later(Work, Certification), Inspection) ?? throw new InvalidOperationException("no day is stated");

    /// <summary>
    /// The days to try: the one that decides, where that is established and stated; otherwise every day stated.
    /// </summary>
    internal ImmutableArray<DateOnly> For(string? decidedBy) =>
        decidedBy switch
        {
            "work" when Work is { } day => [day],
            "certification" when Certification is { } day => [day],
            "inspection" when Inspection is { } day => [day],
            _ when Work is { } day && Certification == day && Inspection == day => [day],
            _ => [.. All.Distinct().Order()],
        };

    private static DateOnly? Later(DateOnly? one, DateOnly? other) => one is null || other > one ? other : one;

    private IEnumerable<DateOnly> All => new[] { Work, Certification, Inspection }.OfType<DateOnly>();
}
