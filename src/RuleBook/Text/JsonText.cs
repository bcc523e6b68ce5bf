using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace RuleBook.Text;

/// <summary>Opens a JSON text: indented, with line feeds, one of them at the end; the same bytes on every system.</summary>
internal static class JsonText
{
    private const int LargestSpare = 1 << 16;

    private static ArrayBufferWriter<byte>? spare; // of the last text written, for the next

    private static readonly JsonWriterOptions Safe = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Default,
    };

    private static readonly JsonWriterOptions Readable = Safe with { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>With every character escaped that could mean something in a page.</summary>
    public static string Write(Action<Utf8JsonWriter> write) => Write(write, Safe);

    /// <summary>With as little escaped as JSON allows: for files that are never put into a page.</summary>
    public static string WriteReadable(Action<Utf8JsonWriter> write) => Write(write, Readable);

    private static string Write(Action<Utf8JsonWriter> write, JsonWriterOptions options)
    {
        var buffer = Interlocked.Exchange(ref spare, null) ?? new ArrayBufferWriter<byte>(LargestSpare / 4);
        buffer.ResetWrittenCount();
        using (var json = new Utf8JsonWriter(buffer, options))
            write(json);
        buffer.Write("\n"u8);
        var text = Encoding.UTF8.GetString(buffer.WrittenSpan);
        if (buffer.Capacity <= LargestSpare)
            spare = buffer;
        return text;
    }
}
