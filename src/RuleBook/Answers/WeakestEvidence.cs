using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>The weakest link among what decides an answer.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Part">The limit, or what else of the rule it is.</param>
/// <param name="Standing">How it is known.</param>
public sealed record WeakestEvidence(Rule Rule, Part Part, Standing Standing)
{
    /// <summary>
    /// Of the rules that give the outcome: every limit of the tier that holds, of each easier tier the best known limit that is passed, and
    /// what holds beyond where no tier does. Null where nothing that is established decides.
    /// </summary>
    internal static WeakestEvidence? Of(IEnumerable<Finding> findings, Outcome outcome) =>
        findings
            .Where(finding => finding.Outcome.Best == outcome.Best || finding.Outcome.Worst == outcome.Worst)
            .Select(Of)
            .OfType<WeakestEvidence>()
            .MaxBy(link => link.Standing.Weakness);

    /// <summary>The same of one rule.</summary>
    internal static WeakestEvidence? Of(Finding finding) =>
        Links(finding)
            .Select(part => new WeakestEvidence(finding.Version.Rule, part, finding.Version.Evidence.Of(part)))
            .MaxBy(link => link.Standing.Weakness);

    private static IEnumerable<Part> Links(Finding finding)
    {
        var evidence = finding.Version.Evidence;
        foreach (var passed in finding.Exceeded.GroupBy(check => check.Tier.Name))
            yield return passed.Select(PartOf).MinBy(part => evidence.Of(part).Weakness);
        foreach (var kept in finding.Limits.Where(check => check.Limit.Kind != LimitKind.NotEstablished))
            yield return PartOf(kept);
        if (finding is { Tier: { } tier, Limits.IsEmpty: true })
            yield return new Part(tier.Name, Part.Gives);
        if (finding is { Tier: null, Version.Content: Stated { Beyond: not null } })
            yield return Part.Beyond;
        if (finding.Version.Content is NotRegulated)
            yield return Part.NotRegulated;

        static Part PartOf(LimitCheck check) => new(check.Tier.Name, check.Limit.Measure);
    }
}
