using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>
/// Rules of a table as they are and as another book has them. They are compared on a table of their own, so that a whole table is compiled
/// only for a job that can feel the change. Not safe for several threads at once.
/// </summary>
internal sealed class RulesChanged : IEquatable<RulesChanged>
{
    private readonly DecisionTable table;
    private readonly ImmutableArray<(int At, RuleInForce Now)> changes;
    private readonly bool readsOther;
    private readonly Lazy<Row> alone;
    private readonly Lazy<DecisionTable> whole;

    private RulesChanged(Book book, DecisionTable table, ImmutableArray<(int At, RuleInForce Now)> changes)
    {
        (this.table, this.changes) = (table, changes);
        readsOther = changes.Any(change => !Read(table.InForce[change.At]).SetEquals(Read(change.Now)));
        alone = new(() =>
            TableBuilder
                .Build(
                    book.Vocabulary,
                    [.. changes.Select(change => table.InForce[change.At]), .. changes.Select(change => change.Now)],
                    []
                )
                .NewRow()
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
    /// <param name="focus">Where alone the change makes a difference.</param>
    public Felt By(FactSet facts, Focus focus)
    {
        if (readsOther)
            return Felt.Otherwise;
        if (!changes.Any(change => table.InForce[change.At].Candidates.Concat(change.Now.Candidates).Any(one => focus.Reaches(facts, one))))
            return Felt.Bound;
        alone.Value.Set(facts);
        return Enumerable.Range(0, changes.Length).Max(Feels);
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

    /// <summary>What versions read: which topics a job touches hangs on it, and whether they speak of what it changes.</summary>
    private static HashSet<string> Read(RuleInForce rule) =>
        [.. rule.Candidates.SelectMany(version => version.Reads().Append(version.Content is Stated ? "" : "nothing stated"))];

    private Felt Feels(int rule)
    {
        var both = alone.Value.Table;
        var (old, now) = (both.Rules[rule], both.Rules[changes.Length + rule]);
        var versions = old.EndVersion - old.FirstVersion;
        return now.EndVersion - now.FirstVersion == versions
            ? Enumerable.Range(0, versions).Max(i => Feels(Only(old, i), Only(now, i)))
            : Felt.Otherwise;
    }

    private static RuleLine Only(RuleLine rule, int version) =>
        rule with
        {
            FirstVersion = rule.FirstVersion + version,
            EndVersion = rule.FirstVersion + version + 1,
        };

    private Felt Feels(RuleLine old, RuleLine now)
    {
        var both = alone.Value.Table;
        var row = alone.Value.Cells;
        if (!new Alike(both, old, now, conditions: false).On(row.ToArray()))
            return Felt.Otherwise;
        if (both.Binds(old.FirstVersion, row) == Truth.No && both.Binds(now.FirstVersion, row) == Truth.No)
            return Felt.Nothing;
        if (both.Version(old.FirstVersion).WarningOnly != both.Version(now.FirstVersion).WarningOnly)
            return Felt.Told;
        var (tiers, changed) = (both.Version(old.FirstVersion).Tiers(), both.Version(now.FirstVersion).Tiers());
        if (tiers.Length != changed.Length)
            return Felt.Told;
        for (var tier = 0; tier < tiers.Length; tier++)
            if (
                both.Holds(old.FirstVersion, tier, row) != both.Holds(now.FirstVersion, tier, row)
                || both.When(old.FirstVersion, tier, row) != both.When(now.FirstVersion, tier, row)
                || tiers[tier].Pathway != changed[tier].Pathway
                || !tiers[tier].Provided.SequenceEqual(changed[tier].Provided)
                || !tiers[tier].Codes.SequenceEqual(changed[tier].Codes)
            )
                return Felt.Told;
        return Felt.Bound;
    }
}
