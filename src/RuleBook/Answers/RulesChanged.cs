using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>
/// Rules of a table as they are and as another book has them. They are compared on tables of their own, so that a whole table is compiled
/// only for a job that can feel the change.
/// </summary>
internal sealed class RulesChanged : IEquatable<RulesChanged>
{
    private readonly DecisionTable table;
    private readonly ImmutableArray<(int At, RuleInForce Now)> changes;
    private readonly Lazy<(DecisionTable Here, DecisionTable There)> alone;
    private readonly Lazy<DecisionTable> whole;

    private RulesChanged(Book book, DecisionTable table, ImmutableArray<(int At, RuleInForce Now)> changes)
    {
        (this.table, this.changes) = (table, changes);
        alone = new(() =>
            (
                TableBuilder.Build(book.Vocabulary, [.. changes.Select(change => table.InForce[change.At])], []),
                TableBuilder.Build(book.Vocabulary, [.. changes.Select(change => change.Now)], [])
            )
        );
        whole = new(() => TableBook.Of(book).Build(changes.Aggregate(table.InForce, (all, change) => all.SetItem(change.At, change.Now))));
    }

    /// <summary>The table with the rules changed.</summary>
    public DecisionTable Whole => whole.Value;

    /// <summary>
    /// The rules of a table of which something else may be in force in another book on the days that decide; null where there is none.
    /// </summary>
    public static RulesChanged? Of(
        DecisionTable table,
        Book book,
        Book other,
        ImmutableArray<string> rules,
        Func<Rule, ImmutableArray<DateOnly>> days
    )
    {
        var changes = ImmutableArray.CreateBuilder<(int At, RuleInForce Now)>();
        foreach (var id in rules)
        {
            var at = table.RuleIds.IndexOf(id);
            if (at < 0)
                continue;
            var rule = other.Rule(id)!;
            var now = RuleInForce.On(other, rule, days(rule));
            if (!now.Candidates.SequenceEqual(table.InForce[at].Candidates, SameContent.Instance))
                changes.Add((at, now));
        }

        return changes.Count == 0 ? null : new RulesChanged(book, table, changes.ToImmutable());
    }

    /// <summary>How a job can feel the change.</summary>
    /// <param name="facts">What is known of it.</param>
    public Felt By(FactSet facts)
    {
        var (here, there) = alone.Value;
        Row before = here.NewRow(),
            after = there.NewRow();
        before.Set(facts);
        after.Set(facts);
        var felt = Felt.Nothing;
        for (var rule = 0; rule < changes.Length && felt != Felt.Otherwise; rule++)
            felt = (Felt)Math.Max((int)felt, (int)Feels(here, before.Cells, there, after.Cells, rule));
        return felt;
    }

    /// <summary>Whether the same rules are changed to the same.</summary>
    public bool Equals(RulesChanged? other) =>
        other is not null
        && ReferenceEquals(table, other.table)
        && changes.Length == other.changes.Length
        && changes
            .Zip(other.changes)
            .All(pair =>
                pair.First.At == pair.Second.At && pair.First.Now.Candidates.SequenceEqual(pair.Second.Now.Candidates, SameContent.Instance)
            );

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RulesChanged);

    /// <inheritdoc/>
    public override int GetHashCode() => table.GetHashCode();

    private static Felt Feels(DecisionTable here, ReadOnlySpan<ulong> left, DecisionTable there, ReadOnlySpan<ulong> right, int rule)
    {
        var (old, now) = (here.InForce[rule].Candidates, there.InForce[rule].Candidates);
        if (old.Length != now.Length)
            return Felt.Otherwise;
        var felt = Felt.Nothing;
        for (var i = 0; i < old.Length; i++)
        {
            var (own, others) = (here.Rules[rule].FirstVersion + i, there.Rules[rule].FirstVersion + i);
            var binds = here.Binds(own, left);
            if (binds != there.Binds(others, right) || binds == Truth.Unknown)
                return Felt.Otherwise;
            if (binds == Truth.No)
                continue;
            felt = Felt.Bound;
            var (open, opened) = (default(AnyWatch), default(AnyWatch));
            if (here.JudgeVersion(own, left, ref open) != there.JudgeVersion(others, right, ref opened) || open.Found || opened.Found)
                return Felt.Otherwise;
            var (tiers, changed) = (old[i].Tiers(), now[i].Tiers());
            if (tiers.Length != changed.Length)
                return Felt.Otherwise;
            for (var tier = 0; tier < tiers.Length; tier++)
                if (
                    here.Holds(own, tier, left) != there.Holds(others, tier, right)
                    || here.When(own, tier, left) != there.When(others, tier, right)
                    || tiers[tier].Pathway != changed[tier].Pathway
                    || !tiers[tier].Provided.SequenceEqual(changed[tier].Provided)
                )
                    return Felt.Otherwise;
        }

        return felt;
    }
}
