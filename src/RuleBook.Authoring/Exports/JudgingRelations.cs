using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Exports;

/// <summary>
/// Compiled decision tables as plain tables for <c>judge.sql</c>: the same tests of the same columns, each cell written as the bounds that
/// cut it. Nothing is read from the data a second time.
/// </summary>
internal sealed class JudgingRelations
{
    private readonly RowsOf rulings = new("rulings", "ruling:1 place first_day:d last_day:d");
    private readonly RowsOf quantities = new("quantities", "ruling:1 quantity measure level:1 unchanged:n");
    private readonly RowsOf parts = new("parts", "ruling:1 quantity part factor:f");
    private readonly RowsOf movements = new("movements", "ruling:1 measure quantity unchanged:n only_known:1 first_edge:n last_edge:n");
    private readonly RowsOf topics = new("movement_topics", "ruling:1 measure topic own_rule:1");
    private readonly RowsOf versions = new("versions", "version:1 ruling:1 topic rule says beyond:1");
    private readonly RowsOf tiers = new("tiers", "tier:1 version:1 step:1 name pathway:1 exceeded:1");
    private readonly RowsOf tests = new(
        "tests",
        "test:1 version:1 tier:1 part kind fact quantity unstated:1 low:n low_closed:1 high:n high_closed:1"
    );
    private readonly RowsOf words = new("test_words", "test:1 word");
    private readonly RowsOf speaks = new("speaks", "ruling:1 rule measure");
    private readonly RowsOf judges = new("judges", "version:1 measure");

    private JudgingRelations() { }

    /// <summary>The tables of some rulings.</summary>
    public static ImmutableArray<Relation> Of(IEnumerable<Ruling> rulings)
    {
        var written = new JudgingRelations();
        foreach (var ruling in rulings)
            written.Add(ruling);
        return
        [
            .. new[]
            {
                written.rulings,
                written.quantities,
                written.parts,
                written.movements,
                written.topics,
                written.versions,
                written.tiers,
                written.tests,
                written.words,
                written.speaks,
                written.judges,
            }.Select(rows => rows.Relation),
        ];
    }

    private void Add(Ruling ruling)
    {
        var (id, table) = (rulings.Count, ruling.Table);
        rulings.Add(id, ruling.Place, ruling.First, ruling.Last);
        AddQuantities(id, table);
        foreach (var movement in table.Movements)
            Add(id, table, in movement);
        for (var rule = 0; rule < table.Rules.Length; rule++)
        {
            foreach (var movement in table.Movements)
                if (movement.Own != 0 && table.InForce[rule].Candidates.Any(version => version.Speaks(movement.Measure)))
                    speaks.Add(id, table.RuleIds[rule], movement.Measure);
            for (var at = table.Rules[rule].FirstVersion; at < table.Rules[rule].EndVersion; at++)
                AddVersion(id, table, rule, at);
        }
    }

    /// <summary>Every sum that an axis is of, with what it is added up from; a sum is never more than two sums deep.</summary>
    private void AddQuantities(int ruling, DecisionTable table)
    {
        var written = new HashSet<string>(StringComparer.Ordinal);
        foreach (var axis in table.Axes)
            Level(axis.Sum);

        int Level(MeasureSum sum)
        {
            var level = sum.Terms.Length == 0 ? 0 : 1 + sum.Terms.Max(term => Level(term.Part));
            if (level > 2)
                throw new NotSupportedException($"'{sum.Name}' is a sum of sums of sums");
            var measure = table.Vocabulary.Measures[table.MeasureOf(sum.Slot)];
            if (!written.Add(sum.Name))
                return level;
            quantities.Add(
                ruling,
                sum.Name,
                measure.Name,
                level,
                table.Absent(sum.Slot) is { Low: { } absent } ? Decimals.Of(measure, absent.Value) : null
            );
            foreach (var term in sum.Terms)
                parts.Add(ruling, sum.Name, term.Part.Name, Decimals.Of(term.Factor.Value));
            return level;
        }
    }

    private void Add(int ruling, DecisionTable table, in Movement movement)
    {
        var column = movement.Column;
        var axis = AxisAt(table, column)!;
        var measure = table.Vocabulary.Measures[movement.Measure];
        var unchanged = axis.BoundsOf(new Test((ushort)column, movement.Unchanged))!;
        var (first, last) = axis.Span(column - axis.Column);
        movements.Add(
            ruling,
            movement.Measure,
            axis.Sum.Name,
            Decimals.Of(measure, unchanged.Lower!.Value),
            movement.Unknown == 0 ? 0 : 1,
            Decimals.Of(measure, first.Value),
            Decimals.Of(measure, last.Value)
        );
        for (var topic = 0; topic < table.Topics.Length; topic++)
            if ((movement.Topics >> topic & 1) != 0)
                topics.Add(
                    ruling,
                    movement.Measure,
                    table.Topics[topic],
                    movement.Own != 0 && (movement.Suggested >> topic & 1) != 0 ? 1 : 0
                );
    }

    private void AddVersion(int ruling, DecisionTable table, int rule, int at)
    {
        var (id, line) = (versions.Count, table.Versions[at]);
        var says = line.Kind switch
        {
            VersionKind.Stated => "limits",
            VersionKind.NotRegulated => "not regulated",
            _ => "not established",
        };
        versions.Add(id, ruling, table.Topics[table.Rules[rule].Topic], table.RuleIds[rule], says, (int?)line.Beyond);
        foreach (var movement in table.Movements)
            if (
                table.Version(at).Judges(table.Vocabulary.Measures[movement.Measure], (movement.Topics >> table.Rules[rule].Topic & 1) != 0)
            )
                judges.Add(id, movement.Measure);
        foreach (var (index, tests) in line.Descriptions.Index())
            AddTests(table, tests, id, null, index == 0 ? "for" : $"for {index + 1}");
        for (var step = line.FirstTier; step < line.EndTier; step++)
        {
            var (tier, pathway) = (table.Tiers[step], table.Tiers[step].Pathway);
            var next = pathway < Pathway.Approval ? pathway + 1 : Pathway.Approval;
            var own = tiers.Count;
            tiers.Add(own, id, step - line.FirstTier, table.Version(at).Tiers()[step - line.FirstTier].Name, (int)pathway, (int)next);
            AddTests(table, tier.When, id, own, "when");
            AddTests(table, tier.Within, id, own, "within");
        }
    }

    private void AddTests(DecisionTable table, Tests run, int version, int? tier, string part)
    {
        foreach (ref readonly var test in table.TestsOf(run))
            Add(table, in test, version, tier, part);
    }

    private void Add(DecisionTable table, in Test test, int version, int? tier, string part)
    {
        var (id, column) = (tests.Count, (int)test.Column);
        if (column == 0)
        {
            tests.Add(id, version, tier, part, "not established", null, null, null, null, null, null, null);
        }
        else if (AxisAt(table, column) is { } axis)
        {
            var (measure, bounds) = (table.Vocabulary.Measures[axis.Measure], axis.BoundsOf(in test));
            tests.Add(
                id,
                version,
                tier,
                part,
                bounds is null ? "never" : "measure",
                axis.Measure,
                axis.Sum.Name,
                null,
                bounds?.Lower is { } low ? Decimals.Of(measure, low.Value) : null,
                bounds?.Lower is { } lower
                    ? lower.Closed
                        ? 1
                        : 0
                    : null,
                bounds?.Upper is { } high ? Decimals.Of(measure, high.Value) : null,
                bounds?.Upper is { } upper
                    ? upper.Closed
                        ? 1
                        : 0
                    : null
            );
        }
        else
        {
            var input = table.Inputs.First(each => each.Kind != InputKind.Measure && each.At == column);
            var all = table.Blank[column];
            var unstated =
                (all & test.Passes) == 0 ? 0
                : (all & ~test.Passes) == 0 ? 2
                : 1;
            tests.Add(
                id,
                version,
                tier,
                part,
                input.Kind == InputKind.Word ? "word" : "condition",
                input.Name,
                null,
                unstated,
                null,
                null,
                null,
                null
            );
            for (var at = 0; at < input.Words.Length; at++)
                if ((test.Passes >> at & 1) != 0)
                    words.Add(id, input.Words[at]);
        }
    }

    private static Axis? AxisAt(DecisionTable table, int column) =>
        table.Axes.FirstOrDefault(axis => column >= axis.Column && column < axis.Column + axis.Columns);

    /// <summary>
    /// A relation as it grows; a column is text unless its name ends with <c>:1</c> (whole), <c>:n</c> (decimal), <c>:f</c> (factor) or
    /// <c>:d</c> (day).
    /// </summary>
    private sealed class RowsOf(string name, string columns)
    {
        private readonly ImmutableArray<ImmutableArray<string?>>.Builder rows = ImmutableArray.CreateBuilder<ImmutableArray<string?>>();

        public int Count => rows.Count;

        public Relation Relation => new(name, [.. columns.Split(' ').Select(Column)], rows.ToImmutable());

        public void Add(params ReadOnlySpan<object?> cells)
        {
            var row = ImmutableArray.CreateBuilder<string?>(cells.Length);
            foreach (var cell in cells)
                row.Add(
                    cell is DateOnly day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
                    : Convert.ToString(cell, CultureInfo.InvariantCulture) is { Length: > 0 } text ? text
                    : null
                );
            rows.Add(row.MoveToImmutable());
        }

        private static Column Column(string written) =>
            written.Split(':') switch
            {
                [var whole, "1"] => new(whole, ColumnType.Whole),
                [var number, "n"] => new(number, ColumnType.Decimal),
                [var factor, "f"] => new(factor, ColumnType.Factor),
                [var day, "d"] => new(day, ColumnType.Day),
                [var text, ..] => new(text, ColumnType.Text),
                _ => throw new ArgumentException("a column has a name", nameof(written)),
            };
    }
}
