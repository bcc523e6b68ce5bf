using System.Buffers;
using System.Text;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// A block with its answers: what is written of it, what is counted, what could not be read. Belongs to one thread at a time.
/// </summary>
/// <param name="last">Number of its last row.</param>
internal sealed class AnsweredBlock(long last) : IDisposable
{
    private byte[] bytes = ArrayPool<byte>.Shared.Rent(1 << 20);
    private int length;

    /// <summary>Number of its last row.</summary>
    public long Last { get; } = last;

    /// <summary>What is written, UTF-8.</summary>
    public ReadOnlyMemory<byte> Written => bytes.AsMemory(0, length);

    /// <summary>How many rows got which answer.</summary>
    public Dictionary<Answered, long> Counts { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The rows that could not be read, and why.</summary>
    public List<(FleetRow Row, Problem Wrong)> Refused { get; } = [];

    /// <summary>The answers to each row by two books, where they were looked up one by one.</summary>
    public List<(long Number, Answered? Before, Answered Now)> Compared { get; } = [];

    /// <summary>Cells that a spreadsheet would have run.</summary>
    public long Defused { get; set; }

    public void Count(Answered answer, long times = 1) => Counts[answer] = Counts.GetValueOrDefault(answer) + times;

    public void Write(string text)
    {
        Room(Encoding.UTF8.GetMaxByteCount(text.Length));
        length += Encoding.UTF8.GetBytes(text, bytes.AsSpan(length));
    }

    /// <summary>So many bytes to write to; then <see cref="Wrote"/> says how many were.</summary>
    public Span<byte> Room(int most)
    {
        if (bytes.Length - length < most)
        {
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(2 * bytes.Length, length + most));
            Written.CopyTo(larger);
            ArrayPool<byte>.Shared.Return(bytes);
            bytes = larger;
        }

        return bytes.AsSpan(length);
    }

    public void Wrote(int written) => length += written;

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(bytes);
        bytes = [];
    }
}
