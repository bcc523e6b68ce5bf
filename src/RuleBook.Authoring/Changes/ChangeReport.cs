using System.Collections.Immutable;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Changes;

/// <summary>What another book answers otherwise.</summary>
/// <param name="Answers">By jurisdiction and topic, then by day.</param>
/// <param name="Remarks">What changes beside the pathways.</param>
public sealed record ChangeReport(ImmutableArray<AnswerChange> Answers, ImmutableArray<Remark> Remarks)
{
    /// <summary>Whether nothing changes that a job could be told.</summary>
    public bool IsEmpty => Answers.IsEmpty && Remarks.IsEmpty;
}

/// <summary>An answer that changes for a class of vehicles on a stretch of days, with a job that shows it.</summary>
/// <param name="Jurisdiction">Id of the jurisdiction whose answer changes, also where the rule is adopted from another.</param>
/// <param name="Place">Its name.</param>
/// <param name="Topic">Id of the topic.</param>
/// <param name="TopicTitle">The topic, for a reader.</param>
/// <param name="From">First day on which the answers differ; null when they differ on every day before <paramref name="Until"/>.</param>
/// <param name="Until">First day on which they do so no longer; null when they go on.</param>
/// <param name="Vehicles">The vehicles, by facts in ordinal order; a fact that is not named can be anything.</param>
/// <param name="Before">What the evaluator answers to the job from the old book.</param>
/// <param name="After">What it answers from the new one.</param>
/// <param name="Rule">Full id of the rule that decides.</param>
/// <param name="Mark">Where the rule is written: in the new book, or in the old one when the new one has it no longer.</param>
/// <param name="Removed">Whether only the old book has the rule.</param>
/// <param name="Witness">The smallest job found that shows the change.</param>
/// <param name="Furthest">The largest one found, where it is another; no bound where the change has no end.</param>
public sealed record AnswerChange(
    string Jurisdiction,
    string Place,
    string Topic,
    string TopicTitle,
    DateOnly? From,
    DateOnly? Until,
    ImmutableArray<VehicleWord> Vehicles,
    Outcome Before,
    Outcome After,
    string Rule,
    Mark Mark,
    bool Removed,
    ShownJob Witness,
    ShownJob? Furthest
);

/// <summary>Words of one fact.</summary>
/// <param name="Fact">Name of the fact.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Words">Any of them.</param>
public sealed record VehicleWord(string Fact, string Title, ImmutableArray<string> Words);

/// <summary>A job that the evaluator answers differently.</summary>
/// <param name="Yaml">The job file.</param>
/// <param name="Says">What it changes on the vehicle, in words.</param>
/// <param name="Day">The day on which it is asked.</param>
public sealed record ShownJob(string Yaml, string Says, DateOnly Day);

/// <summary>What kind of thing changes beside the pathways.</summary>
public enum RemarkKind
{
    /// <summary>The new book has a jurisdiction more.</summary>
    JurisdictionAdded,

    /// <summary>The new book has it no longer.</summary>
    JurisdictionRemoved,

    /// <summary>A certification scheme: who certifies, what is issued, what happens in which order.</summary>
    Scheme,

    /// <summary>Between which points, or at which mass, a measure is taken.</summary>
    Measured,

    /// <summary>Which day picks the version.</summary>
    DecidedBy,

    /// <summary>The book had something wrong: answers given before were wrong, not only out of date.</summary>
    Corrected,

    /// <summary>The limits differ, but no job was found that could show it.</summary>
    NotShown,

    /// <summary>
    /// Something that no verdict shows: a rule that came or went, codes, whom to ask, an indication, a caution, what a word means.
    /// </summary>
    Other,

    /// <summary>What a rule rests on: which document carries it, where in it, and how that is known.</summary>
    Evidence,
}

/// <summary>Something that changes beside the pathways.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Jurisdiction">Id of the jurisdiction; null for what holds in all of them.</param>
/// <param name="Place">Its name.</param>
/// <param name="About">
/// Full id of the rule or source, the scheme's name, or a word of the book; the jurisdiction's id where it is as a whole.
/// </param>
/// <param name="From">First day on which it differs; null when it is not bound to a day, or differs from the start.</param>
/// <param name="Text">In one sentence.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Remark(RemarkKind Kind, string? Jurisdiction, string Place, string About, DateOnly? From, string Text, Mark Mark);
