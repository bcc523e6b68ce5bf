using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>Which of some rules makes the difference at a point, and where it is written.</summary>
internal static class Deciding
{
    public static (RulePair Pair, Mark Mark) Of(IReadOnlyList<RulePair> pairs, Book before, Book after, Witness witness)
    {
        var facts = witness.NotShown.Aggregate(
            new FactSet(witness.Words, ImmutableDictionary<string, Derived>.Empty, ImmutableDictionary<string, bool>.Empty), Space.NotShown);
        foreach (var (measure, value) in witness.Measures) facts = facts.With(measure.Name, value, "");
        var found = pairs
            .Select(pair => (pair, old: Try(before, pair.Before, facts, witness.Day), now: Try(after, pair.After, facts, witness.Day)))
            .OrderByDescending(each => each.old != each.now)
            .ThenByDescending(each => each.now is not null)
            .ThenByDescending(each => each.now?.Worst)
            .First().pair;
        return (found, found.After is { } rule ? Where(after, rule, facts, witness.Day) : Where(before, found.Before!, facts, witness.Day));
    }

    private static Outcome? Try(Book book, Rule? rule, FactSet facts, DateOnly day)
    {
        if (rule is null) return null;
        var versions = Resolver.Resolve(book, rule, day).Where(version => Judge.Binds(version, facts) != Truth.No).ToArray();
        return versions.Length == 0 ? null : versions.Select(version => Judge.Try(version, facts)).Aggregate((left, right) => left.Or(right));
    }

    /// <summary>The tier that may hold, or the version when none does; the rule where nothing is recorded or it does not bind.</summary>
    private static Mark Where(Book book, Rule rule, FactSet facts, DateOnly day)
    {
        foreach (var version in Resolver.Resolve(book, rule, day).Where(version => Judge.Binds(version, facts) != Truth.No))
        {
            var tiers = version.Content is Stated stated ? stated.Tiers : [];
            if (tiers.FirstOrDefault(tier => Judge.Holds(tier, version, facts) != Truth.No) is { } holds) return holds.Mark;
            if (rule.Versions.FirstOrDefault(own => own.Decides && own.From == version.From && !version.Sources.IsEmpty) is { } written) return written.Mark;
        }

        return rule.Mark;
    }
}
