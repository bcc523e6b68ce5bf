using System.Runtime.CompilerServices;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>What one rule gives: whether it binds, the pathways, and what the tier that decides asks to be met or shown.</summary>
/// <param name="Binds">Whether it binds the vehicle.</param>
/// <param name="Outcome">The pathways possible; meaningless where it does not bind.</param>
/// <param name="Conditions">The conditions of the first tiers that may hold, of all versions that may be in force.</param>
/// <param name="WarningOnly">Whether a breach brings a warning only.</param>
internal readonly record struct RuleAnswer(Truth Binds, Outcome Outcome, string Conditions, Truth WarningOnly)
{
    private const string Between = ", ";

    private static readonly ConditionalWeakTable<Tier, string> Joined = [];

    private static readonly RuleAnswer None = new(Truth.No, new(Pathway.NoCertificate, Pathway.NoCertificate), "", Truth.No);

    /// <summary>The answer of a rule of a table.</summary>
    public static RuleAnswer Of(DecisionTable table, int rule, ReadOnlySpan<ulong> row)
    {
        var watch = default(NoWatch);
        return Of(table, table.Rules[rule], row, ref watch);
    }

    /// <summary>The answer of a rule of a table, and what it hangs on.</summary>
    public static RuleAnswer Of<TWatch>(DecisionTable table, RuleLine line, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch
    {
        var answer = None;
        for (var version = line.FirstVersion; version < line.EndVersion; version++)
        {
            var binds = table.Binds(version, row, ref watch);
            if (binds == Truth.No)
                continue;
            var (outcome, conditions) = (table.JudgeVersion(version, row, ref watch), Asked(table, version, row));
            var warns = table.Version(version).WarningOnly ? Truth.Yes : Truth.No;
            answer =
                answer.Binds == Truth.No
                    ? new RuleAnswer(binds, outcome, conditions, warns)
                    : new RuleAnswer(
                        binds > answer.Binds ? binds : answer.Binds,
                        answer.Outcome.Or(outcome),
                        answer.Conditions == conditions ? conditions : Joint(answer.Conditions, conditions),
                        answer.WarningOnly == warns ? warns : Truth.Unknown
                    );
        }

        return answer;
    }

    /// <summary>In words, for a reader.</summary>
    public override string ToString() =>
        Binds == Truth.No
            ? "the rule does not bind"
            : Wording.Of(Outcome)
                + (Conditions.Length == 0 ? "" : $", provided {Conditions}")
                + WarningOnly switch
                {
                    Truth.Yes => ", a breach brings a warning only",
                    Truth.Unknown => ", a breach may bring a warning only",
                    _ => "",
                };

    private static string Asked(DecisionTable table, int version, ReadOnlySpan<ulong> row)
    {
        if (table.Version(version).Content is not Stated stated)
            return "";
        for (var tier = 0; tier < stated.Tiers.Length; tier++)
            if (table.Holds(version, tier, row) != Truth.No)
                return stated.Tiers[tier].Provided.Length switch
                {
                    0 => "",
                    1 => stated.Tiers[tier].Provided[0],
                    _ => Joined.GetValue(
                        stated.Tiers[tier],
                        static tier => string.Join(Between, tier.Provided.Order(StringComparer.Ordinal))
                    ),
                };
        return "";
    }

    private static string Joint(string left, string right) =>
        string.Join(
            Between,
            left.Split(Between).Union(right.Split(Between)).Where(condition => condition.Length > 0).Order(StringComparer.Ordinal)
        );
}
