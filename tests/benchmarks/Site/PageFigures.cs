using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace RuleBook.Benchmarks;

/// <summary>
/// What the pages weigh, how tall they are on a phone, how soon they can be used and how soon they answer: a table in Markdown.
/// </summary>
internal static class PageFigures
{
    private const int Keys = 40;
    private const double Phone = 1_600_000;
    private static readonly TimeSpan Delay = TimeSpan.FromMilliseconds(150);

    private static readonly string[] Kinds =
    [
        "index.html",
        "check.html",
        "compare.html",
        "compare/us.html",
        "changes.html",
        "questions.html",
        "open.html",
        "coverage.html",
        "reread.html",
        "data.html",
        "words.html",
        "jurisdictions/au-qld.html",
        "topics/ride-height.html",
        "topics/ride-height/suspension-lift.html",
        "lines/au-qld/ride-height.yaml.html",
    ];

    public static async Task WriteAsync(string folder, int port, TextWriter output)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(CheckPage.Launch);
        await output.WriteLineAsync(
            $"{Environment.ProcessorCount} processors, load {Table.Load()}, Chromium {browser.Version}\n\n| what | figure |\n| --- | --- |"
        );
        foreach (var slower in (int[])[1, 4])
        {
            await using var context = await browser.NewContextAsync();
            var keys = await Keystrokes.MeasureAsync(await context.NewPageAsync(), $"http://127.0.0.1:{port}/", slower, Keys);
            var at = slower == 1 ? "at full speed" : $"the page's thread {slower} times slower";
            await output.WriteLineAsync(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| key to answer, {Keys} keys, {at} | median {keys.Within(0.5):0} ms, p95 {keys.Within(0.95):0} ms |"
                )
            );
            await output.WriteLineAsync(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| longest task of the page's thread, {at} | typing {keys.LongestBlock:0} ms, loading "
                        + $"{keys.LongestWhileLoading:0} ms |"
                )
            );
        }

        foreach (
            var (name, speed, delay) in ((string, double, TimeSpan)[])
                [("loopback", double.PositiveInfinity, TimeSpan.Zero), ("1.6 Mbit/s, 150 ms", Phone, Delay)]
        )
        {
            await using var wire = new Wire(port, speed, delay);
            await using var context = await browser.NewContextAsync(new() { ServiceWorkers = ServiceWorkerPolicy.Block });
            var page = await context.NewPageAsync();
            page.SetDefaultTimeout(180_000);
            var watch = Stopwatch.StartNew();
            await page.GotoAsync($"{wire.Root}check.html");
            await page.WaitForSelectorAsync("html[data-ready]");
            await output.WriteLineAsync(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| check page usable, first visit, {name} | {watch.Elapsed.TotalSeconds:0.0} s, {wire.Sent / 1e6:0.00} MB sent |"
                )
            );
        }

        await output.WriteLineAsync("\n| page | kB | kB sent (br) | height at 390 px |\n| --- | --- | --- | --- |");
        await using var phone = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        var look = await phone.NewPageAsync();
        foreach (var kind in Kinds)
        {
            await look.GotoAsync($"http://127.0.0.1:{port}/{kind}");
            var height = await look.EvaluateAsync<int>("document.documentElement.scrollHeight");
            var (whole, sent) = (new FileInfo(Path.Combine(folder, kind)).Length, new FileInfo(Path.Combine(folder, $"{kind}.br")).Length);
            await output.WriteLineAsync(
                string.Create(CultureInfo.InvariantCulture, $"| {kind} | {whole / 1e3:0} | {sent / 1e3:0} | {height} |")
            );
        }
    }
}
