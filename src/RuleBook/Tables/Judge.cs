using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>The pathways that a rule can give: one when <see cref="Best"/> equals <see cref="Worst"/>.</summary>
/// <param name="Best">The least onerous.</param>
/// <param name="Worst">The most onerous.</param>
public readonly record struct Outcome(Pathway Best, Pathway Worst)
{
    /// <summary>Nothing is known.</summary>
    public static Outcome Open { get; } = new(Pathway.NoCertificate, Pathway.Prohibited);

    /// <summary>Whether one pathway is left.</summary>
    public bool Decided => Best == Worst;

    /// <summary>Both apply: the more onerous of each.</summary>
    public Outcome And(Outcome other) => new(Max(Best, other.Best), Max(Worst, other.Worst));

    /// <summary>Either may apply.</summary>
    public Outcome Or(Outcome other) => new(Best < other.Best ? Best : other.Best, Max(Worst, other.Worst));

    private static Pathway Max(Pathway left, Pathway right) => left > right ? left : right;
}

/// <summary>Tries one version tier by tier, in three-valued logic.</summary>
public static class Judge
{
    /// <summary>Whether the rule binds the vehicle.</summary>
    public static Truth Binds(ResolvedVersion version, FactSet facts) => Holds(version.Rule.For, version, facts);

    /// <summary>
    /// The pathways that the version can give for what is known. Where nobody has established what holds beyond the tiers, it is more onerous
    /// than those exceeded, but never for that alone prohibited.
    /// </summary>
    public static Outcome Try(ResolvedVersion version, FactSet facts)
    {
        if (version.Content is NotRegulated) return new Outcome(Pathway.NoCertificate, Pathway.NoCertificate);
        if (version.Content is not Stated stated) return Outcome.Open;

        Outcome? open = null;
        var exceeded = Pathway.NoCertificate;
        foreach (var tier in stated.Tiers)
        {
            var holds = Holds(tier, version, facts);
            if (holds == Truth.No)
            {
                if (tier.Pathway < Pathway.Prohibited && Holds(tier.When, version, facts) == Truth.Yes)
                    exceeded = tier.Pathway < Pathway.Approval ? tier.Pathway + 1 : Pathway.Approval;
                continue;
            }

            open = Or(open, tier.Pathway, tier.Pathway);
            if (holds == Truth.Yes) return open.Value;
        }

        return Or(open, stated.Beyond ?? exceeded, stated.Beyond ?? Pathway.Prohibited);
    }

    /// <summary>Whether a tier is open to the job: its facts, all its limits and all its conditions.</summary>
    public static Truth Holds(Tier tier, ResolvedVersion version, FactSet facts) => tier.Limits
        .Select(limit => Holds(limit, version, facts))
        .Prepend(Holds(tier.When, version, facts))
        .Prepend(tier.Provided.Any(condition => facts.Shown.TryGetValue(condition, out var met) && !met) ? Truth.No : Truth.Yes)
        .All();

    /// <summary>Whether a limit is kept; unknown where it is not established.</summary>
    public static Truth Holds(Limit limit, ResolvedVersion version, FactSet facts) => limit.Kind switch
    {
        LimitKind.None => Truth.Yes,
        LimitKind.NotEstablished => Truth.Unknown,
        _ => facts.Measure(limit.Measure, version.Parts).Within(limit.Bounds!),
    };

    /// <summary>Whether all tests of a predicate pass, with the usual parts of the total.</summary>
    public static Truth Holds(Predicate predicate, FactSet facts) => Holds(predicate, FactSet.PartsOf(null), facts);

    private static Truth Holds(Predicate predicate, ResolvedVersion version, FactSet facts) => Holds(predicate, version.Parts, facts);

    private static Truth Holds(Predicate predicate, ImmutableArray<string> parts, FactSet facts) =>
        predicate.Tests.Select(test => Holds(test, parts, facts)).All();

    private static Truth Holds(FactTest test, ImmutableArray<string> parts, FactSet facts)
    {
        if (test.Bounds is { } bounds) return facts.Measure(test.Fact, parts).Within(bounds);
        if (!facts.Words.TryGetValue(test.Fact, out var word)) return Truth.Unknown;
        return test.OneOf.Contains(word) ? Truth.Yes : Truth.No;
    }

    private static Outcome Or(Outcome? open, Pathway best, Pathway worst) => open is { } other ? other.Or(new(best, worst)) : new(best, worst);
}
