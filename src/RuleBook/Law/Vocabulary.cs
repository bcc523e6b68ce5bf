using System.Collections.Immutable;
using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>The words that rules and jobs may use.</summary>
/// <param name="Measures">Named quantities.</param>
/// <param name="Facts">Named words about a vehicle.</param>
/// <param name="Conditions">What must be met or shown.</param>
/// <param name="Topics">Groups of rules.</param>
/// <param name="Pathways">What a tier can give.</param>
internal sealed record Vocabulary(
    ImmutableDictionary<string, Measure> Measures,
    ImmutableDictionary<string, FactWord> Facts,
    ImmutableDictionary<string, Term> Conditions,
    ImmutableDictionary<string, Topic> Topics,
    ImmutableDictionary<string, Term> Pathways
)
{
    /// <summary>No words at all.</summary>
    public static Vocabulary None { get; } =
        new(
            ImmutableDictionary<string, Measure>.Empty,
            ImmutableDictionary<string, FactWord>.Empty,
            ImmutableDictionary<string, Term>.Empty,
            ImmutableDictionary<string, Topic>.Empty,
            ImmutableDictionary<string, Term>.Empty
        );

    /// <summary>The GVM within which a category lies, by category; none where the vocabulary gives none.</summary>
    public ImmutableDictionary<string, CategoryGvm> CategoryGvms { get; init; } = ImmutableDictionary<string, CategoryGvm>.Empty;

    /// <summary>
    /// The conditions of which each rule gives the figure, by the name that a rule writes; with their figures they stand among the
    /// conditions.
    /// </summary>
    public ImmutableDictionary<string, FiguredCondition> Figured { get; init; } = ImmutableDictionary<string, FiguredCondition>.Empty;

    /// <summary>The measures that name a topic, in the order in which they are written.</summary>
    public IEnumerable<Measure> Naming(string topic) =>
        Measures.Values.Where(measure => measure.Topics.Contains(topic)).OrderBy(measure => measure.Mark);
}

/// <summary>A named quantity with a unit and a definition.</summary>
/// <param name="Name">Name.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Unit">The unit in which it is shown.</param>
/// <param name="Job">The job's path where it is stated, or that is asked for when it is unknown.</param>
/// <param name="IfAbsent">The value when the job does not state it, in base units; null when it is then unknown.</param>
/// <param name="IsDate">A day, not a quantity.</param>
/// <param name="IsDerived">Follows from other facts; a job does not state it.</param>
/// <param name="NeedsOwnRule">
/// A job that changes it is open unless some rule speaks of it: another rule of the topic does not allow it by silence.
/// </param>
/// <param name="Definition">In our own words.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Measure(
    string Name,
    string Title,
    Unit Unit,
    string Job,
    Fraction? IfAbsent,
    bool IsDate,
    bool IsDerived,
    bool NeedsOwnRule,
    string Definition,
    Mark Mark
)
{
    /// <summary>Whether it can be less than zero, and whether a job may state it so.</summary>
    internal BelowZero BelowZero { get; init; }

    /// <summary>
    /// Topics on which a job that changes it has to be judged whatever the place: where no rule there covers the vehicle on one of them,
    /// the answer is open. The rules of a place that read the measure touch their own topics, named here or not.
    /// </summary>
    public ImmutableArray<string> Topics { get; init; } = [];

    /// <summary>
    /// What no vehicle that a book is about goes beyond, in base units; a value outside is warned of. Open where it is not said.
    /// </summary>
    public Interval Plausible { get; init; } = Interval.Anything;

    /// <summary>What no vehicle at all goes beyond, in base units; a value outside is refused. Open where it is not said.</summary>
    public Interval Possible { get; init; } = Interval.Anything;

    /// <summary>The smallest step that matters, in base units; null for the usual one of the unit.</summary>
    public Fraction? Step { get; init; }

    /// <summary>The two measures, where it is a share that some rule bounds; null for a measure that the vocabulary itself names.</summary>
    internal MeasureShare? Share { get; init; }

    /// <summary>Whether some rule bounds a share of it, or one by it.</summary>
    public bool InShares { get; init; }
}

/// <summary>Whether a measure can be less than zero.</summary>
internal enum BelowZero
{
    /// <summary>Never.</summary>
    Never,

    /// <summary>It can, where it follows from other facts; a job does not state it so.</summary>
    Derived,

    /// <summary>It can, and a job may state it so.</summary>
    Stated,
}

/// <summary>A named word about a vehicle or a job.</summary>
/// <param name="Name">Name.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Job">The job's path where it is stated.</param>
/// <param name="Values">The words it can be.</param>
/// <param name="Definition">In our own words.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record FactWord(string Name, string Title, string Job, ImmutableArray<string> Values, string Definition, Mark Mark)
{
    /// <summary>How it is asked for in plain words; null where the title is enough.</summary>
    public string? Question { get; init; }

    /// <summary>
    /// Those of <see cref="Values"/>, the last ones, that a rule binds only where its <c>for</c> names them, such as motorcycles and
    /// trailers. A job that does not state the word is of none of them.
    /// </summary>
    public ImmutableArray<string> WhereNamed { get; init; } = [];
}

/// <summary>A word with a definition.</summary>
/// <param name="Name">Name.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Definition">In our own words.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Term(string Name, string Title, string Definition, Mark Mark)
{
    /// <summary>
    /// For a condition: the comparison of figures that decides it wherever a job gives the figures; null for one that has to be shown.
    /// </summary>
    internal Comparison? DecidedBy { get; init; }

    /// <summary>For a condition: the measure that shows that it is not met, where it is over a figure; null for any other.</summary>
    internal FailingMeasure? FailsOver { get; init; }

    /// <summary>For a condition with a figure: its name without it; null for any other.</summary>
    public string? Figured { get; init; }

    /// <summary>For a condition with a figure: the figure; null for any other.</summary>
    public Quantity? Figure { get; init; }

    /// <summary>For a condition that is several, of which one has to be shown: those; empty for any other.</summary>
    public ImmutableArray<string> AnyOf { get; init; } = [];

    /// <summary>For a condition: whether a rule makes it out of others, with a figure or as one of several.</summary>
    public bool IsMade => Figured is not null || !AnyOf.IsEmpty;
}

/// <summary>A measure that shows that a condition is not met.</summary>
/// <param name="Measure">Name of the measure, a share in per cent.</param>
/// <param name="Percent">The figure, %, over which the condition is not met.</param>
internal sealed record FailingMeasure(string Measure, Fraction Percent);

/// <summary>A comparison of figures of a job that can decide a condition.</summary>
internal enum Comparison
{
    /// <summary>The load index of the tyres fitted against the placard's, and the tyres against the ratings asked for.</summary>
    TyresAgainstPlacard,

    /// <summary>What the tyres carry against the mass ratings asked for.</summary>
    TyresAgainstRatings,

    /// <summary>The axle ratings, and the tyres of each axle, against the GVM asked for; figures can only fail it.</summary>
    AxlesAgainstGvm,

    /// <summary>Whether the trailer has brakes.</summary>
    TrailerBrakes,

    /// <summary>The trailer as weighed against the tow ratings of vehicle and towbar.</summary>
    TrailerAgainstRatings,

    /// <summary>The trailer as weighed against the rating of the towing apparatus.</summary>
    TrailerAgainstApparatus,

    /// <summary>What the wheels fitted lose of the original wheels' offset against the figure that the rule gives; met up to it.</summary>
    WheelOffsetAgainstFigure,
}

/// <summary>A group of rules.</summary>
/// <param name="Name">Name.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Definition">In our own words.</param>
/// <param name="OfUse">
/// Its rules bind the use of the vehicle, not its modification: they are told beside the verdict and do not enter it.
/// </param>
/// <param name="Mark">Where it is written.</param>
public sealed record Topic(string Name, string Title, string Definition, bool OfUse, Mark Mark);
