using System.Collections.Immutable;
using System.Numerics;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// The versions that are in force in a jurisdiction over a span of days, compiled for judging: every bound becomes a set of cells of a
/// column, every tier a run of tests on columns. Judging compares small integers and allocates nothing; what it gives is what the rules
/// say, exactly.
/// </summary>
/// <remarks>
/// <para>
/// A table is immutable and may be used by any number of threads; a <see cref="Row"/> belongs to one thread at a time. Get tables from
/// <see cref="TableBook"/>, which keeps them.
/// </para>
/// <para>
/// Truth is three-valued (Kleene's strong logic): a test on a column of which several cells are possible is yes, no or unknown.
/// <see cref="Judge(Row)"/> walks the table once, or looks up what that gave in the same cells; where facts lack, the outcome is a range
/// of pathways that is never too narrow, and <see cref="Complete(Row)"/> makes it as narrow as trying every value of what lacks would.
/// </para>
/// </remarks>
/// <example>
/// <code>
/// var table = TableBook.Of(book).Table("au-qld", new DateOnly(2026, 11, 20));
/// var (lift, drive) = (table.Input("suspension-lift"), table.Input("four-wheel-drive"));
/// var row = table.NewRow();                       // reuse it for the next job: row.Clear()
/// row.Set(drive, "yes");
/// row.Set(lift, 45);                              // base units: mm, kg, %, days from the common era
/// Outcome outcome = table.Judge(row);             // no-certificate, no-certificate
/// </code>
/// </example>
public sealed partial class DecisionTable
{
    /// <summary>Column 0: never known, for limits that nobody has established.</summary>
    internal const ulong Unestablished = 0b11;

    /// <summary>The cells of a condition.</summary>
    internal const ulong MetOrToShow = 0b01;

    /// <inheritdoc cref="MetOrToShow"/>
    internal const ulong NotMet = 0b10;

    private readonly Test[] tests;
    private readonly TierLine[] tiers;
    private readonly VersionLine[] versions;
    private readonly RuleLine[] rules;
    private readonly TopicLine[] topics;
    private readonly Movement[] movements;
    private readonly ulong[] blank;

    private readonly Axis?[] axisOfSlot;
    private readonly ExactRange?[] absent;
    private readonly long[] absentSteps;
    private readonly ulong[] ownOfTopic;
    private readonly ulong[] movedBy; // by topic, of the first 64 movements those that touch it, a bit each
    private readonly ulong asking; // of the same those that ask for a rule of their own
    private readonly ulong withoutRules;
    private readonly ulong[] testedBy;
    private readonly ulong[] everything; // all cells of each column
    private readonly VerdictsByCell?[] verdictsOfTopic; // each made when first asked
    private readonly bool fitsLanes;
    private readonly Dictionary<string, Input> byName;
    private readonly Dictionary<string, Axis> byQuantity;
    private readonly string[] names;
    private readonly RuleReads?[] reads;
    private readonly UnknownMeasure?[] unknown;
    private readonly ImmutableArray<ResolvedVersion> resolved;

    internal DecisionTable(TableBuilder built)
    {
        (tests, tiers, versions, rules, movements, blank) = (
            built.Tests,
            built.Tiers,
            built.Versions,
            built.Rules,
            built.Movements,
            built.Blank
        );
        (Grid, Axes, Inputs, InForce, Topics, Vocabulary) = (
            built.Grid,
            built.Axes,
            built.Inputs,
            built.InForce,
            built.Topics,
            built.Vocabulary
        );
        Sums = [.. Axes.Where(axis => axis.Sum.Terms.Length > 0)];
        byName = Inputs.DistinctBy(input => input.Name).ToDictionary(input => input.Name, StringComparer.Ordinal);
        byQuantity = new Dictionary<string, Axis>(built.ByQuantity, StringComparer.Ordinal);
        (names, reads, unknown) = (new string[built.Slots], new RuleReads?[rules.Length], new UnknownMeasure?[built.Slots]);
        foreach (var input in Inputs.Where(input => input.Kind == InputKind.Measure))
            names[input.At] = input.Name;
        RuleIds = [.. InForce.Select(rule => rule.Rule.Id)];
        resolved = [.. InForce.SelectMany(rule => rule.Candidates)];
        (axisOfSlot, absent, absentSteps) = (new Axis?[built.Slots], new ExactRange?[built.Slots], new long[built.Slots]);
        absentSteps.AsSpan().Fill(Grid.Nowhere);
        foreach (var axis in Axes.Where(axis => axis.Sum.Terms.Length == 0))
            axisOfSlot[axis.Sum.Slot] = axis;
        foreach (var input in Inputs.Where(input => input.Kind == InputKind.Measure))
        {
            if (Vocabulary.Measures[input.Name].IfAbsent is not { } value)
                continue;
            absentSteps[input.At] = Grid.Holds(value, out var at) ? at : Grid.Off;
            absent[input.At] = new ExactRange(Exact.Of(value));
            axisOfSlot[input.At]?.Put(blank, new ExactRange(Exact.Of(value)));
        }

        AbsentRanges = [.. Enumerable.Range(0, Slots).Where(slot => absentSteps[slot] == Grid.Off)];
        ownOfTopic = new ulong[Topics.Length];
        foreach (var movement in movements)
            for (var topic = 0; topic < ownOfTopic.Length; topic++)
                if ((movement.Suggested >> topic & 1) != 0)
                    ownOfTopic[topic] |= movement.Own;
        movedBy = new ulong[Topics.Length];
        for (var at = 0; at < Math.Min(movements.Length, 64); at++)
        {
            for (var left = movements[at].Topics; left != 0; left &= left - 1)
                movedBy[BitOperations.TrailingZeroCount(left)] |= 1ul << at;
            if (movements[at].Own != 0)
                asking |= 1ul << at;
        }

        fitsLanes = ownOfTopic.All(own => own <= byte.MaxValue);
        testedBy = new ulong[blank.Length];
        foreach (var rule in rules)
        foreach (var run in RunsOf(rule))
        foreach (ref readonly var test in TestsOf(run))
            testedBy[test.Column] |= 1ul << rule.Topic;
        verdictsOfTopic = new VerdictsByCell?[Topics.Length];
        everything = built.Blank;
        foreach (var word in Inputs.Where(input => input.Kind == InputKind.Word))
            everything[word.At] = ulong.MaxValue >> (64 - word.Words.Length);
        foreach (var condition in Inputs.Where(input => input.Kind == InputKind.Condition))
            everything[condition.At] = MetOrToShow | NotMet;
        topics = [.. Enumerable.Range(0, Topics.Length).Select(Line)];
        withoutRules = (1ul << Topics.Length) - 1 & ~rules.Aggregate(0ul, (all, rule) => all | 1ul << rule.Topic);
    }

    /// <summary>
    /// What can be placed: words about the vehicle, measures and conditions, those on which some rule bears and those that a job can
    /// change.
    /// </summary>
    public ImmutableArray<Input> Inputs { get; }

    /// <summary>The topics, in ordinal order.</summary>
    public ImmutableArray<string> Topics { get; }

    /// <summary>Full ids of the rules, in the order of the table.</summary>
    public ImmutableArray<string> RuleIds { get; }

    /// <summary>The rules with the versions that are or may be in force, in ordinal order of their ids.</summary>
    internal ImmutableArray<RuleInForce> InForce { get; }

    /// <summary>The whole numbers on which it counts measures.</summary>
    internal Grid Grid { get; }

    internal ImmutableArray<Axis> Axes { get; }

    /// <summary>The axes whose measures follow from others unless they are stated.</summary>
    internal ImmutableArray<Axis> Sums { get; }

    internal Vocabulary Vocabulary { get; }

    internal int Width => blank.Length;

    internal int Slots => absent.Length;

    internal ReadOnlySpan<RuleLine> Rules => rules;

    internal ReadOnlySpan<VersionLine> Versions => versions;

    internal ReadOnlySpan<TierLine> Tiers => tiers;

    internal ReadOnlySpan<Movement> Movements => movements;

    internal ReadOnlySpan<ulong> Blank => blank;

    /// <summary>Bits of the topics without any rule.</summary>
    internal ulong WithoutRules => withoutRules;

    /// <summary>The table of one rule, of which each version given may be in force; it is judged whatever a row touches.</summary>
    /// <param name="vocabulary">The words that it uses.</param>
    /// <param name="versions">At least one.</param>
    internal static DecisionTable Of(Vocabulary vocabulary, params ImmutableArray<ResolvedVersion> versions) =>
        TableBuilder.Build(vocabulary, [RuleInForce.Of(versions)], []);

    /// <summary>The input of this name.</summary>
    /// <exception cref="KeyNotFoundException">No rule of the table bears on such a fact, and no job changes it.</exception>
    public Input Input(string name) =>
        byName.TryGetValue(name, out var input) ? input : throw new KeyNotFoundException($"no rule of this table reads '{name}'");

    /// <summary>The input of this name, or null where no rule of the table bears on it.</summary>
    public Input? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>A row on which nothing is known but what a job that does not state it leaves as it was.</summary>
    public Row NewRow() => new(this);

    /// <summary>What a job touches: the topics of the rules that read what it moves, and those that the vocabulary names for it.</summary>
    internal Touched Touched(ReadOnlySpan<ulong> row)
    {
        if (movements.Length == 0)
            return new Touched((1ul << Topics.Length) - 1, 0);
        var (topics, own) = (0ul, 0ul);
        foreach (ref readonly var movement in movements.AsSpan())
            if (movement.Moves(row))
                (topics, own) = (topics | movement.Topics, own | movement.Own);
        return new Touched(topics, own);
    }

    /// <summary>What movements touch.</summary>
    /// <param name="moved">A bit for each of the first 64.</param>
    internal Touched Touched(ulong moved)
    {
        if (movements.Length == 0)
            return new Touched((1ul << Topics.Length) - 1, 0);
        var (topics, own) = (0ul, 0ul);
        for (var topic = 0; topic < movedBy.Length; topic++)
            topics |= ((moved & movedBy[topic]) != 0 ? 1ul : 0) << topic;
        for (var left = moved & asking; left != 0; left &= left - 1)
            own |= movements[BitOperations.TrailingZeroCount(left)].Own;
        return new Touched(topics, own);
    }

    /// <summary>The topics that the vocabulary names for what a job moves, whichever rules read it.</summary>
    internal IEnumerable<string> Named(Row row)
    {
        var named = 0ul;
        foreach (ref readonly var movement in movements.AsSpan())
            if (movement.Moves(row.Cells))
                named |= movement.Suggested;
        return Topics.Where((_, at) => (named >> at & 1) != 0);
    }

    /// <summary>The rules on some topics, in their order.</summary>
    /// <param name="topics">A bit each.</param>
    internal ImmutableArray<int> RulesOn(ulong topics) =>
        [.. Enumerable.Range(0, rules.Length).Where(rule => (topics >> rules[rule].Topic & 1) != 0)];

    /// <summary>The measures asking for a rule of their own that the vocabulary names for a topic, a bit each.</summary>
    internal ulong OwnOf(int topic) => ownOfTopic[topic];

    /// <summary>The axis of a measure as a version counts it.</summary>
    internal Axis AxisOf(string measure, ImmutableArray<string> parts) => byQuantity[TableBuilder.Key(measure, parts)];

    /// <summary>What the versions of a rule ask for; made when first asked.</summary>
    internal RuleReads Reads(int rule) => reads[rule] ??= RuleReads.Of(this, InForce[rule]);

    /// <summary>
    /// A measure of which nothing is known and that is part of no sum: the same for every row, and made when first asked.
    /// </summary>
    internal UnknownMeasure Unknown(int slot, Func<UnknownMeasure> make) => unknown[slot] ??= make();

    /// <summary>Name of the measure that is kept in a slot.</summary>
    internal string MeasureOf(int slot) => names[slot];

    /// <summary>Whether a measure lies within bounds.</summary>
    internal static Truth Holds(Axis axis, Bounds bounds, ReadOnlySpan<ulong> row)
    {
        var truth = Truth.Yes;
        foreach (var test in axis.Within(bounds))
        {
            var possible = row[test.Column];
            if ((possible & test.Passes) == 0)
                return Truth.No;
            if ((possible & ~test.Passes) != 0)
                truth = Truth.Unknown;
        }

        return truth;
    }

    /// <summary>The tests of a run.</summary>
    internal ReadOnlySpan<Test> TestsOf(Tests run) => tests.AsSpan(run.First, run.End - run.First);

    /// <summary>The axis of a measure that follows from no other, by its slot.</summary>
    internal Axis? AxisOf(int slot) => axisOfSlot[slot];

    /// <summary>What is known of a measure that a job does not state; null where that is nothing.</summary>
    internal ExactRange? Absent(int slot) => absent[slot];

    /// <summary>Where on the grid that lies, by slot.</summary>
    internal ReadOnlySpan<long> AbsentSteps => absentSteps;

    /// <summary>The slots of which it lies off the grid.</summary>
    internal int[] AbsentRanges { get; }

    /// <summary>The resolved version behind a line.</summary>
    internal ResolvedVersion Version(int version) => resolved[version];

    private TopicLine Line(int topic)
    {
        int[] own = [.. Enumerable.Range(0, rules.Length).Where(i => rules[i].Topic == topic)];
        int[] told = [.. own.Take(TopicLine.Told)];
        var columns = told.SelectMany(rule => VersionsOf(rules[rule]))
            .SelectMany(version => version.Descriptions)
            .SelectMany(tests => TestsOf(tests).ToArray())
            .Select(test => test.Column)
            .Distinct();
        return new TopicLine(
            own,
            [.. columns.Select(column => Bindings(told, column, 64 - BitOperations.LeadingZeroCount(everything[column])))]
        );
    }

    private RulesByCell Bindings(int[] told, int column, int cells)
    {
        var (some, all) = (new ulong[cells], new ulong[cells]);
        for (var cell = 0; cell < cells; cell++)
        for (var i = 0; i < told.Length; i++)
        {
            var (any, every) = (false, true);
            foreach (ref readonly var version in VersionsOf(rules[told[i]]).AsSpan())
            {
                var passed = version.Descriptions.Count(tests => Passes(tests, column, cell));
                (any, every) = (any || passed > 0, every && passed == version.OrFor.Length + 1);
            }

            if (any)
                some[cell] |= 1ul << i;
            if (every)
                all[cell] |= 1ul << i;
        }

        return new RulesByCell(column, some, all);
    }

    /// <summary>Whether a description is met in a cell, as far as one column decides it.</summary>
    private bool Passes(Tests description, int column, int cell)
    {
        foreach (ref readonly var test in TestsOf(description))
            if (test.Column == column && (test.Passes >> cell & 1) == 0)
                return false;
        return true;
    }

    private ArraySegment<VersionLine> VersionsOf(RuleLine rule) => new(versions, rule.FirstVersion, rule.EndVersion - rule.FirstVersion);

    /// <summary>The tests of a rule: of the vehicles that it binds and of its tiers.</summary>
    private IEnumerable<Tests> RunsOf(RuleLine rule) =>
        VersionsOf(rule)
            .SelectMany(version =>
                version.Descriptions.Concat(
                    new ArraySegment<TierLine>(tiers, version.FirstTier, version.EndTier - version.FirstTier).SelectMany(tier =>
                        (Tests[])[tier.When, tier.Within]
                    )
                )
            );

    /// <summary>
    /// All that a verdict on a topic can hang on: its tests, which versions are in force, and whether a measure is moved that asks for a
    /// rule of its own.
    /// </summary>
    private IEnumerable<Test> TestsOn(int topic) =>
        topics[topic]
            .Rules.Select(rule => rules[rule])
            .SelectMany(rule =>
                RunsOf(rule)
                    .SelectMany(run => TestsOf(run).ToArray())
                    .Concat(
                        Enumerable.Range(0, rule.EndVersion - rule.FirstVersion).Select(i => new Test((ushort)rule.VersionColumn, 1ul << i))
                    )
            )
            .Where(test => test.Column != 0)
            .Concat(
                movements
                    .Where(movement => (movement.Own & ownOfTopic[topic]) != 0)
                    .Select(movement => new Test((ushort)movement.Column, movement.Unchanged))
            );

    /// <summary>Whether all tests pass.</summary>
    private Truth All(Tests run, ReadOnlySpan<ulong> row)
    {
        var truth = Truth.Yes;
        foreach (ref readonly var test in tests.AsSpan(run.First, run.End - run.First))
        {
            var possible = row[test.Column];
            if ((possible & test.Passes) == 0)
                return Truth.No;
            if ((possible & ~test.Passes) != 0)
                truth = Truth.Unknown;
        }

        return truth;
    }

    private void Tell<TWatch>(Tests run, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        if (!TWatch.Watches)
            return;
        foreach (ref readonly var test in tests.AsSpan(run.First, run.End - run.First))
            if ((row[test.Column] & ~test.Passes) != 0)
                watch.Add(test.Column);
    }
}
