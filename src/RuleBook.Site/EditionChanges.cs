using System.Collections.Immutable;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Site;

/// <summary>What an edition of the book changes against an earlier one, by what a job is told.</summary>
/// <param name="Earlier">What the earlier edition is called: a revision, or the name of its folder.</param>
/// <param name="Digest">Its digest.</param>
/// <param name="Answers">In the order in which the page tells them; those of a jurisdiction and topic stand together.</param>
/// <param name="Others">What changes beside the answers.</param>
public sealed record EditionChanges(
    string Earlier,
    string Digest,
    ImmutableArray<ChangedAnswer> Answers,
    ImmutableArray<OtherChange> Others
);

/// <summary>An answer that changes for a class of vehicles on a stretch of days.</summary>
/// <param name="Jurisdiction">Id of the jurisdiction whose answer changes.</param>
/// <param name="Topic">The topic, for a reader.</param>
/// <param name="Vehicles">The vehicles, in words.</param>
/// <param name="Days">The days, in words: <c>from 26 October 2018</c>.</param>
/// <param name="Before">What the evaluator answers from the earlier edition.</param>
/// <param name="After">What it answers from this one.</param>
/// <param name="Rule">Full id of the rule that decides.</param>
/// <param name="Line">Where this edition has it; null where only the earlier one does.</param>
/// <param name="Smallest">What the smallest job that shows the change does to the vehicle, in words.</param>
/// <param name="Furthest">The same of the largest one; null where it is the same job.</param>
/// <param name="Job">The smallest job, as a file in YAML.</param>
public sealed record ChangedAnswer(
    string Jurisdiction,
    string Topic,
    string Vehicles,
    string Days,
    Outcome Before,
    Outcome After,
    string Rule,
    Mark? Line,
    string Smallest,
    string? Furthest,
    string Job
);

/// <summary>Something that changes beside the answers: a certification scheme, between which points or at which mass is measured.</summary>
/// <param name="Jurisdiction">Id of the jurisdiction.</param>
/// <param name="Place">Its name, also where only the earlier edition has it.</param>
/// <param name="About">Full id of a rule, the name of a scheme, or the id of the jurisdiction as a whole.</param>
/// <param name="Text">In one sentence without its full stop.</param>
public sealed record OtherChange(string Jurisdiction, string Place, string About, string Text);
