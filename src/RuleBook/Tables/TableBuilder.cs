using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>Compiles versions in force into the lines and columns of a table.</summary>
internal sealed class TableBuilder
{
    private readonly Dictionary<string, SortedSet<Fraction>> edges = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Measure, ImmutableArray<string> Parts)> quantities = new(StringComparer.Ordinal);
    private readonly Dictionary<ImmutableArray<string>, string> totals = [];
    private readonly Dictionary<string, MeasureSum> sums = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> slots = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Axis> axes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Input> words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Input> conditions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ulong> own = new(StringComparer.Ordinal);
    private readonly List<ulong> blank = [DecisionTable.Unestablished];
    private readonly List<Test> tests = [];
    private readonly List<TierLine> tiers = [];
    private readonly List<VersionLine> versions = [];

    private TableBuilder(Vocabulary vocabulary, ImmutableArray<RuleInForce> inForce) => (Vocabulary, InForce) = (vocabulary, inForce);

    public Vocabulary Vocabulary { get; }

    public ImmutableArray<RuleInForce> InForce { get; }

    public ImmutableArray<string> Topics { get; private set; } = [];

    public ImmutableArray<Input> Inputs { get; private set; } = [];

    public Grid Grid { get; private set; }

    public ImmutableArray<Axis> Axes { get; private set; } = [];

    public Movement[] Movements { get; private set; } = [];

    public Test[] Tests => [.. tests];

    public TierLine[] Tiers => [.. tiers];

    public VersionLine[] Versions => [.. versions];

    public RuleLine[] Rules { get; private set; } = [];

    public ulong[] Blank => [.. blank];

    public int Slots => slots.Count;

    /// <summary>The axes by measure, and by what is added up where versions count that differently.</summary>
    public IReadOnlyDictionary<string, Axis> ByQuantity => axes;

    /// <summary>The measures that the vocabulary lets a job change, with the value at which nothing changes.</summary>
    private ImmutableArray<Moving> Moved { get; set; } = [];

    /// <summary>Compiles a table.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="inForce">The rules, in ordinal order of their ids.</param>
    /// <param name="moving">
    /// The measures that a job can move, with what they touch by the vocabulary; empty where only single rules are judged.
    /// </param>
    public static DecisionTable Build(Vocabulary vocabulary, ImmutableArray<RuleInForce> inForce, ImmutableArray<Moving> moving)
    {
        var builder = new TableBuilder(vocabulary, inForce) { Moved = moving };
        builder.Build();
        return new DecisionTable(builder);
    }

    private void Build()
    {
        Topics =
        [
            .. InForce
                .Select(rule => rule.Rule.Topic)
                .Concat(Moved.SelectMany(moving => moving.Suggested))
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        foreach (var moving in Moved)
            Edge(moving.Measure.Name, [], moving.Unchanged);
        foreach (var version in InForce.SelectMany(rule => rule.Candidates))
        foreach (var (name, bounds) in version.Bounded())
        foreach (var bound in new[] { bounds.Lower, bounds.Upper }.OfType<Bound>())
            Edge(name, version.Parts, bound.Value);
        foreach (var (measure, parts) in quantities.Values)
            Sum(measure, parts);
        Grid = Grid.Of(
            edges.Values.SelectMany(set => set).Concat(slots.Keys.Select(name => Vocabulary.Measures[name].IfAbsent).OfType<Fraction>()),
            sums.Values.Aggregate(1, (all, sum) => Grid.Common(all, sum.Parts))
        );
        foreach (var (key, (measure, parts)) in quantities)
        {
            var axis = new Axis(measure, Sum(measure, parts), edges[key], Grid, blank.Count);
            axes[key] = axis;
            for (var i = 0; i < axis.Columns; i++)
                blank.Add(axis.All(i));
        }

        Axes = [.. axes.Values];
        foreach (
            var name in InForce
                .SelectMany(rule => rule.Candidates)
                .SelectMany(version => version.WordTests())
                .Select(test => test.Fact)
                .Concat(Vocabulary.Facts.Values.Where(fact => !fact.WhereNamed.IsEmpty).Select(fact => fact.Name))
                .Distinct()
        )
            AddWord(name);
        foreach (var moving in Moved.Where(moving => moving.Own && !moving.Suggested.IsEmpty))
            own[moving.Measure.Name] = 1ul << own.Count;
        Rules = [.. InForce.Select(Line)];
        Inputs = [.. words.Values, .. slots.Select(slot => new Input(slot.Key, InputKind.Measure, [], slot.Value)), .. conditions.Values];
        if (Moved.IsEmpty)
            return;
        var read = InForce
            .Select(rule =>
                (Topic: 1ul << Topics.IndexOf(rule.Rule.Topic), Names: rule.Candidates.SelectMany(version => version.Reads()).ToHashSet())
            )
            .ToArray();
        Movements =
        [
            .. Moved.Select(moving =>
                Movement(
                    moving,
                    read.Where(rule => rule.Names.Contains(moving.Measure.Name)).Aggregate(0ul, (all, rule) => all | rule.Topic)
                )
            ),
        ];
        for (var i = 0; i < Movements.Length; i++)
            axes[Keyed(Movements[i].Measure, [])].Movement = i;
    }

    private void Edge(string measure, ImmutableArray<string> parts, Fraction value)
    {
        var key = Keyed(measure, parts);
        if (!edges.TryGetValue(key, out var set))
        {
            edges[key] = set = [];
            quantities[key] = (measure, measure == FactSet.TotalLift ? parts : []);
        }

        set.Add(value);
    }

    /// <summary>A measure, with what it is added up from where versions count that differently.</summary>
    public static string Key(string measure, ImmutableArray<string> parts) =>
        measure == FactSet.TotalLift ? $"{measure} {string.Join(' ', parts)}" : measure;

    /// <summary>The same, put together once for the parts of a version.</summary>
    private string Keyed(string measure, ImmutableArray<string> parts)
    {
        if (measure != FactSet.TotalLift)
            return measure;
        if (!totals.TryGetValue(parts, out var key))
            totals[parts] = key = Key(measure, parts);
        return key;
    }

    private MeasureSum Sum(string measure, ImmutableArray<string> parts)
    {
        var key = Keyed(measure, parts);
        if (sums.TryGetValue(key, out var known))
            return known;
        (MeasureSum, int, int)[] terms = measure switch
        {
            FactSet.TyreLift => [(Sum(FactSet.TyreGrowth, []), 1, 2)],
            FactSet.TotalLift => [.. parts.Select(part => (Sum(part, parts), 1, 1))],
            _ => [],
        };
        if (!slots.TryGetValue(measure, out var slot))
            slots[measure] = slot = slots.Count;
        return sums[key] = new MeasureSum(key, slot, terms);
    }

    private void AddWord(string fact)
    {
        var (values, named) = (Vocabulary.Facts[fact].Values, Vocabulary.Facts[fact].WhereNamed.Length);
        if (values.Length > 64)
            throw new NotSupportedException($"'{fact}' can be more than 64 words");
        words[fact] = new Input(fact, InputKind.Word, values, blank.Count);
        blank.Add(ulong.MaxValue >> (64 - values.Length + named));
    }

    /// <summary>A description that does not test a word is of none of those that have to be named.</summary>
    private IEnumerable<Test> Scope(Predicate scope) =>
        from word in words.Values
        where !Vocabulary.Facts[word.Name].WhereNamed.IsEmpty && !scope.Tests.Any(test => test.Fact == word.Name)
        select new Test((ushort)word.At, blank[word.At]);

    private RuleLine Line(RuleInForce rule)
    {
        var column = 0;
        if (rule.Candidates.Length > 1)
        {
            if (rule.Candidates.Length > 64)
                throw new NotSupportedException($"more than 64 versions of '{rule.Rule.Id}' may be in force");
            column = blank.Count;
            blank.Add(ulong.MaxValue >> (64 - rule.Candidates.Length));
        }

        var first = versions.Count;
        foreach (var version in rule.Candidates)
            versions.Add(Line(version));
        return new RuleLine(Topics.IndexOf(rule.Rule.Topic), first, versions.Count, column);
    }

    private VersionLine Line(ResolvedVersion version)
    {
        Tests[] bind =
        [
            .. version.Rule.For.AnyOf.Select(each => Run([.. each.Tests.SelectMany(test => Of(test, version)), .. Scope(each)])),
        ];
        var stated = version.Content as Stated;
        var lines = (stated?.Tiers ?? [])
            .Select(tier => new TierLine(
                tier.Pathway,
                Run(tier.When.Tests.SelectMany(test => Of(test, version))),
                Run(tier.Provided.Select(Of).Concat(tier.Limits.SelectMany(limit => Of(limit, version))))
            ))
            .ToArray();
        var from = tiers.Count;
        tiers.AddRange(lines);
        var speaks = own.Where(pair => version.Speaks(pair.Key)).Aggregate(0ul, (all, pair) => all | pair.Value);
        var kind =
            stated is not null ? VersionKind.Stated
            : version.Content is NotRegulated ? VersionKind.NotRegulated
            : VersionKind.NotEstablished;
        return new VersionLine(kind, bind[0], bind[1..], from, tiers.Count, stated?.Beyond, speaks);
    }

    private Tests Run(IEnumerable<Test> run)
    {
        var first = tests.Count;
        tests.AddRange(run);
        return new Tests(first, tests.Count);
    }

    private IEnumerable<Test> Of(FactTest test, ResolvedVersion version)
    {
        if (test.Bounds is { } bounds)
            return axes[Keyed(test.Fact, version.Parts)].Within(bounds);
        var (word, passes) = (words[test.Fact], 0ul);
        for (var i = 0; i < word.Words.Length; i++)
            if (test.OneOf.Contains(word.Words[i]))
                passes |= 1ul << i;
        return [new Test((ushort)word.At, passes)];
    }

    private IEnumerable<Test> Of(Limit limit, ResolvedVersion version) =>
        limit.Kind switch
        {
            LimitKind.None => [],
            LimitKind.NotEstablished => [new Test(0, 1)],
            _ => axes[Keyed(limit.Measure, version.Parts)].Within(limit.Bounds!),
        };

    private Test Of(string condition)
    {
        if (!conditions.TryGetValue(condition, out var input))
        {
            conditions[condition] = input = new Input(condition, InputKind.Condition, [], blank.Count);
            blank.Add(DecisionTable.MetOrToShow);
        }

        return new Test((ushort)input.At, DecisionTable.MetOrToShow);
    }

    private Movement Movement(Moving moving, ulong read)
    {
        var axis = axes[Keyed(moving.Measure.Name, [])];
        var (column, unchanged) = axis.At(Exact.Of(moving.Unchanged));
        var suggested = moving.Suggested.Aggregate(0ul, (all, topic) => all | 1ul << Topics.IndexOf(topic));
        return new Movement(
            moving.Measure.Name,
            axis.Column + column,
            unchanged,
            moving.OnlyKnown ? axis.All(column) : 0,
            read | suggested,
            suggested,
            own.GetValueOrDefault(moving.Measure.Name)
        );
    }
}
