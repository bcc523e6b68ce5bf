using System.IO.Compression;
using Microsoft.Playwright;
using RuleBook.Authoring.Tests;

namespace RuleBook.Site.Tests.Browser;

public sealed class CheckTests(BrowserSite site)
{
    internal const string Wagon =
        """{"job":"W-0117","registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC","four-wheel-drive":"yes","""
        + """ "stability-control":"yes","first-registered":"2021-03-15","tyres":["265/65R17 112S"]},"""
        + """ "modification":{"suspension-lift":"45 mm","body-lift":"25 mm","tyres":"265/70R17 115S"}}""";

    private const string TypeIn = """
        ([id, text]) => {
          const field = document.getElementById(id);
          field.dataset.kept = field.value;
          field.value = text;
          const settled = new Promise(done => document.addEventListener("settled", () => done(), { once: true }));
          field.dispatchEvent(new Event("change", { bubbles: true }));
          return settled;
        }
        """;

    private static async Task<string?> AnswerAsync(IPage page, string job)
    {
        await page.EvaluateAsync(
            "job => new Promise(done => { document.addEventListener('settled', () => done(), { once: true }); location.hash = '#' + "
                + "encodeURIComponent(job); })",
            job
        );
        return await page.Locator("#more").IsHiddenAsync() ? null : await page.Locator("#json").TextContentAsync();
    }

    [Fact]
    public async Task A_job_typed_into_the_form_gives_byte_for_byte_what_the_command_gives()
    {
        var page = await site.CheckAsync();
        await page.GetByLabel("job number or name").FillAsync("W-0117");
        await page.GetByLabel("registered in").SelectOptionAsync("au-qld");
        await page.GetByLabel("as on the day").FillAsync("2026-11-20");
        await page.GetByLabel("vehicle category", new() { Exact = true }).SelectOptionAsync("MC");
        await page.GetByLabel("four-wheel drive", new() { Exact = true }).SelectOptionAsync("yes");
        await page.GetByLabel("electronic stability control", new() { Exact = true }).SelectOptionAsync("yes");
        await page.GetByLabel("first registered (day/month/year, or not-yet)", new() { Exact = true }).FillAsync("2021-03-15");
        await page.GetByLabel("placard size 1, size").FillAsync("265/65R17 112S");
        await page.GetByLabel("suspension lift", new() { Exact = true }).FillAsync("45");
        await page.GetByLabel("body lift", new() { Exact = true }).FillAsync("25");
        await page.GetByLabel("tyres fitted", new() { Exact = true }).FillAsync("265/70R17 115S");
        await page.Locator(".verdict.certificate").WaitForAsync();
        await BrowserSite.SettledAsync(page);
        (await page.Locator("#json").TextContentAsync()).ShouldBe(TheCommand.Assess(Wagon));
    }

    [Fact]
    public async Task Every_example_job_and_six_thrown_together_give_byte_for_byte_what_the_command_gives()
    {
        var page = await site.CheckAsync();
        var files = Directory.GetFiles(Path.Combine(TheBook.Folder, "examples"), "*.yaml");
        files.Length.ShouldBeGreaterThan(5);
        foreach (var file in files.Order(StringComparer.Ordinal))
            TheCommand
                .FirstDifference(await AnswerAsync(page, TheCommand.Json(file)), await TheCommand.AssessAsync(file))
                .ShouldBeNull(file);

        var answered = 0;
        foreach (var job in RandomJobs.Of(6))
        {
            var expected = TheCommand.Assess(job);
            TheCommand.FirstDifference(await AnswerAsync(page, job), expected).ShouldBeNull(job);
            if (expected is not null)
                answered++;
        }

        answered.ShouldBeGreaterThan(4);
    }

    [Fact]
    public async Task The_address_holds_the_job_and_a_link_gives_the_same_answer()
    {
        var page = await site.CheckAsync(Wagon);
        await page.GetByLabel("suspension lift", new() { Exact = true }).FillAsync("80");
        await page.WaitForFunctionAsync("() => location.href.includes('80%20mm')");
        var linked = await site.OpenAsync();
        await linked.GotoAsync(page.Url);
        await linked.Locator(".verdict").WaitForAsync();
        await BrowserSite.SettledAsync(linked);
        await BrowserSite.SettledAsync(page);
        (await linked.Locator("#said").InnerTextAsync()).ShouldBe(await page.Locator("#said").InnerTextAsync());
    }

    [Fact]
    public async Task A_job_saved_and_opened_again_is_the_same_job()
    {
        var page = await site.CheckAsync(Wagon);
        var other = await site.CheckAsync();
        foreach (var (button, name) in ((string, string)[])[("#save", "W-0117.yaml"), ("#save-json", "W-0117.json")])
        {
            var download = await page.RunAndWaitForDownloadAsync(() => page.Locator(button).ClickAsync());
            download.SuggestedFilename.ShouldBe(name);
            using var folder = new TemporaryFolder();
            var file = Path.Combine(folder.Path, download.SuggestedFilename);
            await download.SaveAsAsync(file);
            (await TheCommand.AssessAsync(file)).ShouldBe(await page.Locator("#json").TextContentAsync());
            await other.Locator("#open").SetInputFilesAsync(file);
            await other.Locator(".card:not([inert]) .verdict").WaitForAsync();
            await BrowserSite.SettledAsync(other);
            (await other.Locator("#json").TextContentAsync()).ShouldBe(await page.Locator("#json").TextContentAsync());
            await other.Locator("#afresh").ClickAsync();
            await other.Locator("#sure-yes").ClickAsync();
        }

        // YAML 1.2.2, 10.2.1.1: a bare null is no name.
        await page.GetByLabel("job number or name").FillAsync("null");
        await page.Keyboard.PressAsync("Tab");
        await BrowserSite.SettledAsync(page);
        var named = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        (await File.ReadAllTextAsync(await named.PathAsync(), TestContext.Current.CancellationToken)).ShouldStartWith("job: \"null\"\n");
    }

    /// <summary>An inch is 25.4 mm (Weights and measures, international yard and pound agreement 1959): 2 in are 50.8 mm.</summary>
    [Fact]
    public async Task What_people_write_is_taken_and_shown_as_it_was_read_and_an_empty_form_can_be_taken_back()
    {
        var page = await site.CheckAsync(Wagon);
        foreach (
            var (label, typed, shown) in ((string, string, string)[])
                [
                    ("suspension lift", "2\"", "2 in"),
                    ("body lift", "1 1/2 inches", "1.5 in"),
                    ("tyres fitted", "265/70/17", "265/70R17"),
                    ("first registered (day/month/year, or not-yet)", "15/03/2021", "2021-03-15"),
                ]
        )
        {
            var field = page.GetByLabel(label, new() { Exact = true });
            await field.FillAsync(typed);
            await page.Keyboard.PressAsync("Tab");
            (await field.InputValueAsync()).ShouldBe(shown);
        }

        await BrowserSite.SettledAsync(page);
        (await page.Locator("#json").TextContentAsync())!.ShouldContain("\"value\": 50.8");
        await page.Locator("#afresh").ClickAsync();
        await page.Locator("#sure-no").ClickAsync();
        (await page.Locator(".verdict").CountAsync()).ShouldBe(1, "it was kept");
        await page.Locator("#afresh").ClickAsync();
        await page.Locator("#sure-yes").ClickAsync();
        (await page.Locator(".verdict").CountAsync()).ShouldBe(0);
        await page.Locator("#undo").ClickAsync();
        await page.Locator(".verdict").WaitForAsync();
        (await page.GetByLabel("suspension lift", new() { Exact = true }).InputValueAsync()).ShouldBe("2 in");

        // The vehicle alone is kept in this browser, comes back on another visit without the work, and is forgotten when asked to be.
        await page.Locator("#kept-part summary").ClickAsync();
        await page.Locator("#keep-vehicle").ClickAsync();
        (await page.Locator("#vehicles-said").InnerTextAsync()).ShouldBe("W-0117 is kept in this browser.");
        await page.GotoAsync($"{site.Root}check.html");
        await page.ReloadAsync();
        await page.WaitForSelectorAsync("html[data-ready]");
        await page.Locator("#kept-part summary").ClickAsync();
        await page.Locator("#vehicles button").ClickAsync();
        await BrowserSite.SettledAsync(page);
        (await page.GetByLabel("placard size 1, size").InputValueAsync()).ShouldBe("265/65R17 112S");
        (await page.GetByLabel("suspension lift", new() { Exact = true }).InputValueAsync()).ShouldBeEmpty();
        page.Url.ShouldNotContain("%22on%22", Case.Sensitive, "the day is today until somebody sets it");
        var file = await page.RunAndWaitForDownloadAsync(() => page.Locator("#export-vehicles").ClickAsync());
        file.SuggestedFilename.ShouldBe("vehicles.json");
        await page.Locator("#forget-vehicles").ClickAsync();
        (await page.Locator("#vehicles button").CountAsync()).ShouldBe(0);
        (await page.EvaluateAsync<int>("localStorage.length")).ShouldBe(0);

        // A "?" opens the meaning where it stands.
        await page.GetByLabel("What is suspension lift?").ClickAsync();
        await page.Locator(".meaning:popover-open", new() { HasText = "suspension-lift" }).WaitForAsync();
        page.Url.ShouldContain("check.html");
    }

    [Fact]
    public async Task A_question_is_answered_by_a_button_of_the_card()
    {
        const string job =
            """{"registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC"},"modification":{"suspension-lift":"45 mm"}}""";
        foreach (var word in new[] { "no", "yes" })
        {
            var page = await site.CheckAsync(job);
            await page.Locator(".verdict.undecided").WaitForAsync();
            await page.Locator($"button.option:has(b:text-is('{word}'))").First.ClickAsync();
            await page.WaitForFunctionAsync($"() => decodeURIComponent(location.hash).includes('\"four-wheel-drive\":\"{word}\"')");
            if (word == "yes")
                await page.Locator(".verdict:not(.undecided)").WaitForAsync();
        }
    }

    /// <summary>
    /// Ironbark's touring wagon with a trailer of 3 t: 2740 kg of tare and 619 kg of accessories alone leave 141 kg of 3500 kg, and both
    /// tanks hold more.
    /// </summary>
    [Fact]
    public async Task At_a_desk_the_touring_wagon_with_its_trailer_is_told_as_over_its_gvm_without_scrolling()
    {
        var job = TheCommand.Json(Path.Combine(TheBook.Folder, "examples", "wagon-touring.yaml"));
        var page = await site.CheckAsync(
            job.Insert(job.LastIndexOf('}'), ", \"trailer\": { \"mass\": \"3000 kg\" }"),
            new()
            {
                ViewportSize = new() { Width = 1440, Height = 900 },
            }
        );
        (await page.EvaluateAsync<double>("scrollY")).ShouldBe(0);
        var told = page.Locator("text=kg over GVM >> visible=true").First;
        var box = await told.BoundingBoxAsync();
        box.ShouldNotBeNull();
        (box.Y + box.Height).ShouldBeLessThanOrEqualTo(900);
        // What it lacks is asked for: where the trailer's mass lies, and what of it the ball carries.
        (await page.Locator("#answer").InnerTextAsync()).ShouldContain("ball load");
        (await page.Locator(".large").InnerTextAsync()).ShouldContain("not known");

        // What is over is marked as over, and nothing else; nobody weighed it.
        var over = await page.Locator(".load.over .says").AllTextContentsAsync();
        over.ShouldNotBeEmpty();
        over.ShouldAllBe(says => says.EndsWith(" over", StringComparison.Ordinal));
        (await page.Locator(".load:not(.over) .says").AllTextContentsAsync()).ShouldAllBe(says => !says.EndsWith(" over"));
        var states = await page.Locator(".load .state").AllTextContentsAsync();
        states.ShouldContain("hitched");
        states.ShouldNotContain("weighed");

        // Queensland frees 50 mm of suspension lift, of which 45 mm are used (notifications of 2018, second hand).
        (await page.Locator(".margin.over").CountAsync()).ShouldBe(0);
        (
            await page.Locator(".margin svg")
                .EvaluateAsync<double>(
                    "bar => bar.querySelector('.value').getAttribute('width') / bar.querySelector('.limit-line').getAttribute('x1')"
                )
        ).ShouldBe(45 / 50.0, 0.001);
    }

    [Fact]
    public async Task A_field_that_cannot_be_read_says_so_beside_itself()
    {
        var page = await site.CheckAsync(Wagon);
        await page.GetByLabel("body lift", new() { Exact = true }).FillAsync("two fingers");
        await BrowserSite.SettledAsync(page);
        (await page.Locator("[aria-invalid]").CountAsync()).ShouldBe(0);
        await page.Keyboard.PressAsync("Tab");
        await page.Locator("[aria-invalid=true]").WaitForAsync();
        (await page.GetByLabel("body lift", new() { Exact = true }).GetAttributeAsync("aria-describedby")).ShouldNotBeNull();
        (await page.Locator(".wrong").InnerTextAsync()).ShouldContain("a quantity is a number and its unit");
        (await page.Locator(".card[inert] .verdict").CountAsync()).ShouldBe(1);
        (await page.Locator("#before").InnerTextAsync()).ShouldContain("the answer to what stood there before");
        (await page.Locator("#more").IsHiddenAsync()).ShouldBeTrue();
        (await page.Locator("#brief").TextContentAsync()).ShouldBe("The job cannot be read yet");
    }

    [Fact]
    public async Task After_the_first_visit_the_page_answers_without_a_connection()
    {
        var page = await site.CheckAsync(Wagon);
        var answer = await page.Locator("#json").TextContentAsync();
        await page.EvaluateAsync(
            "navigator.serviceWorker.ready.then(ready => !ready.active || new Promise(done => { const wait = () => "
                + "ready.active.state === 'activated' ? done() : setTimeout(wait, 50); wait(); }))"
        );
        await page.GetByRole(AriaRole.Switch).CheckAsync();
        await page.Locator("#offline [role=status]", new() { HasText = "Every page works without a connection." })
            .WaitForAsync(new() { Timeout = 60_000 });
        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await page.Locator(".verdict").WaitForAsync();
        await BrowserSite.SettledAsync(page);
        (await page.Locator("#json").TextContentAsync()).ShouldBe(answer);

        // With one switch every other page too, by its folder's address as well; switched off, they are gone.
        foreach (var other in new[] { "", "jurisdictions/au-qld.html", "compare/au/2018-10-26.html", "lines/au-qld/ride-height.yaml.html" })
            (await page.GotoAsync(site.Root + other))!.Ok.ShouldBeTrue(other);
        await page.GetByRole(AriaRole.Switch).UncheckAsync();
        await page.Locator("#offline [role=status]", new() { HasText = "Only the check page is kept." }).WaitForAsync();
        (await page.EvaluateAsync<string[]>("() => caches.keys()")).ShouldAllBe(key => !key.Contains("pages:"));
    }

    [Fact]
    public async Task Hostile_text_in_every_field_of_a_job_stays_text()
    {
        const string hostile = "\"><img src=x onerror=alert(1)><script>alert(2)</script>";
        var page = await site.CheckAsync(Wagon);
        var opened = false;
        page.Dialog += (_, _) => opened = true;
        var names = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('#job [data-add]')].map(button => button.click()) && [...document.querySelectorAll('#job "
                + "input[name]')].map((field, i) => field.id ||= 'h-' + i)"
        );
        foreach (var name in names.Where(name => !name.StartsWith("i-dates.", StringComparison.Ordinal) && name != "i-on"))
        {
            await page.EvaluateAsync(TypeIn, new[] { name, hostile });
            (await page.Locator("img, main script").CountAsync()).ShouldBe(0, name);
            await page.EvaluateAsync("id => { const field = document.getElementById(id); field.value = field.dataset.kept; }", name);
        }

        foreach (var key in new[] { hostile, "__proto__", "constructor" })
        {
            await AnswerAsync(
                page,
                $"{{\"{key.Replace("\"", "\\\"", StringComparison.Ordinal)}\":{{\"x\":1}},"
                    + "\"registered-in\":\"au-qld\",\"on\":\"2026-11-20\"}"
            );
            (await page.Locator("#problems").InnerTextAsync()).ShouldContain(key == hostile ? "<script>" : key);
        }

        (await page.Locator("img, main script").CountAsync()).ShouldBe(0);
        (await page.EvaluateAsync<bool>("({}).x === undefined")).ShouldBeTrue();
        opened.ShouldBeFalse();
    }

    [Fact]
    public void Everything_that_the_check_page_loads_is_less_than_three_megabytes_compressed()
    {
        site.Need();
        string[] named =
        [
            "check.html",
            "check.js",
            "form.js",
            "yaml.js",
            "answer.js",
            "asking.js",
            "card.js",
            "spelling.js",
            "evaluator.js",
            "site.css",
            "data/book.json",
            "worker.js",
            "icon.svg",
        ];
        named
            .Select(name => Path.Combine(site.Pages, name))
            .Concat(Directory.EnumerateFiles(Path.Combine(site.Pages, "_framework"), "*", SearchOption.AllDirectories))
            .Sum(file => Compressed(File.ReadAllBytes(file)))
            .ShouldBeLessThan(3_000_000);
    }

    private static long Compressed(ReadOnlySpan<byte> content)
    {
        using var counted = new MemoryStream();
        using (var gzip = new GZipStream(counted, CompressionLevel.Optimal, leaveOpen: true))
            gzip.Write(content);
        return counted.Length;
    }
}
