using System.Diagnostics;
using Microsoft.Playwright;

namespace RuleBook.Benchmarks;

/// <summary>From the address to a form that answers.</summary>
internal static class CheckPage
{
    public static BrowserTypeLaunchOptions Launch { get; } =
        new()
        {
            ExecutablePath = "/usr/bin/chromium",
            Args =
            [
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
            ],
        };

    /// <summary>Visits with nothing kept from before, and visits after one in the same browser.</summary>
    public static async Task<(List<TimeSpan> First, List<TimeSpan> Again)> VisitAsync(string root, int visits)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(Launch);
        var (first, again) = (new List<TimeSpan>(), new List<TimeSpan>());
        for (var i = 0; i < visits; i++)
        {
            await using var context = await browser.NewContextAsync();
            first.Add(await OpenAsync(await context.NewPageAsync(), root));
            again.Add(await OpenAsync(await context.NewPageAsync(), root));
        }

        return (first, again);
    }

    private static async Task<TimeSpan> OpenAsync(IPage page, string root)
    {
        var watch = Stopwatch.StartNew();
        await page.GotoAsync($"{root}check.html");
        await page.WaitForSelectorAsync("html[data-ready]");
        return watch.Elapsed;
    }
}
