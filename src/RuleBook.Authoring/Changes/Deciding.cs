using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
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
        var facts = new FactSet(
            witness.Words,
            ImmutableDictionary<string, Derived>.Empty,
            witness.NotShown.ToImmutableDictionary(condition => condition, _ => false)
        );
        foreach (var (measure, value) in witness.Measures)
            facts = facts.With(measure.Name, value, "");
        var found = pairs
            .Select(pair => (pair, old: Try(before, pair.Before, facts, witness.Day), now: Try(after, pair.After, facts, witness.Day)))
            .OrderByDescending(each => each.old != each.now)
            .ThenByDescending(each => each.now is not null)
            .ThenByDescending(each => each.now?.Worst)
            .First()
            .pair;
        return (found, found.After is { } rule ? Where(after, rule, facts, witness.Day) : Where(before, found.Before!, facts, witness.Day));
    }

    private static Outcome? Try(Book book, Rule? rule, FactSet facts, DateOnly day)
    {
        if (rule is null)
            return null;
        var bind = Versions(book, rule, facts, day).ToArray();
        return bind.Length == 0 ? null : bind.Select(Given).Aggregate((left, right) => left.Or(right));
    }

    /// <summary>The tier that may hold, or the version when none does; the rule where nothing is recorded or it does not bind.</summary>
    private static Mark Where(Book book, Rule rule, FactSet facts, DateOnly day)
    {
        foreach (var judged in Versions(book, rule, facts, day))
        {
            if (judged.Version.Tiers().FirstOrDefault(tier => judged.Holds(tier) != Truth.No) is { } holds)
                return holds.Mark;
            if (
                rule.Versions.FirstOrDefault(own => own.Decides && own.From == judged.Version.From && !judged.Version.Sources.IsEmpty) is
                { } written
            )
                return written.Mark;
        }

        return rule.Mark;
    }

    private static Outcome Given(VersionOnRow judged)
    {
        var watch = default(NoWatch);
        return judged.Table.JudgeVersion(judged.At, judged.Row.Cells, ref watch);
    }

    /// <summary>The versions that bind or may bind.</summary>
    private static IEnumerable<VersionOnRow> Versions(Book book, Rule rule, FactSet facts, DateOnly day)
    {
        var table = TableBook.Of(book).Table(rule, day);
        var row = table.NewRow();
        row.Set(facts);
        return Enumerable
            .Range(0, table.Versions.Length)
            .Select(version => new VersionOnRow(table, row, 0, version))
            .Where(judged => judged.Binds != Truth.No);
    }
}
