using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>
/// Gathers what stands in the way, most urgent first. This is the one place where blockers are made: a figure that must stop a reader gets
/// a method here, or a class beside this one, that reads the assessment and yields <see cref="Blocker"/>s. Headline, exit code, text, JSON
/// and page follow by themselves.
/// </summary>
internal static class Blockers
{
    /// <summary>Of an assessment that has everything but its blockers.</summary>
    public static ImmutableArray<Blocker> Of(Assessment assessment, Job job) =>
        [.. PastRulesOfUse(assessment), .. LoadBlockers.Of(assessment, job), .. HeightBlockers.Of(assessment), .. Unjudged(assessment)];

    /// <summary>What a rule of use forbids, or what is past all that it allows, whatever else is not known.</summary>
    private static IEnumerable<Blocker> PastRulesOfUse(Assessment assessment) =>
        assessment
            .OfUse.Where(finding =>
                finding
                    is { Certain: true, Tier: null, Outcome.Best: > Pathway.NoCertificate }
                        or { Certain: true, Outcome.Best: Pathway.Prohibited }
            )
            .Select(finding => new Blocker(BlockerKind.RuleOfUse, finding.Version.Rule.Id, finding.Version.Rule.Title)
            {
                Rule = finding.Version.Rule.Id,
                Past = NearestWays(finding),
            });

    /// <summary>The ways to comply that lack least, of those that lack something which can be mended.</summary>
    private static ImmutableArray<ClosedTier> NearestWays(Finding finding)
    {
        var lacking = finding
            .Closed.Where(way => way is { Facts.IsEmpty: true } && !(way.Limits.IsEmpty && way.Conditions.IsEmpty))
            .ToArray();
        return
        [
            .. lacking.Where(way =>
                way.Limits.Length + way.Conditions.Length == lacking.Min(each => each.Limits.Length + each.Conditions.Length)
            ),
        ];
    }

    private static IEnumerable<Blocker> Unjudged(Assessment assessment) =>
        assessment.NotJudged.Select(each => new Blocker(BlockerKind.NotJudged, each.Fact, each.What) { Ask = each.Ask });
}
