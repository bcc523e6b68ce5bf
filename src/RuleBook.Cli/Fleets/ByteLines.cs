using System.Buffers;
using System.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// An input as bytes of UTF-8, given out by the line or by many whole lines at once; never more of it in memory than a block or the longest
/// row.
/// </summary>
/// <param name="stream">The input; UTF-16 with its mark is turned into UTF-8.</param>
internal sealed class ByteLines(Stream stream)
{
    /// <summary>A row longer than that is none; what follows of it is passed over.</summary>
    public const int LongestRow = 1 << 20;

    private const int Block = 1 << 18;
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    private Stream input = stream;
    private byte[] buffer = new byte[2 * Block];
    private int start;
    private int end;
    private bool begun;
    private bool ended;

    /// <summary>
    /// Whole lines without any quote, line ends as they are: only line feeds part them, with or without a carriage return before. Null
    /// where the next line needs a closer look.
    /// </summary>
    public (byte[] Pooled, int Length)? Plain()
    {
        Fill(Block);
        var there = buffer.AsSpan(start, Math.Min(end - start, Block));
        var quote = there.IndexOf((byte)'"');
        var length =
            quote < 0 && ended && there.Length == end - start
                ? there.Length
                : (quote < 0 ? there : there[..quote]).LastIndexOf((byte)'\n') + 1;
        if (length == 0 || there[..length].Count((byte)'\r') != there[..length].Count("\r\n"u8))
            return null;
        var pooled = ArrayPool<byte>.Shared.Rent(length);
        there[..length].CopyTo(pooled);
        start += length;
        return (pooled, length);
    }

    /// <summary>The next line without its end, as <see cref="TextReader.ReadLine"/> parts them; null where there is none.</summary>
    /// <returns>The line, or from which character on it is not UTF-8.</returns>
    public (string Line, int? BrokenAt)? Line()
    {
        var (looked, most) = (0, 4 * LongestRow);
        while (true)
        {
            var found = buffer.AsSpan(start + looked, end - start - looked).IndexOfAny((byte)'\n', (byte)'\r');
            if (found >= 0 && (buffer[start + looked + found] == '\n' || start + looked + found + 1 < end || ended))
                return Taken(looked + found, 1);
            if (found < 0 && end - start > most)
                return Cut(most);
            looked = found >= 0 ? looked + found : end - start;
            if (ended)
                return end == start ? null : Taken(looked, 0);
            Fill(end - start + 1);
        }
    }

    /// <summary>The text of bytes, or from which character on they are not UTF-8.</summary>
    public static (string Text, int? BrokenAt) Text(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return (Strict.GetString(bytes), null);
        }
        catch (DecoderFallbackException broken)
        {
            return (Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetCharCount(bytes[..Math.Clamp(broken.Index, 0, bytes.Length)]));
        }
    }

    private (string Line, int? BrokenAt) Taken(int length, int lineEnd)
    {
        var text = Text(buffer.AsSpan(start, length));
        if (lineEnd > 0 && buffer[start + length] == '\r' && start + length + 1 < end && buffer[start + length + 1] == '\n')
            lineEnd = 2;
        start += length + lineEnd;
        return text;
    }

    /// <summary>The beginning of a line that is too long; the rest of it is passed over.</summary>
    private (string Line, int? BrokenAt) Cut(int length)
    {
        var text = Encoding.UTF8.GetString(buffer, start, length);
        while (true)
        {
            var found = buffer.AsSpan(start, end - start).IndexOf((byte)'\n');
            start = found < 0 ? end : start + found + 1;
            if (found >= 0 || ended)
                return (text, null);
            Fill(1);
        }
    }

    /// <summary>Reads on until so many bytes are there, or all.</summary>
    private void Fill(int least)
    {
        if (!begun)
            Begin();
        while (end - start < least && !ended)
        {
            if (start > 0 && end == buffer.Length)
            {
                buffer.AsSpan(start, end - start).CopyTo(buffer);
                (start, end) = (0, end - start);
            }

            if (end == buffer.Length)
                Array.Resize(ref buffer, 2 * buffer.Length);
            var read = input.Read(buffer, end, buffer.Length - end);
            (end, ended) = (end + read, read == 0);
        }
    }

    /// <summary>Goes by the mark at the beginning, where there is one.</summary>
    private void Begin()
    {
        begun = true;
        end = input.ReadAtLeast(buffer.AsSpan(0, 2), 2, throwOnEndOfStream: false);
        if (buffer is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            input = Encoding.CreateTranscodingStream(input, new UnicodeEncoding(buffer[0] == 0xFE, false), Encoding.UTF8);
            end = 0;
            return;
        }

        end += input.ReadAtLeast(buffer.AsSpan(2, 1), 1, throwOnEndOfStream: false);
        if (buffer is [0xEF, 0xBB, 0xBF, ..])
            start = 3;
    }
}
