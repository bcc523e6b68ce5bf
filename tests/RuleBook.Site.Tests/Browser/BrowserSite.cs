using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RuleBook.Authoring.Tests;
using RuleBook.Cli.Commands;
using RuleBook.Site.Building;
using RuleBook.Site.Tests.Browser;
using RuleBook.Site.Tests.Pages;
using Xunit.Sdk;

[assembly: AssemblyFixture(typeof(BrowserSite))]

namespace RuleBook.Site.Tests.Browser;

/// <summary>The site of the whole book with its check page, on loopback below a sub-path, and a browser to look at it.</summary>
public sealed class BrowserSite : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";
    private const string SubPath = "some/where";

    private static readonly string[] Switches =
    [
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    /// <summary>What the tests of a class have opened; they run one after another.</summary>
    private readonly ConcurrentDictionary<string, List<(ITest For, IBrowserContext Context)>> opened = new(StringComparer.Ordinal);

    private readonly TemporaryFolder temporary = new();
    private readonly CancellationTokenSource stop = new();
    private Task serving = Task.CompletedTask;
    private IPlaywright? playwright;
    private IBrowser? browser;
    private string? lacking;

    /// <summary>Ends with a slash.</summary>
    public string Root { get; private set; } = "";

    /// <summary>The folder that is served.</summary>
    internal string Folder => temporary.Path;

    /// <summary>The folder of the site itself.</summary>
    internal string Pages => Path.Combine(Folder, SubPath);

    internal static string Bundle { get; } =
        Path.Combine(TheBook.Folder, "src", "RuleBook.Browser", "bin", "Release", "net10.0", "publish", "wwwroot");

    /// <summary>
    /// A page of its own, open until the next test of the class opens one; fails under CI, and is skipped elsewhere, when there is no
    /// browser or no published evaluator.
    /// </summary>
    public async Task<IPage> OpenAsync(BrowserNewContextOptions? options = null)
    {
        Need();
        var test = TestContext.Current.Test!;
        var open = opened.GetOrAdd(TestContext.Current.TestClass!.UniqueID, _ => []);
        foreach (var (_, old) in open.Where(each => each.For != test))
            await old.CloseAsync();
        open.RemoveAll(each => each.For != test);
        var context = await browser!.NewContextAsync(options ?? new());
        open.Add((test, context));
        context.SetDefaultTimeout(15_000);
        return await context.NewPageAsync();
    }

    public async ValueTask InitializeAsync()
    {
        lacking =
            !File.Exists(Chromium) ? $"{Chromium} is not installed"
            : !File.Exists(Path.Combine(Bundle, "_framework", "dotnet.js"))
                ? "the evaluator is not published: dotnet publish src/RuleBook.Browser -c Release"
            : null;
        if (lacking is not null)
            return;
        SiteFolder.Write(
            SiteBuild.Render(TheBook.Input with { Check = SiteCommand.Bundle(Bundle, TheBook.Folder), Since = SampleEdition.OfEachKind }),
            Pages
        );
        var port = FreePort();
        Root = $"http://127.0.0.1:{port}/{SubPath}/";
        serving = Preview.ServeAsync(Folder, port, TextWriter.Null, stop.Token);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = Switches });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
        await stop.CancelAsync();
        await serving;
        stop.Dispose();
        temporary.Dispose();
    }

    /// <summary>Opens the check page with a job in its address and waits for the evaluator.</summary>
    internal async Task<IPage> CheckAsync(string job = "", BrowserNewContextOptions? options = null)
    {
        var page = await OpenAsync(options);
        await page.GotoAsync($"{Root}check.html{(job.Length > 0 ? $"#{Uri.EscapeDataString(job)}" : "")}");
        await page.WaitForSelectorAsync("html[data-ready]");
        await SettledAsync(page);
        return page;
    }

    /// <summary>Waits until the page has answered what stands in the form, or has said why not.</summary>
    internal static Task SettledAsync(IPage page) => page.Locator("#answer[aria-busy=false]").WaitForAsync();

    /// <summary>
    /// Waits until the page is another one, without waiting for all that it loads: an event that comes before one waits for it is never
    /// heard.
    /// </summary>
    /// <param name="page">What is left.</param>
    /// <param name="address">Part of the address of the page to come, as a pattern.</param>
    internal static Task ArrivedAsync(IPage page, string address) =>
        Assertions.Expect(page).ToHaveURLAsync(new Regex(address), new() { Timeout = 15_000 });

    internal void Need()
    {
        if (lacking is null)
            return;
        if (Environment.GetEnvironmentVariable("CI") == "true")
            Assert.Fail(lacking);
        Assert.Skip(lacking);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
