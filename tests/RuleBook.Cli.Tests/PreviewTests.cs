using System.IO.Compression;
using System.Net;
using System.Net.Sockets;
using RuleBook.Cli.Commands;

namespace RuleBook.Cli.Tests;

/// <summary>The preview serves the files of its folder, to be read (RFC 9110, 9.3), and nothing beside it.</summary>
public sealed class PreviewTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-preview-").FullName;

    private string Site => Path.Combine(folder, "site");

    public PreviewTests()
    {
        Directory.CreateDirectory(Path.Combine(Site, "topics"));
        File.WriteAllText(Path.Combine(Site, "index.html"), "<p>home</p>");
        File.WriteAllText(Path.Combine(Site, "topics", "towing.html"), "<p>towing</p>");
        File.WriteAllText(Path.Combine(folder, "secret.txt"), "not to be seen");
        Directory.CreateDirectory(Path.Combine(folder, "site-beside"));
        File.WriteAllText(Path.Combine(folder, "site-beside", "secret.txt"), "nor this");
    }

    [Theory]
    [InlineData("/", "index.html")]
    [InlineData("/topics/towing.html", "topics/towing.html")]
    [InlineData("/topics/%74owing.html", "topics/towing.html")]
    [InlineData("/missing.html", null)]
    [InlineData("/../secret.txt", null)]
    [InlineData("/..%2Fsecret.txt", null)]
    [InlineData("/topics/../../secret.txt", null)]
    [InlineData("/../site-beside/secret.txt", null)]
    [InlineData("//etc/passwd", null)]
    public void Only_files_of_the_site_are_found(string path, string? file) =>
        Preview.Find(Site, path).ShouldBe(file is null ? null : Path.Combine(Site, file));

    [Fact]
    public async Task It_is_read_and_never_written()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var port = FreePort();
        var serving = Preview.ServeAsync(Site, port, TextWriter.Null, stop.Token);
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}/") };
        (await client.GetStringAsync("topics/towing.html", stop.Token)).ShouldBe("<p>towing</p>");
        // RFC 9110, 12.5.3: a coding that the client takes; the file as it is where there is none.
        await using (var packed = new GZipStream(File.Create(Path.Combine(Site, "index.html.gz")), CompressionMode.Compress))
            packed.Write("<p>home</p>"u8);
        foreach (var (accepted, coding) in new[] { ("gzip", "gzip"), ("br", null) })
        {
            using var asked = new HttpRequestMessage(HttpMethod.Get, "index.html") { Headers = { { "Accept-Encoding", accepted } } };
            using var answer = await client.SendAsync(asked, stop.Token);
            answer.Content.Headers.ContentEncoding.FirstOrDefault().ShouldBe(coding);
            var bytes = await answer.Content.ReadAsByteArrayAsync(stop.Token);
            bytes.ShouldBe(await File.ReadAllBytesAsync(Path.Combine(Site, coding is null ? "index.html" : "index.html.gz"), stop.Token));
        }

        foreach (var method in new[] { HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete, HttpMethod.Options })
        {
            using var asked = new HttpRequestMessage(method, "index.html");
            using var answer = await client.SendAsync(asked, stop.Token);
            answer.StatusCode.ShouldBe(HttpStatusCode.MethodNotAllowed, method.Method);
        }

        await stop.CancelAsync();
        await serving;
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
