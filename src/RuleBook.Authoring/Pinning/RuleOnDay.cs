using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Pinning;

/// <summary>A day that stands for a stretch of days, with what may be in force of a rule before and after a change.</summary>
/// <param name="Rule">The rule as it is.</param>
/// <param name="Day">The first day.</param>
/// <param name="Old">Before the change.</param>
/// <param name="Now">After it.</param>
internal sealed record RuleOnDay(Rule Rule, DateOnly Day, ImmutableArray<ResolvedVersion> Old, ImmutableArray<ResolvedVersion> Now)
{
    /// <summary>Whether the change is to the vehicles that the rule binds, or to how a total is counted by which it tells them.</summary>
    public bool OtherVehicles =>
        Old.Concat(Now)
            .Any(version =>
                !ReferenceEquals(version.Rule.For, Rule.For)
                || (Rule.For.Tests.Any(test => test.Fact == FactSet.TotalLift) && !version.Parts.SequenceEqual(Old[0].Parts))
            );

    /// <summary>The same with the rule binding every vehicle.</summary>
    public RuleOnDay OfEveryVehicle => this with { Old = [.. Old.Select(Unbound)], Now = [.. Now.Select(Unbound)] };

    /// <summary>The days on which something else is in force of a rule.</summary>
    public static IEnumerable<RuleOnDay> Of(Book before, Book after, string id)
    {
        var (old, now) = (before.Rule(id)!, after.Rule(id)!);
        return DayEdges
            .Of(before, [old])
            .Concat(DayEdges.Of(after, [now]))
            .Distinct()
            .Order()
            .Select(day => new RuleOnDay(old, day, Resolver.Resolve(before, old, day), Resolver.Resolve(after, now, day)))
            .Where(stretch => !stretch.Old.SequenceEqual(stretch.Now, SameContent.Instance));
    }

    /// <summary>Those of several rules that say something else, whatever vehicles the rules bind.</summary>
    public static IEnumerable<RuleOnDay> SayingOther(IEnumerable<RuleOnDay> stretches)
    {
        var seen = new List<RuleOnDay>();
        foreach (var stretch in stretches)
            if (!seen.Exists(other => SaySame(other.Old, stretch.Old) && SaySame(other.Now, stretch.Now)))
                seen.Add(stretch);
        return seen;
    }

    private static bool SaySame(ImmutableArray<ResolvedVersion> left, ImmutableArray<ResolvedVersion> right) =>
        left.Length == right.Length && left.Zip(right).All(pair => SameContent.SaySame(pair.First, pair.Second));

    private static ResolvedVersion Unbound(ResolvedVersion version) =>
        version with
        {
            Rule = version.Rule with { For = Descriptions.Everything },
        };
}
