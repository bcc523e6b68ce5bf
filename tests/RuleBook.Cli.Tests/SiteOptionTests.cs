using System.Globalization;
using System.IO.Compression;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace RuleBook.Cli.Tests;

/// <summary>
/// What <c>rulebook site</c> takes and leaves behind, on the invented book; the evaluator of the check page is a stand-in.
/// </summary>
public sealed partial class SiteOptionTests : IDisposable
{
    private readonly string folder = InventedBookTests.Copy();

    private string Target => Path.Combine(folder, "out", "site");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_site_for_an_address_says_how_much_it_is_and_where_corrections_go()
    {
        var answer = await Site([
            "--address",
            "https://limits.example/book",
            "--report-to",
            "https://desk.example/new?text=",
            "--report-mail",
            "desk@limits.example",
        ]);
        (answer.Code, answer.Error).ShouldBe((0, ""));
        var files = new DirectoryInfo(Target).GetFiles("*", SearchOption.AllDirectories);
        var told = Told().Match(answer.Out);
        told.Groups[1].Value.ShouldBe(Target);
        Number(told, 2).ShouldBe(files.Length);
        // The manifest is counted without the names of the files, which are written into it behind them.
        var manifest = files.Single(file => file.Name == "rulebook-site.txt").Length;
        (Number(told, 3) * 1024).ShouldBeInRange(files.Sum(file => file.Length) - manifest - 1024, files.Sum(file => file.Length));
        Read("sitemap.xml").ShouldContain("<loc>https://limits.example/book/jurisdictions/xa.html</loc>");
        Read("jurisdictions/xa.html").ShouldContain("https://desk.example/new?text=Correction");
        Read("jurisdictions/xa.html").ShouldContain("mailto:desk@limits.example?subject=Correction");
        // The latest day on which a source may have been compared: one was in November 2026.
        Read("jurisdictions/xa.html").ShouldContain("<dd>30 November 2026</dd>");

        // What the start of the evaluator names is taken, and what an earlier one left is not.
        Directory
            .EnumerateFiles(Path.Combine(Target, "_framework"))
            .Select(Path.GetFileName)
            .ShouldBe(["dotnet.js", "dotnet.js.br", "dotnet.js.gz", "runtime.js", "evaluator.wasm"], ignoreOrder: true);
        Read("index.html").ShouldContain("check.html");
        File.Exists(Path.Combine(Target, "index.html.br")).ShouldBeTrue();
        File.Exists(Path.Combine(Target, "index.html.gz")).ShouldBeTrue();
        // A copy that publishing has stored holds the same file, and is taken as it is, though it is no smaller.
        new FileInfo(Path.Combine(Target, "_framework", "dotnet.js.gz")).Length.ShouldBeGreaterThan(
            new FileInfo(Path.Combine(Target, "_framework", "dotnet.js")).Length
        );
    }

    [Fact]
    public async Task As_on_a_day_given_the_limits_are_those_of_that_day_and_without_an_address_there_is_no_map()
    {
        // The folder's name only begins like one of the book's own.
        (await Site(["--on", "2012-06-01", "--compress", "no"], Path.Combine(folder, "jurisdictions-site"))).Code.ShouldBe(0);
        Read("../../jurisdictions-site/jurisdictions/xa.html").ShouldContain("<dd>1 June 2012</dd>");
        string[] made = Directory.GetFiles(Path.Combine(folder, "jurisdictions-site"), "*", SearchOption.AllDirectories);
        made.ShouldNotContain(file => file.EndsWith(".br") || file.EndsWith(".gz") || file.EndsWith("sitemap.xml"));
    }

    [Theory]
    [InlineData(
        "--address",
        "ftp://limits.example/",
        "--address:1:1: error no-address: 'ftp://limits.example/' is not the http(s) address"
    )]
    [InlineData("--address", "https://limits.example/?a=b", "is not the http(s) address of a folder (such as https://")]
    [InlineData("--address", "https://me@limits.example/#a", "is not the http(s) address of a folder (such as https://")]
    [InlineData("--check-page", "/no/such/folder", "error no-check-page: the folder has no _framework/dotnet.js (name the wwwroot folder")]
    [InlineData("--on", "soon", "--on:1:1: error not-a-date: 'soon' is not a day of the calendar")]
    public async Task What_cannot_be_is_told_and_no_site_is_written(string option, string value, string told)
    {
        var answer = await Site([option, value]);
        (answer.Code, answer.Out).ShouldBe((2, ""));
        answer.Error.ShouldContain(told);
        Directory.Exists(Target).ShouldBeFalse();
    }

    [Fact]
    public async Task A_busy_port_is_told_as_such()
    {
        using var busy = new TcpListener(IPAddress.Loopback, 0);
        busy.Start();
        var port = ((IPEndPoint)busy.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
        var answer = await Site(["--compress", "no", "--preview", "--port", port]);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldMatch(
            $"^--port:1:1: error no-port: the preview cannot listen on port {port}: .+ \\(name another with --port, such as 8322\\)\n$"
        );
    }

    [Theory]
    [InlineData("jurisdictions")]
    [InlineData("jurisdictions/site/")]
    [InlineData("schema/site")]
    public async Task A_site_inside_of_the_data_would_be_read_as_the_book(string within)
    {
        var answer = await Site([], Path.Combine(folder, within));
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain($"lies inside the book's {within.Split('/')[0]}/ (name a folder outside of the data, such as out/site)");
    }

    /// <summary>With a stand-in for the evaluator, unless the option is given.</summary>
    private Task<Invocation> Site(string[] options, string? target = null)
    {
        string[] check = options.Contains("--check-page") ? [] : ["--check-page", Evaluator()];
        return Invocation.Of(["site", target ?? Target, "--book", folder, .. check, .. options]);
    }

    private string Evaluator()
    {
        var framework = Directory.CreateDirectory(Path.Combine(folder, "wwwroot", "_framework")).FullName;
        var start = $"import \"runtime.js\"; // \"evaluator.wasm\" \"notes.txt\" {new string('x', 400)}\n";
        File.WriteAllText(Path.Combine(framework, "dotnet.js"), start);
        foreach (var name in (string[])["runtime.js", "evaluator.wasm", "notes.txt", "evaluator.old.wasm"])
            File.WriteAllText(Path.Combine(framework, name), name);
        using var packed = new GZipStream(File.Create(Path.Combine(framework, "dotnet.js.gz")), CompressionLevel.NoCompression);
        packed.Write(Encoding.UTF8.GetBytes(start));
        return Path.GetDirectoryName(framework)!;
    }

    private string Read(string path) => WebUtility.HtmlDecode(File.ReadAllText(Path.Combine(Target, path)));

    private static long Number(Match told, int group) => long.Parse(told.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(.+): ([0-9]+) files, ([0-9]+) KiB\n$")]
    private static partial Regex Told();
}
