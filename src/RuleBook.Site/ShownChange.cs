using RuleBook.Tables;

namespace RuleBook.Site;

/// <summary>A change of the law by what the smallest job that shows it is told.</summary>
/// <param name="Rule">Full id of the rule.</param>
/// <param name="From">Start of the version that brought the change, as written.</param>
/// <param name="Smallest">What the job does to the vehicle, in words.</param>
/// <param name="Before">The job on the day before, as JSON.</param>
/// <param name="After">The job from the day on, as JSON.</param>
/// <param name="Was">What the evaluator answers to the first.</param>
/// <param name="Is">What it answers to the second.</param>
public sealed record ShownChange(string Rule, string From, string Smallest, string Before, string After, Outcome Was, Outcome Is);
