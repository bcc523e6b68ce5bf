using System.Buffers;
using System.Collections.Immutable;
using System.IO.Compression;
using RuleBook.Site.Data;

namespace RuleBook.Site.Building;

/// <summary>How hard files are compressed.</summary>
public enum Effort
{
    /// <summary>In a second or two for the whole site.</summary>
    Fast,

    /// <summary>As small as can be, for a release: a minute and more.</summary>
    Smallest,
}

/// <summary>What servers send compressed lies ready beside each file: <c>.gz</c> (RFC 1952) and <c>.br</c> (RFC 7932).</summary>
public static class CompressedFiles
{
    /// <summary>Smaller files gain nothing.</summary>
    private const int Smallest = 256;

    private const int Window = 22;

    private static readonly string[] Endings =
    [
        ".html",
        ".css",
        ".js",
        ".json",
        ".wasm",
        ".svg",
        ".csv",
        ".xml",
        ".atom",
        ".ics",
        ".txt",
        ".yaml",
    ];

    /// <summary>The files with their compressed copies, in ordinal order of the paths. The same files give the same bytes.</summary>
    /// <param name="files">The files of a site.</param>
    /// <param name="effort">How hard to compress.</param>
    /// <param name="ready">A copy of that path that somebody has made already, or null; it is taken when it holds the same file.</param>
    public static ImmutableArray<SiteFile> Beside(IEnumerable<SiteFile> files, Effort effort, Func<string, byte[]?>? ready = null) =>
        [
            .. files
                .AsParallel()
                .AsOrdered()
                .SelectMany(file => With(file, effort, ready ?? (_ => null)))
                .AsEnumerable()
                .OrderBy(file => file.Path, StringComparer.Ordinal),
        ];

    private static SiteFile[] With(SiteFile file, Effort effort, Func<string, byte[]?> ready)
    {
        if (file.Path == SiteFolder.Marker || file.Content.Length < Smallest || !Endings.Contains(Path.GetExtension(file.Path)))
            return [file];
        if (IsAwaited(file.Path))
            effort = Effort.Smallest;
        var (br, gz) = ($"{file.Path}.br", $"{file.Path}.gz");
        return
        [
            file,
            new SiteFile(
                br,
                Same(file, ready(br), packed => new BrotliStream(packed, CompressionMode.Decompress)) ?? Brotli(file.Content.Span, effort)
            ),
            new SiteFile(
                gz,
                Same(file, ready(gz), packed => new GZipStream(packed, CompressionMode.Decompress)) ?? Gzip(file.Content.Span, effort)
            ),
        ];
    }

    /// <summary>Whether the first answer waits for it: that is made as small as can be, whatever the effort.</summary>
    private static bool IsAwaited(string path) =>
        path is "check.html" or NodesJson.Path
        || (!path.Contains('/', StringComparison.Ordinal) && Path.GetExtension(path) is ".js" or ".css");

    /// <summary>The copy, where it holds the file; otherwise null.</summary>
    private static byte[]? Same(SiteFile file, byte[]? copy, Func<Stream, Stream> open)
    {
        if (copy is null)
            return null;
        try
        {
            using var read = new MemoryStream(file.Content.Length);
            using (var unpacked = open(new MemoryStream(copy)))
                unpacked.CopyTo(read);
            return read.ToArray().AsSpan().SequenceEqual(file.Content.Span) ? copy : null;
        }
        catch (Exception broken) when (broken is InvalidDataException or InvalidOperationException)
        {
            return null;
        }
    }

    private static byte[] Brotli(ReadOnlySpan<byte> content, Effort effort)
    {
        var buffer = ArrayPool<byte>.Shared.Rent(BrotliEncoder.GetMaxCompressedLength(content.Length));
        try
        {
            return BrotliEncoder.TryCompress(content, buffer, out var written, effort == Effort.Fast ? 4 : 11, Window)
                ? buffer[..written]
                : throw new InvalidOperationException("the buffer holds what the encoder says it may write");
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static byte[] Gzip(ReadOnlySpan<byte> content, Effort effort)
    {
        using var written = new MemoryStream();
        using (
            var gzip = new GZipStream(
                written,
                effort == Effort.Fast ? CompressionLevel.Fastest : CompressionLevel.SmallestSize,
                leaveOpen: true
            )
        )
            gzip.Write(content);
        return written.ToArray();
    }
}
