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

    /// <summary>Each file as what it is, which a browser is not to guess, and asked for anew each time; br before gzip.</summary>
    [Theory]
    [InlineData("index.html", "text/html; charset=utf-8", "br")]
    [InlineData("site.css", "text/css; charset=utf-8", null)]
    [InlineData("form.js", "text/javascript; charset=utf-8", null)]
    [InlineData("form.json", "application/json; charset=utf-8", null)]
    [InlineData("evaluator.wasm", "application/wasm", null)] // which is compiled while it comes only as this
    [InlineData("chart.svg", "image/svg+xml", null)]
    [InlineData("limits.csv", "text/csv; charset=utf-8", null)]
    [InlineData("changes.atom", "application/atom+xml; charset=utf-8", null)]
    [InlineData("days.ics", "text/calendar; charset=utf-8", null)]
    [InlineData("CNAME", "text/plain; charset=utf-8", null)]
    [InlineData("missing.html", null, null)]
    public async Task A_file_is_given_as_what_it_is(string name, string? type, string? coding)
    {
        if (type is not null)
            await File.WriteAllTextAsync(Path.Combine(Site, name), "content", TestContext.Current.CancellationToken);
        foreach (var ending in (string[])["br", "gz"])
            await File.WriteAllTextAsync(Path.Combine(Site, $"index.html.{ending}"), ending, TestContext.Current.CancellationToken);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var (port, said) = (FreePort(), new StringWriter { NewLine = "\n" });
        var serving = Preview.ServeAsync(Site, port, said, stop.Token);
        said.ToString().ShouldBe($"http://127.0.0.1:{port}/ (Ctrl+C ends it)\n");
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}/") };
        foreach (var method in new[] { HttpMethod.Get, HttpMethod.Head })
        {
            using var asked = new HttpRequestMessage(method, name) { Headers = { { "Accept-Encoding", "gzip, deflate, br" } } };
            using var answer = await client.SendAsync(asked, stop.Token);
            answer.StatusCode.ShouldBe(type is null ? HttpStatusCode.NotFound : HttpStatusCode.OK);
            answer.Content.Headers.ContentType?.ToString().ShouldBe(type);
            answer.Content.Headers.ContentEncoding.FirstOrDefault().ShouldBe(coding);
            var text = await answer.Content.ReadAsStringAsync(stop.Token);
            text.ShouldBe(method == HttpMethod.Head || type is null ? "" : coding ?? "content");
            if (type is null)
                continue;
            answer.Content.Headers.ContentLength.ShouldBe((coding ?? "content").Length);
            answer.Headers.GetValues("X-Content-Type-Options").ShouldBe(["nosniff"]);
            answer.Headers.GetValues("Cache-Control").ShouldBe(["no-cache"]);
            answer.Headers.GetValues("Vary").ShouldBe(["Accept-Encoding"]);
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
