using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>What one rule gives: whether it binds, the pathways, and what the tier that decides asks to be met or shown.</summary>
/// <param name="Binds">Whether it binds the vehicle.</param>
/// <param name="Outcome">The pathways possible; meaningless where it does not bind.</param>
/// <param name="Conditions">The conditions of the first tiers that may hold.</param>
internal sealed record RuleAnswer(Truth Binds, Outcome Outcome, string Conditions)
{
    private static readonly RuleAnswer None = new(Truth.No, new(Pathway.NoCertificate, Pathway.NoCertificate), "");

    /// <summary>The answer of versions of which each may be in force.</summary>
    public static RuleAnswer Of(ImmutableArray<ResolvedVersion> candidates, FactSet facts)
    {
        var answer = None;
        foreach (var version in candidates)
        {
            var binds = Judge.Binds(version, facts);
            if (binds == Truth.No) continue;
            var (outcome, conditions) = (Judge.Try(version, facts), Asked(version, facts));
            answer = answer.Binds == Truth.No ? new RuleAnswer(binds, outcome, conditions)
                : new RuleAnswer(binds > answer.Binds ? binds : answer.Binds, answer.Outcome.Or(outcome), answer.Conditions == conditions ? conditions : $"{answer.Conditions} / {conditions}");
        }

        return answer;
    }

    /// <summary>In words, for a reader.</summary>
    public override string ToString() => Binds == Truth.No ? "the rule does not bind"
        : Wording.Of(Outcome) + (Conditions.Length == 0 ? "" : $", provided {Conditions}");

    private static string Asked(ResolvedVersion version, FactSet facts) =>
        version.Content is Stated stated && stated.Tiers.FirstOrDefault(tier => Judge.Holds(tier, version, facts) != Truth.No) is { Provided.IsEmpty: false } tier
            ? string.Join(", ", tier.Provided.Order(StringComparer.Ordinal))
            : "";
}
