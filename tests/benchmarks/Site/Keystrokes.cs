using System.Text.Json;
using Microsoft.Playwright;

namespace RuleBook.Benchmarks;

/// <summary>From a key to the answer that it gives, and how long the page could not be typed into.</summary>
/// <param name="Times">Each from the key's event to the frame that shows the verdict, the page's own pause of 120 ms included.</param>
/// <param name="LongestBlock">The longest task of the page's own thread while typing; zero where none took 50 ms.</param>
/// <param name="LongestWhileLoading">The same while the page loaded.</param>
internal sealed record Keystrokes(IReadOnlyList<double> Times, double LongestBlock, double LongestWhileLoading)
{
    private const string Job = """
        {"job":"W-0117","registered-in":"au-qld","on":"2026-11-20",
        "vehicle":{"category":"MC","four-wheel-drive":"yes","stability-control":"yes","first-registered":"2021-03-15",
        "tyres":["265/65R17 112S"],
        "tare":"2240 kg","tare-axles":{"front":"1190 kg","rear":"1050 kg"},
        "wheelbase":"2800 mm","ratings":{"gvm":"3000 kg","front-axle":"1450 kg","rear-axle":"1750 kg"}},
        "modification":{"suspension-lift":"45 mm","tyres":"265/70R17 115S"}}
        """;

    private const string Watch = """
        (() => {
          window.tasks = [];
          new PerformanceObserver(list => tasks.push(...list.getEntries().map(each => each.duration))).observe({ type: "longtask",
            buffered: true });
        })()
        """;

    private const string Time = """
        () => {
          window.times = [];
          let asked;
          const said = document.getElementById("said");
          document.getElementById("job").addEventListener("input", event => { asked = event.timeStamp; }, true);
          new MutationObserver(() => {
            if (said.classList.contains("before") || asked === undefined) return;
            const since = asked;
            asked = undefined;
            requestAnimationFrame(() => times.push(performance.now() - since));
          }).observe(said, { attributes: true, attributeFilter: ["class"] });
        }
        """;

    /// <summary>Types into the check page.</summary>
    /// <param name="page">A page that is open on nothing.</param>
    /// <param name="root">Where the site stands.</param>
    /// <param name="slower">How many times slower the page's own thread is made.</param>
    /// <param name="keys">How many keys.</param>
    public static async Task<Keystrokes> MeasureAsync(IPage page, string root, int slower, int keys)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = slower });
        await page.AddInitScriptAsync(Watch);
        await page.GotoAsync($"{root}check.html#{Uri.EscapeDataString(Job)}");
        await page.Locator("#answer[aria-busy=false]").WaitForAsync(new() { Timeout = 120_000 });
        var loading = await LongestAsync(page);
        await page.EvaluateAsync("tasks.length = 0");
        await page.EvaluateAsync(Time);
        var field = page.Locator("[id='i-modification.suspension-lift']");
        await field.FocusAsync();
        await page.Keyboard.PressAsync("End");
        for (var i = 0; i < keys; i++)
        {
            await page.Keyboard.PressAsync(i % 2 == 0 ? "Backspace" : $"{i % 10}");
            await page.WaitForFunctionAsync("count => times.length > count", i, new() { Timeout = 60_000 });
        }

        var times = await page.EvaluateAsync<JsonElement>("times");
        return new Keystrokes([.. times.EnumerateArray().Select(time => time.GetDouble()).Order()], await LongestAsync(page), loading);
    }

    /// <summary>The time within which a share of the keys were answered.</summary>
    public double Within(double share) => Times[(int)Math.Ceiling(share * Times.Count) - 1];

    private static async Task<double> LongestAsync(IPage page) => await page.EvaluateAsync<double>("Math.max(0, ...tasks)");
}
