using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using RuleBook.Site.Building;

namespace RuleBook.Site.Tests;

/// <summary>What a server sends compressed (RFC 1952, RFC 7932), unpacked by the library that everybody has.</summary>
public sealed class CompressedFilesTests
{
    /// <summary>Neither all alike nor all different, so that a greater effort makes it smaller.</summary>
    private static readonly byte[] Long = Encoding.UTF8.GetBytes(
        string.Concat(Enumerable.Range(0, 3000).Select(at => $"<p>{at * at % 97} mm, {at * 7919 % 1013} kg</p>\n"))
    );

    [Theory]
    [InlineData(Effort.Fast)]
    [InlineData(Effort.Smallest)]
    public void Beside_a_file_lies_the_same_file_compressed_twice_and_no_copy_of_what_gains_nothing(Effort effort)
    {
        SiteFile[] files =
        [
            new("b.png", Long),
            new("a.html", Long),
            new("256.css", new byte[256]),
            new("255.css", new byte[255]),
            new(SiteFolder.Marker, Long),
        ];
        var all = CompressedFiles.Beside(files, effort);
        all.Select(file => file.Path)
            .ShouldBe(["255.css", "256.css", "256.css.br", "256.css.gz", "a.html", "a.html.br", "a.html.gz", "b.png", SiteFolder.Marker]);
        Unpacked(Of(all, "a.html.br")).ShouldBe(Long);
        Unpacked(Of(all, "a.html.gz")).ShouldBe(Long);
        CompressedFiles.Beside(files, effort).Select(Bytes).ShouldBe(all.Select(Bytes));
    }

    [Theory]
    [InlineData(".html")]
    [InlineData(".css")]
    [InlineData(".js")]
    [InlineData(".json")]
    [InlineData(".wasm")]
    [InlineData(".svg")]
    [InlineData(".csv")]
    [InlineData(".xml")]
    [InlineData(".atom")]
    [InlineData(".ics")]
    [InlineData(".txt")]
    [InlineData(".yaml")]
    public void Each_kind_of_text_of_a_site_is_compressed(string ending) =>
        CompressedFiles.Beside([new SiteFile($"in/a{ending}", Long)], Effort.Fast).Length.ShouldBe(3);

    [Fact]
    public void What_the_first_answer_waits_for_is_as_small_as_can_be_whatever_the_effort()
    {
        string[] awaited = ["check.html", "check.js", "site.css", "data/book.json"];
        string[] others = ["index.html", "lines/check.js", "topics/a.css", "data/limits.json"];
        ImmutableArray<SiteFile> Made(Effort effort) =>
            CompressedFiles.Beside(awaited.Concat(others).Select(path => new SiteFile(path, Long)), effort);
        var (fast, smallest) = (Made(Effort.Fast), Made(Effort.Smallest));
        foreach (var path in (string[])[".br", ".gz"])
        {
            foreach (var own in awaited)
                Of(fast, own + path).Content.Length.ShouldBe(Of(smallest, own + path).Content.Length, own);
            foreach (var other in others)
                Of(fast, other + path).Content.Length.ShouldBeGreaterThan(Of(smallest, other + path).Content.Length, other);
        }
    }

    [Fact]
    public void A_copy_that_somebody_has_made_is_taken_where_it_holds_the_file_and_no_other_is()
    {
        SiteFile[] files = [new("a.html", Long)];
        var own = CompressedFiles.Beside(files, Effort.Fast);
        byte[] Stored(byte[] content, string ending)
        {
            using var packed = new MemoryStream();
            using (
                Stream stream =
                    ending == ".br"
                        ? new BrotliStream(packed, CompressionLevel.NoCompression, leaveOpen: true)
                        : new GZipStream(packed, CompressionLevel.NoCompression, leaveOpen: true)
            )
                stream.Write(content);
            return packed.ToArray();
        }

        foreach (var ending in (string[])[".br", ".gz"])
        {
            SiteFile With(byte[]? copy) =>
                Of(CompressedFiles.Beside(files, Effort.Fast, path => path == $"a.html{ending}" ? copy : null), $"a.html{ending}");
            var theirs = Stored(Long, ending);
            Bytes(With(theirs)).ShouldBe(Convert.ToBase64String(theirs));
            foreach (var wrong in (byte[]?[])[null, [], [1, 2, 3], Stored(Long[1..], ending), Stored([.. Long, 10], ending)])
                Bytes(With(wrong)).ShouldBe(Bytes(Of(own, $"a.html{ending}")));
        }
    }

    private static SiteFile Of(ImmutableArray<SiteFile> files, string path) => files.Single(file => file.Path == path);

    private static string Bytes(SiteFile file) => Convert.ToBase64String(file.Content.Span);

    private static byte[] Unpacked(SiteFile file)
    {
        using var packed = new MemoryStream(file.Content.ToArray());
        using Stream open = file.Path.EndsWith(".br", StringComparison.Ordinal)
            ? new BrotliStream(packed, CompressionMode.Decompress)
            : new GZipStream(packed, CompressionMode.Decompress);
        using var read = new MemoryStream();
        open.CopyTo(read);
        return read.ToArray();
    }
}
