using System.Collections.Immutable;
using RuleBook.Jobs;

namespace RuleBook.Answers;

/// <summary>
/// Gathers what stands in the way, most urgent first. This is the one place where blockers are made: a figure that must stop a reader gets a
/// method here, or a class beside this one, that reads the assessment and yields <see cref="Blocker"/>s. Headline, exit code, text, JSON and page
/// follow by themselves.
/// </summary>
internal static class Blockers
{
    /// <summary>Of an assessment that has everything but its blockers.</summary>
    public static ImmutableArray<Blocker> Of(Assessment assessment, Job job) =>
    [
        .. Forbidden(assessment),
        .. LoadBlockers.Of(assessment, job),
        .. HeightBlockers.Of(assessment),
        .. Unjudged(assessment),
    ];

    /// <summary>A rule of use forbids whatever else is not known.</summary>
    private static IEnumerable<Blocker> Forbidden(Assessment assessment) => assessment.OfUse
        .Where(finding => finding.Certain && finding.Outcome.Best == Law.Pathway.Prohibited)
        .Select(finding => new Blocker(BlockerKind.RuleOfUse, finding.Version.Rule.Id, finding.Version.Rule.Title) { Rule = finding.Version.Rule.Id });

    private static IEnumerable<Blocker> Unjudged(Assessment assessment) => assessment.NotJudged
        .Select(each => new Blocker(BlockerKind.NotJudged, each.Fact, each.What) { Ask = each.Ask });
}
