using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>What must not be driven or done as planned, whatever the pathway: the first line of an answer.</summary>
/// <param name="Kind">Why it stands in the way.</param>
/// <param name="Subject">
/// Id of what it is about: of a load check <c>gvm</c>, <c>front-axle</c>, <c>rear-axle-tyres</c>, ...; of a rule of use its full id; of a
/// change that nobody judged the path in the job; of springs <c>front-springs</c> or <c>rear-springs</c>.
/// </param>
/// <param name="What">The same for a reader, as a noun: <c>GVM</c>, <c>front axle rating</c>.</param>
public sealed record Blocker(BlockerKind Kind, string Subject, string What)
{
    /// <summary>Stable name of the blocker within its answer: kind, subject and, where one is given, state, parted by slashes.</summary>
    public string Id => string.Join('/', new[] { BlockerKinds.Word(Kind), Subject, State }.OfType<string>());

    /// <summary>
    /// In which state: <c>unladen</c>, <c>loaded</c>, <c>planned</c> (hitched) or <c>weighed</c>; null where there is none.
    /// </summary>
    public string? State { get; init; }

    /// <summary>The figure as it is, exact, in base units; null where the blocker has none.</summary>
    public Fraction? Value { get; init; }

    /// <summary>True when <see cref="Value"/> is the least that it can be, something being unknown.</summary>
    public bool AtLeast { get; init; }

    /// <summary>The figure against which it stands, exact, in base units; null where there is none.</summary>
    public Fraction? Limit { get; init; }

    /// <summary>How far the value is past the limit, exact, in base units, never negative; null where either lacks.</summary>
    public Fraction? Over => Value is { } value && Limit is { } limit ? (value > limit ? value - limit : limit - value) : null;

    /// <summary>Guard band of the weighing, in base units, where the mass is over by no more than it; null otherwise.</summary>
    public Fraction? TooCloseWithin { get; init; }

    /// <summary>The unit in which the figures are told; null where there are none.</summary>
    public Unit? Unit { get; init; }

    /// <summary>What sets the limit, as a noun: <c>front axle and rear tyres</c>; null where the subject says it.</summary>
    public string? LimitWhat { get; init; }

    /// <summary>Path in the job that states the limit; null where none does.</summary>
    public string? LimitFact { get; init; }

    /// <summary>Full id of the rule that forbids; null where none does.</summary>
    public string? Rule { get; init; }

    /// <summary>What a reader should know besides, as a sentence: a reason, a condition; null where there is nothing.</summary>
    public string? Why { get; init; }

    /// <summary>Of a rule of use the ways to comply that lack least, with what they lack; empty where the rule forbids outright.</summary>
    public ImmutableArray<ClosedTier> Past { get; init; } = [];

    /// <summary>Whom to ask; null where asking does not help.</summary>
    public string? Ask { get; init; }
}

/// <summary>Why something stands in the way.</summary>
public enum BlockerKind
{
    /// <summary>A mass is over a rating that will apply.</summary>
    OverRating,

    /// <summary>A mass is over the rating as it is now, and the verdict refuses the higher one that is asked for.</summary>
    RefusedRating,

    /// <summary>A rule of use forbids it, or it is past all that the rule allows.</summary>
    RuleOfUse,

    /// <summary>The job states a change of which no rule of the place speaks.</summary>
    NotJudged,

    /// <summary>What the job states and what follows from its other figures contradict each other.</summary>
    Contradicted,

    /// <summary>A rating is asked for that nothing can certify: above what axles or tyres carry together.</summary>
    NotCertifiable,

    /// <summary>A figure with which the vehicle must not be driven, whatever the ratings: a negative ball load.</summary>
    Unsafe,
}

/// <summary>The words of the data for kinds of blockers.</summary>
internal static class BlockerKinds
{
    /// <summary>As written in JSON and in ids.</summary>
    public static string Word(BlockerKind kind) =>
        kind switch
        {
            BlockerKind.OverRating => "over-rating",
            BlockerKind.RefusedRating => "refused-rating",
            BlockerKind.RuleOfUse => "rule-of-use",
            BlockerKind.NotJudged => "not-judged",
            BlockerKind.NotCertifiable => "not-certifiable",
            BlockerKind.Contradicted => "contradicted",
            _ => "unsafe",
        };
}
