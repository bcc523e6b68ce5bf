using System.Collections.Immutable;
using System.Numerics;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// What every completion of what is not known gives (supervaluation), so that a fact which cannot change the verdict is not asked for. It
/// steps through cells, and only where a rule hangs on them: each rule becomes a small function of what it asks for, and these are joined.
/// </summary>
internal sealed class Completion
{
    /// <summary>
    /// Beyond so many looks at a rule the last openings are left to three-valued logic, which is never wrong, only wider.
    /// </summary>
    private const int MostLooks = 20_000;

    private const int MostNodes = 30_000;
    private const ulong Bound = 1 << 4;
    private const int Speaks = 5;
    private const int Changed = 34;

    private readonly DecisionTable table;
    private readonly Touched touched;
    private readonly Row row;
    private readonly ulong[] openings;
    private readonly ImmutableArray<Unknown> unknowns;
    private readonly int root;
    private Diagram diagram = null!; // made before anything is tried
    private ulong free;
    private int looks;

    /// <summary>Completes a verdict.</summary>
    public Completion(DecisionTable table, Row row, Touched touched)
    {
        (this.table, this.row, this.touched) = (table, row, touched);
        (unknowns, openings) = ([], []);
        var any = default(AnyWatch);
        Outcome = table.Judge(row.Cells, touched, ref any);
        if (Outcome.Decided || (!any.Found && !MayBeUnchanged().Any()))
            return; // three-valued logic is never too narrow, so that what it decides no completion changes
        var rules = table.RulesOn(touched.Topics);
        (unknowns, this.row, openings) = Open(rules);
        if (unknowns.IsEmpty)
            return;
        root = Within(() => Verdict(rules));
        Outcome = Span(root);
    }

    /// <summary>Completes what a single version gives.</summary>
    public Completion(DecisionTable table, Row row, int rule, int version)
    {
        (this.table, this.row) = (table, row);
        (unknowns, openings) = ([], []);
        var any = default(AnyWatch);
        Outcome = table.JudgeVersion(version, row.Cells, ref any);
        if (Outcome.Decided || !any.Found)
            return;
        (unknowns, this.row, openings) = Open([rule]);
        if (unknowns.IsEmpty)
            return;
        root = Within(() => Look(new Subject(Subjects.Version, version)));
        Outcome = Span(root);
    }

    /// <summary>The pathways possible.</summary>
    public Outcome Outcome { get; }

    /// <summary>What is not known and can change the outcome, with what each option would give.</summary>
    public ImmutableArray<Effect> Effects() =>
        [.. Enumerable.Range(0, unknowns.Length).Where(Matters).Select(i => new Effect(unknowns[i].Opening, Gives(i)))];

    private (ImmutableArray<Unknown> Unknowns, Row Row, ulong[] Openings) Open(IReadOnlyList<int> rules)
    {
        var found = Unknowns.Of(table, row, rules);
        var bits = new ulong[table.Width];
        for (var i = 0; i < found.Length; i++)
            foreach (var column in found[i].Columns)
                bits[column] |= 1ul << i;
        return (found, row.Copy(), bits);
    }

    /// <summary>Tries with all openings, and with fewer and fewer where that is too much.</summary>
    private int Within(Func<int> build)
    {
        for (var left = unknowns.Length; ; left /= 2)
        {
            (diagram, looks) = (new Diagram(MostNodes), 0);
            free = left == 0 ? 0 : ulong.MaxValue >> (64 - left);
            var built = build();
            if (left == 0 || (looks <= MostLooks && !diagram.IsFull))
                return built;
        }
    }

    private int Verdict(ImmutableArray<int> rules)
    {
        var verdict = diagram.Of((touched.Topics & table.WithoutRules) != 0 ? Pack(Outcome.Open) : 0);
        foreach (var topic in rules.GroupBy(rule => table.Rules[rule].Topic))
        {
            var own = touched.Own & table.OwnOf(topic.Key);
            var joined = topic.Aggregate(
                diagram.Of(own << Changed),
                (all, rule) => diagram.Join(all, Look(new Subject(Subjects.Rule, rule)), Join)
            );
            foreach (var movement in MayBeUnchanged().Where(movement => (table.Movements[movement].Own & own) != 0))
                joined = diagram.Join(
                    diagram.Map(joined, value => value & ~(table.Movements[movement].Own << Changed)),
                    Look(new Subject(Subjects.Movement, movement)),
                    Join
                );
            verdict = diagram.Join(verdict, diagram.Map(joined, Close), Join);
        }

        return verdict;
    }

    /// <summary>A topic on which no rule binds is open, and so is one with a change that asks for a rule and finds none.</summary>
    private static ulong Close(ulong value) =>
        (value & Bound) == 0 || (value >> Changed & ~(value >> Speaks)) != 0 ? Pack(Unpack(value).And(Outcome.Open)) : Pack(Unpack(value));

    private int Look(Subject subject)
    {
        var (value, found) = Judge(subject);
        return Split(subject, value, found);
    }

    private int Split(Subject subject, ulong value, ulong found)
    {
        if (found == 0 || looks > MostLooks || diagram.IsFull)
            return diagram.Of(value);
        var opening = BitOperations.TrailingZeroCount(found);
        var unknown = unknowns[opening];
        var children = new int[unknown.Count];
        Fill(subject, opening, 0, children.Length - 1, children);
        unknown.Put(row, 0, unknown.Count - 1);
        return diagram.Of(opening, children);
    }

    /// <summary>Halves the options until the rest does not hang on which of them it is.</summary>
    private void Fill(Subject subject, int opening, int first, int last, int[] children)
    {
        unknowns[opening].Put(row, first, last);
        if (first == last)
            free &= ~(1ul << opening);
        var (value, found) = Judge(subject);
        if ((found >> opening & 1) == 0)
        {
            var child = Split(subject, value, found);
            children.AsSpan(first, last - first + 1).Fill(child);
        }
        else
        {
            var middle = (first + last) / 2;
            Fill(subject, opening, first, middle, children);
            Fill(subject, opening, middle + 1, last, children);
        }

        if (first == last)
            free |= 1ul << opening;
    }

    private (ulong Value, ulong Found) Judge(Subject subject)
    {
        looks++;
        var watch = new OpeningWatch(openings);
        switch (subject.Kind)
        {
            case Subjects.Version:
                return (Pack(table.JudgeVersion(subject.At, row.Cells, ref watch)), watch.Found & free);
            case Subjects.Movement:
                ref readonly var movement = ref table.Movements[subject.At];
                if (movement.MayBeUnchanged(row.Cells))
                    watch.Add(movement.Column);
                return (movement.Moves(row.Cells) ? movement.Own << Changed : 0, watch.Found & free);
            default:
                var given = table.Judge(subject.At, row.Cells, ref watch);
                return (Pack(given.Outcome) | (given.Binds == Truth.Yes ? Bound : 0) | given.Speaks << Speaks, watch.Found & free);
        }
    }

    private Outcome Span(int node) => Span(node, []);

    private Outcome Span(int node, Dictionary<int, Outcome> done)
    {
        if (diagram.VariableOf(node) == Diagram.Leaf)
            return Unpack(diagram.ValueOf(node));
        if (done.TryGetValue(node, out var known))
            return known;
        var children = diagram.ChildrenOf(node);
        var all = Span(children[0], done);
        foreach (var child in children[1..])
            all = all.Or(Span(child, done));
        return done[node] = all;
    }

    private bool Matters(int opening) => Visit(root, [], node => diagram.VariableOf(node) == opening);

    /// <summary>What each option of an opening gives, whatever the others are.</summary>
    private ImmutableArray<Outcome> Gives(int opening)
    {
        var spans = new Dictionary<int, Outcome>();
        var gives = new Outcome?[unknowns[opening].Count];
        Visit(
            root,
            [],
            node =>
            {
                if (diagram.VariableOf(node) < opening)
                    return false;
                var own = diagram.VariableOf(node) == opening ? diagram.ChildrenOf(node) : [];
                for (var i = 0; i < gives.Length; i++)
                {
                    var here = Span(own.IsEmpty ? node : own[i], spans);
                    gives[i] = gives[i]?.Or(here) ?? here;
                }

                return false;
            },
            opening
        );
        return [.. gives.Select(each => each!.Value)];
    }

    /// <summary>
    /// Visits the nodes, and below those of variables before <paramref name="until"/> their children; stops where one is what is looked
    /// for.
    /// </summary>
    private bool Visit(int node, HashSet<int> seen, Func<int, bool> wanted, int until = Diagram.Leaf)
    {
        if (!seen.Add(node))
            return false;
        if (wanted(node))
            return true;
        if (diagram.VariableOf(node) >= until)
            return false;
        foreach (var child in diagram.ChildrenOf(node))
            if (Visit(child, seen, wanted, until))
                return true;
        return false;
    }

    private static ulong Join(ulong left, ulong right) => Pack(Unpack(left).And(Unpack(right))) | (left | right) & ~0xFul;

    private static ulong Pack(Outcome outcome) => (ulong)outcome.Best | (ulong)outcome.Worst << 2;

    private static Outcome Unpack(ulong value) => new((Pathway)(value & 3), (Pathway)(value >> 2 & 3));

    /// <summary>The changes asking for a rule of their own of which it is not known whether there is one.</summary>
    private IEnumerable<int> MayBeUnchanged() =>
        Enumerable
            .Range(0, table.Movements.Length)
            .Where(at => (table.Movements[at].Own & touched.Own) != 0 && table.Movements[at].MayBeUnchanged(row.Cells));

    /// <summary>What is looked at: a rule, one version of it alone, or whether a measure is changed.</summary>
    private readonly record struct Subject(Subjects Kind, int At);

    private enum Subjects
    {
        Rule,
        Version,
        Movement,
    }
}
