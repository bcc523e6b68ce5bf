using Microsoft.Playwright;

namespace RuleBook.Site.Tests.Browser;

/// <summary>
/// What the check page shows when there is no answer, when something stands in the way, and when there is nothing to judge: words and
/// states.
/// </summary>
public sealed class NoFalseComfortTests(BrowserSite site)
{
    private const string Empty = """{"registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC"}}""";

    private const string Overloaded = """
        {"registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC","four-wheel-drive":"yes","stability-control":"yes",
         "tare":"2500 kg","ratings":{"gvm":"2600 kg"}},
         "modification":{"suspension-lift":"45 mm","accessories":[{"name":"bar","mass":"300 kg","behind-front-axle":"0 mm"}]}}
        """;

    /// <summary>In place of the evaluator: it fails in the way that the job names, and allows every other job.</summary>
    private const string Broken = """
        const good = JSON.stringify({ headline: "no-certificate", json: "{}", loads: [], lacking: [], questions: [],
          blocks: [{ kind: "title", text: "Allowed without a certificate." }, { kind: "line", text: "Bear in mind." }] });
        const ways = {
          throws: () => { throw new Error("out of bounds"); },
          failure: () => JSON.stringify({ failure: "DivideByZeroException: no" }),
          garbage: () => "<html>",
          nothing: () => "null",
          halfway: () => JSON.stringify({ headline: "no-certificate", json: "{}", blocks: [{ kind: "table", text: "" }] }),
        };
        const Assess = job => (ways[JSON.parse(job).job] ?? (() => good))();
        const Evaluator = { Open() {}, Read: () => { throw new Error("no"); }, Assess, Record: Assess, Reasons: Assess, Across: Assess,
            Margin: Assess };
        const runtime = { getAssemblyExports: async () => ({ RuleBook: { Browser: { Evaluator } } }),
            getConfig: () => ({ mainAssemblyName: "x" }) };
        export const dotnet = { withModuleConfig() { return this; }, create: async () => runtime };
        """;

    [Fact]
    public async Task When_the_evaluator_fails_nothing_of_the_last_verdict_stays_and_the_page_says_that_there_is_no_answer()
    {
        var page = await site.OpenAsync(
            new()
            {
                ServiceWorkers = ServiceWorkerPolicy.Block,
                ViewportSize = new() { Width = 360, Height = 740 },
            }
        );
        await page.RouteAsync(
            "**/_framework/dotnet.js",
            route => route.FulfillAsync(new() { ContentType = "text/javascript", Body = Broken })
        );
        await page.GotoAsync($"{site.Root}check.html#{Uri.EscapeDataString("""{"registered-in":"au-qld"}""")}");
        await page.Locator(".verdict").WaitForAsync();
        (await page.Locator("#brief").InnerTextAsync()).ShouldContain("Allowed");

        foreach (
            var (way, reason) in ((string, string)[])
                [("throws", "out of bounds"), ("failure", "DivideByZeroException"), ("garbage", ""), ("nothing", ""), ("halfway", "")]
        )
        {
            await page.GetByLabel("job number or name").FillAsync(way);
            await page.Locator("#problems .failed").WaitForAsync();
            (await page.Locator(".verdict").CountAsync()).ShouldBe(0);
            (await page.Locator("#answer").InnerTextAsync()).ShouldNotContain("Allowed");
            (await page.Locator("#problems").InnerTextAsync()).ShouldContain("No answer could be made");
            (await page.Locator("#problems").InnerTextAsync()).ShouldContain(reason);
            (await page.Locator("#brief").InnerTextAsync()).ShouldBe("No answer could be made");
            (await page.Locator("#more").IsHiddenAsync()).ShouldBeTrue();
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            (await page.Locator("#problems").IsVisibleAsync()).ShouldBeTrue();
            await page.EmulateMediaAsync(new() { Media = Media.Screen });

            await page.GetByLabel("job number or name").FillAsync("well again");
            await page.Locator(".verdict").WaitForAsync();
            (await page.Locator("#problems").InnerTextAsync()).ShouldBeEmpty();
        }
    }

    [Fact]
    public async Task A_job_that_cannot_be_takes_the_verdict_away_and_is_explained()
    {
        var page = await site.CheckAsync();
        foreach (
            var (job, explained) in ((string, string)[])
                [
                    ("""{"job":"\ud800","registered-in":"au-qld","on":"2026-11-20"}""", "half of a character"),
                    ("""{"registered-in":"au-qld","on":"9999-12-31"}""", "not a day of the calendar"),
                ]
        )
        {
            await page.EvaluateAsync("job => { location.hash = '#' + encodeURIComponent(job); }", CheckTests.Wagon);
            await page.Locator(".card:not([inert]) .verdict").WaitForAsync();
            await page.EvaluateAsync("job => { location.hash = '#' + encodeURIComponent(job); }", job);
            await page.Locator("#problems", new() { HasText = explained }).WaitForAsync();
            (await page.Locator(".verdict").CountAsync()).ShouldBe(0, job);
        }
    }

    /// <summary>
    /// What the axles carry beyond the trailer's mass is taken off the ball (statics: the sum of the supports is the weight).
    /// </summary>
    [Fact]
    public async Task A_trailer_that_weighs_less_than_its_axles_carry_lifts_the_vehicle_and_that_is_the_first_line()
    {
        var page = await site.CheckAsync(
            """{"registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC","tare":"2000 kg"},"trailer":{"mass":"1000"""
                + """ kg","axles":"1200 kg"}}"""
        );
        await page.Locator(".verdict.blocked").WaitForAsync();
        (await page.Locator(".verdict").InnerTextAsync()).ShouldContain("the trailer lifts the back of the vehicle");
    }

    [Fact]
    public async Task An_address_without_a_job_that_can_be_read_takes_the_verdict_away()
    {
        var page = await site.CheckAsync(CheckTests.Wagon);
        await page.Locator(".verdict").WaitForAsync();
        await page.EvaluateAsync("() => { location.hash = '#%7Bbroken'; }");
        await page.Locator("#problems", new() { HasText = "holds no job that can be read" }).WaitForAsync();
        (await page.Locator(".verdict").CountAsync()).ShouldBe(0);
    }

    [Fact]
    public async Task A_job_that_changes_nothing_is_nothing_to_judge_and_never_green()
    {
        var page = await site.CheckAsync(
            Empty,
            new()
            {
                ViewportSize = new() { Width = 360, Height = 740 },
            }
        );
        await page.Locator(".verdict.nothing-to-judge").WaitForAsync();
        (await page.Locator(".verdict").InnerTextAsync()).ShouldStartWith("Nothing to judge");
        (await page.Locator("#brief").InnerTextAsync()).ShouldStartWith("Nothing to judge");
        (await page.Locator("#said").InnerTextAsync()).ShouldNotContain("Allowed without a certificate");
    }

    [Fact]
    public async Task What_stands_in_the_way_is_the_first_line_and_the_pathway_the_second_on_screen_phone_and_paper()
    {
        var page = await site.CheckAsync(
            Overloaded,
            new()
            {
                ViewportSize = new() { Width = 360, Height = 740 },
            }
        );
        await page.Locator(".verdict.blocked").WaitForAsync();
        (await page.Locator(".verdict").InnerTextAsync()).ShouldStartWith("Not as planned: ");
        var second = await page.Locator("#said > p").AllInnerTextsAsync();
        second.First(text => text.StartsWith("The modification itself: ", StringComparison.Ordinal)).ShouldNotBeEmpty();
        (await page.Locator("#brief").InnerTextAsync()).ShouldMatch("^(?i)not as planned: .* The modification itself: ");
        (await page.Locator("#brief").GetAttributeAsync("class")).ShouldBe("blocked");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var paper = page.Locator("#sheet .decision p");
        (await paper.First.IsVisibleAsync()).ShouldBeTrue();
        (await paper.AllInnerTextsAsync())
            .Take(2)
            .Select(line => line.Split(':')[0])
            .ShouldBe(["NOT AS PLANNED", "The modification itself"]);
    }

    [Fact]
    public async Task An_edition_without_a_check_page_takes_the_worker_of_an_earlier_one_out_of_the_browser_and_leaves_other_sites_alone()
    {
        var page = await site.OpenAsync();
        var folder = Directory.CreateDirectory(Path.Combine(site.Folder, "retiring")).FullName;
        var templates = Path.Combine(TheBook.Folder, "site-templates");
        var token = TestContext.Current.CancellationToken;
        await File.WriteAllTextAsync(Path.Combine(folder, "index.html"), "<!DOCTYPE html><title>x</title>", token);
        var worker = await File.ReadAllTextAsync(Path.Combine(templates, "worker.js"), token);
        await File.WriteAllTextAsync(
            Path.Combine(folder, "worker.js"),
            $"const version = '1'; const files = ['index.html'];\n{worker}",
            token
        );
        await page.GotoAsync(new Uri(new Uri(site.Root), "../../retiring/index.html").ToString());
        await page.EvaluateAsync(
            "async () => { await caches.open('rulebook:/elsewhere/:1'); await navigator.serviceWorker.register('worker.js'); await "
                + "navigator.serviceWorker.ready; }"
        );
        (await page.EvaluateAsync<string[]>("() => caches.keys()")).ShouldContain("rulebook:/retiring/:1");

        File.Copy(Path.Combine(templates, "retire.js"), Path.Combine(folder, "worker.js"), overwrite: true);
        await page.EvaluateAsync("async () => (await navigator.serviceWorker.getRegistration()).update().catch(() => {})");
        await page.WaitForFunctionAsync("async () => !(await navigator.serviceWorker.getRegistration())");
        await page.WaitForFunctionAsync("async () => (await caches.keys()).join() === 'rulebook:/elsewhere/:1'");
    }
}
