using System.Numerics;
using System.Runtime.Intrinsics;
using RuleBook.Law;
using Lanes = System.Runtime.Intrinsics.Vector512<byte>;

namespace RuleBook.Tables;

public sealed partial class DecisionTable
{
    /// <summary>
    /// Judges all rows of a batch, 64 at a time; for each row the same as <see cref="Judge(Row)"/>, packed into a byte that
    /// <see cref="Outcome.Unpack"/> reads.
    /// </summary>
    /// <param name="batch">A batch of this table.</param>
    /// <param name="outcomes">At least one byte for each row.</param>
    /// <exception cref="ArgumentException">The batch is of another table, or there are fewer bytes than rows.</exception>
    public void Judge(Batch batch, Span<byte> outcomes)
    {
        if (batch.Table != this)
            throw new ArgumentException("a batch of another table", nameof(batch));
        if (outcomes.Length < batch.Rows)
            throw new ArgumentException("fewer outcomes than rows", nameof(outcomes));
        for (var first = 0; first < batch.Rows; first += Lanes.Count)
        {
            var given = Judge(batch.Columns, first);
            if (first + Lanes.Count <= batch.Rows)
            {
                given.CopyTo(outcomes[first..]);
                continue;
            }

            for (var i = first; i < batch.Rows; i++)
                outcomes[i] = given[i - first];
        }

        foreach (var (at, row) in batch.Open)
            outcomes[at] = Judge(row, Touched(row)).Pack();
    }

    /// <summary>
    /// Whether all is known of a row that the rules of the topics touched test: comparing cells then gives the same as
    /// <see cref="Judge(Row)"/>.
    /// </summary>
    internal bool FitsLanes(ReadOnlySpan<ulong> row)
    {
        if (!fitsLanes)
            return false;
        var topics = movements.Length == 0 ? ulong.MaxValue : 0;
        foreach (ref readonly var movement in movements.AsSpan())
        {
            if (!movement.Moves(row))
                continue;
            if (movement.Unknown != 0 && !BitOperations.IsPow2(row[movement.Column]))
                return false;
            topics |= movement.Topics;
        }

        for (var column = 1; column < row.Length; column++)
            if ((testedBy[column] & topics) != 0 && !BitOperations.IsPow2(row[column]))
                return false;
        return true;
    }

    private static Lanes Of(Pathway pathway) => Vector512.Create((byte)pathway);

    private Lanes Judge(byte[][] columns, int first)
    {
        var (best, worst, own) = (Lanes.Zero, Lanes.Zero, Lanes.Zero);
        Span<Lanes> touched = stackalloc Lanes[Topics.Length];
        touched.Fill(movements.Length == 0 ? Lanes.AllBitsSet : Lanes.Zero);
        foreach (ref readonly var movement in movements.AsSpan())
        {
            var cells = Vector512.LoadUnsafe(ref columns[movement.Column][0], (nuint)first);
            var still = Vector512.Equals(cells, Vector512.Create((byte)BitOperations.TrailingZeroCount(movement.Unchanged)));
            if (movement.Unknown != 0)
                still |= Vector512.Equals(cells, Vector512.Create(Batch.Unknown));
            if (Vector512.EqualsAll(still, Lanes.AllBitsSet))
                continue;
            for (var left = movement.Topics; left != 0; left &= left - 1)
                touched[BitOperations.TrailingZeroCount(left)] |= ~still;
            own |= Vector512.AndNot(Vector512.Create((byte)movement.Own), still);
        }

        var (topic, bound, unmet, here) = (-1, Lanes.AllBitsSet, Lanes.Zero, Lanes.Zero);
        for (var i = 0; i < rules.Length; i++)
        {
            ref readonly var rule = ref rules[i];
            if (rule.Topic != topic)
            {
                worst = Vector512.Max(worst, Open(here, bound, unmet));
                (topic, bound, here) = (rule.Topic, Lanes.Zero, touched[rule.Topic]);
                unmet = own & Vector512.Create((byte)ownOfTopic[topic]);
            }

            if (Vector512.EqualsAll(here, Lanes.Zero))
                continue;
            var (binds, easiest, hardest, speaks) = Judge(in rule, columns, first);
            binds &= here;
            bound |= binds;
            unmet = Vector512.AndNot(unmet, binds & Vector512.Create((byte)speaks));
            best = Vector512.Max(best, easiest & binds);
            worst = Vector512.Max(worst, hardest & binds);
        }

        worst = Vector512.Max(worst, Open(here, bound, unmet));
        for (var left = withoutRules; left != 0; left &= left - 1)
            worst = Vector512.Max(worst, touched[BitOperations.TrailingZeroCount(left)] & Of(Pathway.Prohibited));
        var twice = worst + worst;
        return best | (twice + twice);
    }

    private static Lanes Open(Lanes touched, Lanes bound, Lanes unmet) =>
        touched & (~bound | ~Vector512.Equals(unmet, Lanes.Zero)) & Of(Pathway.Prohibited);

    private (Lanes Binds, Lanes Best, Lanes Worst, ulong Speaks) Judge(ref readonly RuleLine rule, byte[][] columns, int first)
    {
        var (binds, best, worst, speaks) = (Lanes.Zero, Of(Pathway.Prohibited), Lanes.Zero, 0ul);
        for (var at = rule.FirstVersion; at < rule.EndVersion; at++)
        {
            binds |= All(versions[at].For, columns, first, out _);
            foreach (var other in versions[at].OrFor)
                binds |= All(other, columns, first, out _);
            speaks |= versions[at].Speaks;
        }

        if (Vector512.EqualsAll(binds, Lanes.Zero))
            return (binds, best, worst, speaks);
        for (var at = rule.FirstVersion; at < rule.EndVersion; at++)
        {
            var (easiest, hardest) = JudgeVersion(in versions[at], columns, first);
            (best, worst) = (Vector512.Min(best, easiest), Vector512.Max(worst, hardest));
        }

        return (binds, best, worst, speaks);
    }

    private (Lanes Best, Lanes Worst) JudgeVersion(ref readonly VersionLine version, byte[][] columns, int first)
    {
        if (version.Kind == VersionKind.NotRegulated)
            return (Lanes.Zero, Lanes.Zero);
        if (version.Kind == VersionKind.NotEstablished)
            return (Lanes.Zero, Of(Pathway.Prohibited));
        var (best, worst, left, exceeded) = (Of(Pathway.Prohibited), Lanes.Zero, Lanes.AllBitsSet, Lanes.Zero);
        for (var i = version.FirstTier; i < version.EndTier && !Vector512.EqualsAll(left, Lanes.Zero); i++)
        {
            ref readonly var tier = ref tiers[i];
            var when = All(tier.When, columns, first, out _) & left;
            var holds = All(tier.Within, columns, first, out var unestablished) & when;
            if (tier.Pathway < Pathway.Prohibited)
            {
                var next = Of(tier.Pathway < Pathway.Approval ? tier.Pathway + 1 : Pathway.Approval);
                exceeded = Vector512.ConditionalSelect(Vector512.AndNot(when, holds), next, exceeded);
            }

            best = Vector512.ConditionalSelect(holds, Vector512.Min(best, Of(tier.Pathway)), best);
            worst = Vector512.ConditionalSelect(holds, Vector512.Max(worst, Of(tier.Pathway)), worst);
            if (!unestablished)
                left = Vector512.AndNot(left, holds);
        }

        var (least, most) = version.Beyond is { } beyond ? (Of(beyond), Of(beyond)) : (exceeded, Of(Pathway.Prohibited));
        return (
            Vector512.ConditionalSelect(left, Vector512.Min(best, least), best),
            Vector512.ConditionalSelect(left, Vector512.Max(worst, most), worst)
        );
    }

    /// <summary>The rows on which all tests pass; where one of them is never known it is left out and told.</summary>
    private Lanes All(Tests run, byte[][] columns, int first, out bool unestablished)
    {
        (var all, unestablished) = (Lanes.AllBitsSet, false);
        foreach (ref readonly var test in tests.AsSpan(run.First, run.End - run.First))
        {
            if (test.Column == 0)
            {
                unestablished = true;
                continue;
            }

            var (cells, passes) = (Vector512.LoadUnsafe(ref columns[test.Column][0], (nuint)first), Lanes.Zero);
            for (var left = test.Passes; left != 0; )
            {
                var start = BitOperations.TrailingZeroCount(left);
                var length = BitOperations.TrailingZeroCount(~(left >> start));
                passes |= Vector512.LessThanOrEqual(cells - Vector512.Create((byte)start), Vector512.Create((byte)(length - 1)));
                left = start + length > 63 ? 0 : left >> (start + length) << (start + length);
            }

            all &= passes;
        }

        return all;
    }
}
