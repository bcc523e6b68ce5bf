using System.Collections.Immutable;
using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Exports;

/// <summary>
/// The rows of a version in force for hit policy first, the same walk as <see cref="DecisionTable.Judge(Row)"/>: each tier where it
/// certainly holds, then where it may hold; then what holds beyond. What is not known is never taken for nothing: where it would decide,
/// the row gives "undecided".
/// </summary>
internal sealed class DmnTable(DecisionTable table)
{
    /// <summary>What a table gives where the rule does not bind.</summary>
    public const string Nothing = "nothing";

    /// <summary>What it gives where it hangs on what is not known or not established.</summary>
    public const string Undecided = "undecided";

    private readonly ImmutableDictionary<int, Input> words = table
        .Inputs.Where(input => input.Kind != InputKind.Measure)
        .ToImmutableDictionary(input => input.At);

    /// <summary>The rows of a version.</summary>
    public ImmutableArray<DmnRow> Rows(int at)
    {
        var (line, rows) = (table.Versions[at], ImmutableArray.CreateBuilder<DmnRow>());
        DmnTests[] binds = [.. line.Descriptions.Select(Of)];
        if (line.Kind == VersionKind.Stated)
            AddTiers(at, in line, binds, rows);
        else
            Add(
                rows,
                binds.Select(each => each.Possibly),
                line.Kind == VersionKind.NotRegulated ? Wording.Of(Pathway.NoCertificate) : Undecided,
                line.Kind == VersionKind.NotRegulated ? "not regulated" : "not established"
            );
        Add(rows, [DmnRow.Anything], Nothing, "does not bind");
        return rows.ToImmutable();
    }

    /// <summary>The name of an input in FEEL.</summary>
    public static string Name(string of) => string.Concat(of.Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '_'));

    private void AddTiers(int at, in VersionLine line, DmnTests[] binds, ImmutableArray<DmnRow>.Builder rows)
    {
        var tiers = table.Tiers[line.FirstTier..line.EndTier].ToArray();
        string[] names = [.. table.Version(at).Tiers().Select(tier => tier.Name)];
        DmnTests[] holds = [.. tiers.Select(tier => Of(tier.When).And(Of(tier.Within)))];
        for (var tier = 0; tier < tiers.Length; tier++)
        {
            var pathway = tiers[tier].Pathway;
            var (surely, possible) = (holds[tier].Surely, holds[tier].Possibly);
            Add(rows, binds.Select(each => DmnTests.Both(each.Surely, surely)), Wording.Of(pathway), names[tier]);
            var possibly = binds.Select(each => DmnTests.Both(each.Surely, possible)).ToArray();
            var next = tier + 1;
            for (; next < tiers.Length && tiers[next].Pathway == pathway; next++)
                Add(
                    rows,
                    possibly.Select(each => DmnTests.Both(each, holds[next].Surely)),
                    Wording.Of(pathway),
                    $"{names[tier]} or {names[next]}"
                );
            Add(rows, possibly, next == tiers.Length && line.Beyond == pathway ? Wording.Of(pathway) : Undecided, $"{names[tier]}?");
        }

        Add(rows, binds.Select(each => each.Surely), line.Beyond is { } beyond ? Wording.Of(beyond) : Undecided, "beyond");
        // Where it is not known whether the rule binds, only what asks for nothing either way is decided.
        var free = 0;
        for (; free < tiers.Length && tiers[free].Pathway == Pathway.NoCertificate; free++)
            Add(
                rows,
                binds.Select(each => DmnTests.Both(each.Possibly, holds[free].Surely)),
                Wording.Of(Pathway.NoCertificate),
                $"{names[free]}, if it binds"
            );
        Add(
            rows,
            binds.Select(each => each.Possibly),
            free == tiers.Length && line.Beyond == Pathway.NoCertificate ? Wording.Of(Pathway.NoCertificate) : Undecided,
            "may bind"
        );
    }

    private static void Add(
        ImmutableArray<DmnRow>.Builder rows,
        IEnumerable<ImmutableSortedDictionary<string, DmnCell>?> any,
        string gives,
        string why
    )
    {
        foreach (var cells in any.OfType<ImmutableSortedDictionary<string, DmnCell>>())
            if (!rows.Any(row => Covers(row.Cells, cells)))
                rows.Add(new DmnRow(cells, gives, why));
    }

    /// <summary>Whether a row before takes all that another would: of the same or fewer cells.</summary>
    private static bool Covers(ImmutableSortedDictionary<string, DmnCell> before, ImmutableSortedDictionary<string, DmnCell> cells) =>
        before.All(pair => cells.TryGetValue(pair.Key, out var cell) && cell.Text == pair.Value.Text);

    private DmnTests Of(Tests run)
    {
        var all = new DmnTests(DmnRow.Anything, DmnRow.Anything);
        foreach (ref readonly var test in table.TestsOf(run))
            all = all.And(Of(in test));
        return all;
    }

    private DmnTests Of(in Test test)
    {
        var column = (int)test.Column;
        if (column == 0)
            return new DmnTests(null, DmnRow.Anything);
        if (table.Axes.FirstOrDefault(axis => column >= axis.Column && column < axis.Column + axis.Columns) is not { } axis)
            return Words(words[column], test.Passes);
        if (axis.BoundsOf(in test) is not { } bounds)
            return new DmnTests(null, null);
        var (low, high) = (DmnQuantities.Reference(table, axis.Sum, "low"), DmnQuantities.Reference(table, axis.Sum, "high"));
        var measure = table.Vocabulary.Measures[axis.Measure];
        Func<Fraction, string> write = value => Decimals.Of(measure, value);
        var (surely, possibly) = (DmnRow.Anything, DmnRow.Anything);
        if (bounds.Lower is { } lower)
            (surely, possibly) = (
                surely.Add(low, new NumberCell(write, lower, null, false)),
                possibly.Add(high, new NumberCell(write, lower, null, true))
            );
        if (bounds.Upper is { } upper)
            (surely, possibly) = (
                surely.Add(high, new NumberCell(write, null, upper, false)),
                possibly.Add(low, new NumberCell(write, null, upper, true))
            );
        return new DmnTests(surely, possibly);
    }

    /// <summary>A condition that is not stated is still to be shown, and does not stand in the way.</summary>
    private DmnTests Words(Input input, ulong passes)
    {
        if (input.Kind == InputKind.Condition)
            return Same(new WordCell(["met"], true));
        ImmutableArray<string> passing = [.. input.Words.Where((_, at) => (passes >> at & 1) != 0)];
        if (passing.Length == input.Words.Length)
            return new DmnTests(DmnRow.Anything, DmnRow.Anything);
        if (passing.IsEmpty)
            return new DmnTests(null, null);
        return new DmnTests(
            DmnRow.Anything.Add(Name(input.Name), new WordCell(passing, (table.Blank[input.At] & ~passes) == 0)),
            DmnRow.Anything.Add(Name(input.Name), new WordCell(passing, true))
        );

        DmnTests Same(DmnCell cell) => new(DmnRow.Anything.Add(Name(input.Name), cell), DmnRow.Anything.Add(Name(input.Name), cell));
    }
}
