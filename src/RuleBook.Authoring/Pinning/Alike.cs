using System.Collections.Immutable;
using System.Numerics;
using RuleBook.Authoring.Walk;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Pinning;

/// <summary>
/// Shows that a rule gives the same before and after a change, without visiting every point: only where their tests differ, what is
/// possible in a column of their table is halved until neither hangs on it any more. A sum is held within what its parts allow; beyond
/// that the columns count as independent, so that more is looked at than can stand together, never less.
/// </summary>
/// <param name="table">Holds the rule as it was and as it becomes.</param>
/// <param name="before">The versions that may be in force before the change.</param>
/// <param name="after">Those after it.</param>
/// <param name="conditions">Whether they have to ask for the same conditions, too.</param>
internal sealed class Alike(DecisionTable table, RuleLine before, RuleLine after, bool conditions)
{
    /// <summary>Beyond so many looks it is left open.</summary>
    private const int MostLooks = 100_000;

    private readonly DifferingCells? cells =
        conditions && !SameConditions(table, before, after) ? null : DifferingCells.Between(table, [before], [after]);

    private int looks;

    /// <summary>Whether it is shown of every vehicle; where it is not, they may still be alike.</summary>
    public static bool Everywhere(Vocabulary vocabulary, ImmutableArray<ResolvedVersion> before, ImmutableArray<ResolvedVersion> after)
    {
        var table = TableBuilder.Build(vocabulary, [RuleInForce.Of(before), RuleInForce.Of(after)], []);
        return new Alike(table, table.Rules[0], table.Rules[1], conditions: true).On(Anything(table));
    }

    /// <summary>Whether it is shown of all that is possible on a row, which is changed; where it is not, they may still be alike.</summary>
    public bool On(ulong[] row) => cells is null ? Halved(row) : cells.Within(row).All(Halved);

    private bool Halved(ulong[] row)
    {
        if (!HoldSums(row))
            return true;
        var watch = default(FirstWatch);
        var (was, becomes) = (RuleAnswer.Of(table, before, row, ref watch), RuleAnswer.Of(table, after, row, ref watch));
        if (watch.Column == 0)
            return was.Binds == becomes.Binds
                && was.Outcome == becomes.Outcome
                && (!conditions || (was.Conditions == becomes.Conditions && was.WarningOnly == becomes.WarningOnly));
        if (++looks > MostLooks)
            return false;
        var possible = row[watch.Column];
        var (first, last) = (BitOperations.TrailingZeroCount(possible), BitOperations.Log2(possible));
        var lower = possible & (1ul << (first + last) / 2 + 1) - 1;
        if (!Halved(With(row, watch.Column, lower)))
            return false;
        row[watch.Column] = possible & ~lower;
        return Halved(row);
    }

    /// <summary>Whether their tiers ask for the same conditions, and their breach brings the same.</summary>
    private static bool SameConditions(DecisionTable table, RuleLine before, RuleLine after) =>
        Asked(table, before).SequenceEqual(Asked(table, after));

    private static IEnumerable<string> Asked(DecisionTable table, RuleLine rule) =>
        Enumerable
            .Range(rule.FirstVersion, rule.EndVersion - rule.FirstVersion)
            .Select(table.Version)
            .SelectMany(version =>
                version.Tiers().Select(tier => string.Join(' ', tier.Provided)).Append(version.WarningOnly ? "warns" : "counts")
            );

    /// <summary>
    /// A row on which everything is possible: each word, each measure as far as it can be below zero, each condition or not.
    /// </summary>
    private static ulong[] Anything(DecisionTable table)
    {
        var row = table.Blank.ToArray();
        foreach (var axis in table.Axes)
            axis.Put(row, NeverNegative(table, axis.Sum) ? new ExactRange(new Exact(0), false, null, false) : ExactRange.Anything);
        foreach (var input in table.Inputs.Where(input => input.Kind == InputKind.Condition))
            row[input.At] = DecisionTable.MetOrToShow | DecisionTable.NotMet;
        return row;
    }

    private static bool NeverNegative(DecisionTable table, MeasureSum sum) =>
        sum.Terms.Length == 0
            ? table.Vocabulary.Measures[table.MeasureOf(sum.Slot)] is { BelowZero: BelowZero.Never, IsDate: false }
            : sum.Terms.All(term => NeverNegative(table, term.Part));

    private static ulong[] With(ulong[] row, int column, ulong possible)
    {
        ulong[] other = [.. row];
        other[column] = possible;
        return other;
    }

    /// <summary>Takes from a row what its parts do not allow of a sum; false where nothing is left.</summary>
    private bool HoldSums(ulong[] row)
    {
        foreach (var axis in table.Sums)
        {
            if (Of(axis.Sum, row) is not { } known)
                return false;
            var (first, last) = known.On(axis);
            for (var i = 0; i < axis.Columns; i++)
                row[axis.Column + i] &= axis.Mask(i, first, last);
        }

        return true;
    }

    /// <summary>What is possible of a measure; null where that is nothing.</summary>
    private ExactRange? Of(MeasureSum sum, ulong[] row)
    {
        var own = ExactRange.Anything;
        if (table.Axes.FirstOrDefault(axis => ReferenceEquals(axis.Sum, sum)) is { } axis)
        {
            if (axis.On(row) is not { } placed)
                return null;
            own = placed;
        }
        else if (NeverNegative(table, sum))
            own = new ExactRange(new Exact(0), false, null, false);

        if (sum.Terms.Length == 0)
            return own;
        var all = new ExactRange(new Exact(0));
        foreach (var term in sum.Terms)
        {
            if (Of(term.Part, row) is not { } part)
                return null;
            all += part * term.Factor;
        }

        return own.Meet(all);
    }

    /// <summary>Remembers the first column on which an answer hangs.</summary>
    private struct FirstWatch : IWatch
    {
        public static bool Watches => true;

        public int Column { get; private set; }

        public void Add(int column) => Column = Column == 0 ? column : Column;
    }
}
