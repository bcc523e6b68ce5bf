using System.Buffers.Text;
using System.Text;
using RuleBook.Answers;

namespace RuleBook.Cli.Fleets;

/// <summary>An answer as the bytes that are written behind a row, and how many rows of a block got it.</summary>
/// <param name="answer">The answer.</param>
internal abstract class PlainAnswer(Answered answer)
{
    protected const int LongestMargin = 40;

    public Answered Answer { get; } = answer;

    /// <summary>So many rows got it since it was last counted.</summary>
    public long Times { get; set; }

    /// <summary>Writes it, and says how many bytes that took and how many cells a spreadsheet would have run.</summary>
    public abstract (int Length, int Defused) Write(Span<byte> into, ReadOnlySpan<long> values);

    /// <summary>At most so many bytes are written.</summary>
    public abstract int Most { get; }
}

/// <summary>The answer to rows that state just the same.</summary>
internal sealed class SameAnswer(Answered answer) : PlainAnswer(answer)
{
    private readonly byte[] line = Encoding.UTF8.GetBytes($",{answer.Line}{FleetWriter.LineEnd}");

    public override int Most => line.Length;

    public override (int Length, int Defused) Write(Span<byte> into, ReadOnlySpan<long> values)
    {
        line.CopyTo(into);
        return (line.Length, Answer.Defused);
    }
}

/// <summary>The answer to rows in the same cells, each with its own margin.</summary>
internal sealed class MarginAnswer : PlainAnswer
{
    private readonly byte[] before;
    private readonly byte[] behind;
    private readonly int defused;
    private readonly GridLimits limits;
    private readonly (byte[] Cell, byte[] Unit)[] each;

    private MarginAnswer(Answered answer, GridLimits limits)
        : base(answer)
    {
        (this.limits, defused) = (limits, answer.With(null).Defused);
        (before, behind) = (
            Encoding.UTF8.GetBytes($",{answer.BeforeLimit},"),
            Encoding.UTF8.GetBytes($",{answer.BehindMargin}{FleetWriter.LineEnd}")
        );
        each =
        [
            .. limits.Checks.Select(check =>
                (Encoding.UTF8.GetBytes(Text.Csv.Cell(Answered.Limit(check)) + ","), Encoding.UTF8.GetBytes(check.Measure.Unit.Symbol))
            ),
        ];
        Most = before.Length + behind.Length + LongestMargin + each.Select(limit => limit.Cell.Length).DefaultIfEmpty(1).Max();
    }

    public override int Most { get; }

    /// <summary>Null where its margins are not whole steps of the unit in which they are told.</summary>
    public static MarginAnswer? Of(SharedAnswer shared, GridCells grid) =>
        grid.Limits(shared.Limits) is { } limits
        && limits.Checks.All(check =>
            check.Measure.Unit.ToBase == 1
            && check.Measure.Unit.Symbol.Length is > 0 and < 10
            && !FleetWriter.IsDefused(Answered.Limit(check))
        )
            ? new MarginAnswer(shared.Told, limits)
            : null;

    public override (int Length, int Defused) Write(Span<byte> into, ReadOnlySpan<long> values)
    {
        before.CopyTo(into);
        var length = before.Length;
        if (limits.Tightest(values) is (>= 0 and var at, var left))
        {
            each[at].Cell.CopyTo(into[length..]);
            length += each[at].Cell.Length;
            length += Margin(into[length..], left, each[at].Unit);
        }
        else
        {
            into[length++] = (byte)',';
        }

        behind.CopyTo(into[length..]);
        return (length + behind.Length, defused);
    }

    /// <summary>
    /// What is left, as <see cref="Units.Quantity"/> writes it: three decimals, a half away from zero. It is never below zero: the limits
    /// told are those of a tier that holds, or may.
    /// </summary>
    private static int Margin(Span<byte> into, long steps, ReadOnlySpan<byte> unit)
    {
        var (whole, rest) = Math.DivRem((steps + 1) / (GridCells.Steps / GridCells.Thousandths), GridCells.Thousandths);
        Utf8Formatter.TryFormat(whole, into, out var length);
        if (rest > 0)
            into[length++] = (byte)'.';
        for (var scale = GridCells.Thousandths / 10; rest > 0; scale /= 10)
        {
            into[length++] = (byte)('0' + rest / scale);
            rest %= scale;
        }

        into[length++] = (byte)' ';
        unit.CopyTo(into[length..]);
        return length + unit.Length;
    }
}
