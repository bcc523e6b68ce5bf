using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Tells what a version gives, by which tier and limits.</summary>
internal static class FindingReader
{
    public static Finding Read(Book book, ResolvedVersion version, bool certain, FactSet facts, DateOnly on)
    {
        var outcome = OutcomeOf(book, version, facts);
        var tiers = version.Content is Stated stated ? stated.Tiers : [];
        var deciding = tiers.FirstOrDefault(tier => Judge.Holds(tier, version, facts) != Truth.No && (!outcome.Decided || tier.Pathway == outcome.Best));
        var easier = deciding is null ? tiers : tiers.RemoveAll(tier => tier.Pathway >= deciding.Pathway);
        return new Finding(
            version,
            certain,
            outcome,
            deciding,
            deciding is null ? [] : [.. Check(book, version, deciding, facts)],
            [.. easier.Where(tier => WhenHolds(tier, version, facts)).SelectMany(tier => Check(book, version, tier, facts)).Where(check => check.Holds == Truth.No)],
            deciding is null ? [] : [.. deciding.Provided.Select(name => new ConditionState(book.Vocabulary.Conditions[name], State(name, facts)))],
            deciding is null ? [] : Resolver.Cited(book, version.Rule, deciding.Sources),
            version.Content is NotEstablished { Indication: { } indication } ? Indicate(book, indication, facts, on) : null);
    }

    private static Outcome OutcomeOf(Book book, ResolvedVersion version, FactSet facts)
    {
        var situation = new Situation(facts, ImmutableSortedDictionary<string, ImmutableArray<ResolvedVersion>>.Empty.Add(version.Rule.Id, [version]));
        return Completions.Try(situation, Openings.Of(situation, book.Vocabulary), known => Judge.Try(version, known.Facts)).Outcome;
    }

    private static IEnumerable<LimitCheck> Check(Book book, ResolvedVersion version, Tier tier, FactSet facts) => tier.Limits
        .Select(limit => new LimitCheck(
            tier, book.Vocabulary.Measures[limit.Measure], limit, facts.Measure(limit.Measure, version.Parts), Judge.Holds(limit, version, facts)))
        .Select(check => check with { Guarded = Guard(check, version, facts) });

    private static GuardedResult? Guard(LimitCheck check, ResolvedVersion version, FactSet facts)
    {
        var uncertainty = facts.Uncertainty(check.Measure.Name, version.Parts);
        return uncertainty.IsPositive && check.Value.Exact is { } value && check.Bound is { } bound
            ? GuardedResult.Of(value, uncertainty, bound.Value, check.IsUpper ? LimitSense.AtMost : LimitSense.AtLeast, facts.GuardFactor)
            : null;
    }

    private static bool WhenHolds(Tier tier, ResolvedVersion version, FactSet facts) =>
        Judge.Holds(tier with { Limits = [], Provided = [] }, version, facts) == Truth.Yes;

    private static Truth State(string condition, FactSet facts) =>
        facts.Shown.TryGetValue(condition, out var met) ? met ? Truth.Yes : Truth.No : Truth.Unknown;

    private static Indication? Indicate(Book book, string rule, FactSet facts, DateOnly on) => book.Rule(rule) is { } guideline
        ? new Indication(guideline.Id, Resolver.Resolve(book, guideline, on).Select(version => OutcomeOf(book, version, facts)).Aggregate((left, right) => left.Or(right)))
        : null;
}
