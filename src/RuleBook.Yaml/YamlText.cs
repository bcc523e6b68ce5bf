using System.Buffers;
using System.Text;
using RuleBook.Text;

namespace RuleBook.Yaml;

/// <summary>
/// Reads YAML 1.2 (and JSON, which is YAML in flow style) into <see cref="Node"/>s that know their place.
/// Bounded in size and depth; anchors, aliases, tags and several documents are refused, so that no input can grow while it is read.
/// </summary>
public static class YamlText
{
    /// <summary>The most bytes that an input may have: one mebibyte.</summary>
    public const int LargestInput = 1024 * 1024;

    /// <summary>The most lists and mappings that may lie inside one another.</summary>
    public const int DeepestNesting = 64;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads <paramref name="text"/>.</summary>
    /// <param name="text">YAML or JSON; a leading byte order mark is passed over.</param>
    /// <param name="file">Name under which problems are reported.</param>
    /// <returns>The root. A value that is left out, <c>null</c> or <c>~</c> is a <see cref="Scalar"/> without text.</returns>
    /// <exception cref="InputException">It cannot be read; the problem says where and what would be right.</exception>
    public static Node Read(string text, string file)
    {
        if (text.Length > LargestInput)
            throw new InputException(YamlProblems.TooLarge(file));
        var body = text.StartsWith('\uFEFF') ? text[1..] : text;
        YamlCharacters.Check(body, file);
        return new YamlNodes(body, file).Read();
    }

    /// <summary>Reads UTF-8.</summary>
    /// <inheritdoc cref="Read(string, string)"/>
    public static Node Read(ReadOnlySpan<byte> bytes, string file) => Read(Decode(bytes, file), file);

    /// <summary>Reads UTF-8 from a stream, and no more of it than is allowed.</summary>
    /// <inheritdoc cref="Read(string, string)"/>
    public static Node Read(Stream stream, string file) => Read(Text(stream, file), file);

    /// <summary>Reads a file; one that is too large is refused before it is opened.</summary>
    /// <param name="path">The file.</param>
    /// <param name="file">Name under which problems are reported; the path when null.</param>
    /// <exception cref="InputException">It is not there, is too large or cannot be read.</exception>
    public static Node ReadFile(string path, string? file = null) => Read(FileText(path, file ?? path), file ?? path);

    /// <summary>The text of a file within the same bounds.</summary>
    /// <inheritdoc cref="ReadFile(string, string?)"/>
    public static string FileText(string path, string file)
    {
        try
        {
            var about = new FileInfo(path);
            if (!about.Exists)
                throw new InputException(YamlProblems.NoFile(file));
            if (about.Length > LargestInput)
                throw new InputException(YamlProblems.TooLarge(file));
            using var stream = about.OpenRead();
            return Text(stream, file);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException(YamlProblems.Unreadable(file, error.Message));
        }
    }

    /// <summary>The text of a stream within the same bounds.</summary>
    /// <inheritdoc cref="Read(Stream, string)"/>
    public static string Text(Stream stream, string file)
    {
        var buffer = ArrayPool<byte>.Shared.Rent(LargestInput + 1);
        try
        {
            var length = stream.ReadAtLeast(buffer, LargestInput + 1, throwOnEndOfStream: false);
            return Decode(buffer.AsSpan(0, length), file);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    /// <summary>The text of bytes within the same bounds.</summary>
    /// <inheritdoc cref="Read(ReadOnlySpan{byte}, string)"/>
    public static string Text(ReadOnlySpan<byte> bytes, string file) => Decode(bytes, file);

    private static string Decode(ReadOnlySpan<byte> bytes, string file)
    {
        if (bytes.Length > LargestInput)
            throw new InputException(YamlProblems.TooLarge(file));
        try
        {
            var text = Utf8.GetString(bytes);
            return text.StartsWith('\uFEFF') ? text[1..] : text;
        }
        catch (DecoderFallbackException error)
        {
            var before = Encoding.UTF8.GetString(bytes[..Math.Clamp(error.Index, 0, bytes.Length)]);
            throw new InputException(YamlProblems.NotUtf8(YamlCharacters.Place(before, before.Length, file)));
        }
    }
}
