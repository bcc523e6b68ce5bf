using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Telling.Sheets;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests.Browser;

/// <summary>What every page owes to whoever opens it, whatever the screen.</summary>
public sealed class LookTests(BrowserSite site)
{
    /// <summary>Rows and entries that one loop of a template writes have the same barriers: a dozen of them are enough.</summary>
    private const string Thin = """
        for (const list of document.querySelectorAll("tbody, ol, ul, dl, tr, svg, section, td"))
          [...list.children].slice(12).filter(child => child.localName === list.children[11].localName).forEach(child => child.remove());
        """;

    /// <summary>What is pressed and smaller than 24 by 24 pixels (WCAG 2.2, 2.5.8); links within a sentence are excepted there.</summary>
    private const string Small = """
        [...document.querySelectorAll("button, select, summary, .run a, .toc a, .chips label, [role=switch]")]
          .filter(each => each.checkVisibility({ opacityProperty: true }) && each.getBoundingClientRect().width > 1)
          .filter(each => { const box = each.getBoundingClientRect(); return box.width < 23.9 || box.height < 23.9; })
          .map(each => each.outerHTML.slice(0, 90))
        """;

    /// <summary>Text in a box too narrow or too low for it, where the box neither scrolls nor shows what passes its edge.</summary>
    private const string CutOff = """
        [...document.querySelectorAll("main *, header *, footer *")]
          .filter(each => each.checkVisibility() && getComputedStyle(each).overflow === "hidden")
          .filter(each => !getComputedStyle(each).clipPath.startsWith("inset"))
          .filter(each => each.clientWidth > 1 && each.innerText)
          .filter(each => (each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1))
          .map(each => each.outerHTML.slice(0, 90))
        """;

    /// <summary>What axe finds, by all of its rules or by those that are named.</summary>
    private const string Barriers = """
        async rules => (await axe.run(document, { resultTypes: ["violations"], ...(rules && { runOnly: rules }) })).violations
          .map(found => `${found.id}: ${found.help}: ${found.nodes.slice(0, 2).map(node => node.html).join(" | ")}`)
        """;

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    private static readonly string[] DecidedByColours = ["color-contrast", "link-in-text-block"];

    [Fact]
    public async Task No_page_has_a_barrier_that_axe_can_find_in_light_or_dark()
    {
        var page = await site.OpenAsync();
        foreach (var kind in PageKinds.All)
        {
            await page.GotoAsync(site.Root + kind);
            if (kind == "check.html")
                await page.WaitForSelectorAsync("html[data-ready]");
            await page.EvaluateAsync(Thin);
            if (kind == "changes.html")
                await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = true)");
            await page.EvaluateAsync(Axe);
            (await BarriersAsync(page)).ShouldBeEmpty(kind);
        }

        // With rows, grids and all parts of the form open.
        var job = TheCommand.Json(Path.Combine(TheBook.Folder, "examples", "van-weighed.yaml"));
        await page.GotoAsync($"{site.Root}check.html#{Uri.EscapeDataString(job)}");
        await page.WaitForSelectorAsync(".verdict");
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = true)");
        await page.Locator("#margin table").First.WaitForAsync();
        (await BarriersAsync(page)).ShouldBeEmpty("check.html with a job");
    }

    /// <summary>Everything in the light; only what the colours decide in the dark.</summary>
    private static async Task<string[]> BarriersAsync(IPage page)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        var light = await page.EvaluateAsync<string[]>(Barriers);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        return [.. light, .. await page.EvaluateAsync<string[]>(Barriers, DecidedByColours)];
    }

    [Fact]
    public async Task A_phone_of_360_pixels_never_scrolls_a_page_sideways()
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = 360, Height = 740 },
            }
        );
        foreach (var kind in PageKinds.All)
        {
            await page.GotoAsync(site.Root + kind);
            (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(360, kind);
            (await page.EvaluateAsync<string[]>(Small)).ShouldBeEmpty(kind);
        }

        // Long parts are folded on a phone; an address that leads into one opens it.
        foreach (var kind in new[] { "jurisdictions/au-qld.html", "topics/certification.html", "words.html", "compare/us.html" })
        {
            await page.GotoAsync(site.Root + kind);
            (await page.EvaluateAsync<int>("document.documentElement.scrollHeight")).ShouldBeLessThan(12_000, kind);
        }

        await page.GotoAsync($"{site.Root}jurisdictions/au-qld.html#ride-height.raise-four-wheel-drive");
        (await page.Locator("[id='ride-height.raise-four-wheel-drive'] table").First.IsVisibleAsync()).ShouldBeTrue();

        var job = TheCommand.Json(Path.Combine(TheBook.Folder, "examples", "van-weighed.yaml"));
        await page.GotoAsync($"{site.Root}check.html#{Uri.EscapeDataString(job)}");
        await page.WaitForSelectorAsync(".verdict");
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(360, "check.html with a job");
    }

    /// <summary>
    /// Of a screen of 1280 pixels a zoom of 200 % leaves 640; text alone at 200 % leaves them all (WCAG 2.2, 1.4.4 and 1.4.10).
    /// </summary>
    [Fact]
    public async Task At_twice_the_size_no_page_scrolls_sideways_or_is_cut_off_and_none_complains_or_asks_another_host()
    {
        var page = await site.OpenAsync(new() { DeviceScaleFactor = 2 });
        var said = new List<string>();
        page.Console += (_, message) => said.Add($"{page.Url}: {message.Type}: {message.Text}");
        page.PageError += (_, error) => said.Add($"{page.Url}: {error}");
        page.Context.Request += (_, request) =>
        {
            var isOwn =
                request.Url.StartsWith(site.Root, StringComparison.Ordinal) || request.Url.StartsWith("blob:", StringComparison.Ordinal);
            if (!isOwn)
                said.Add($"asked for {request.Url}");
        };
        page.Response += (_, answer) =>
        {
            if (answer.Status >= 400)
                said.Add($"{answer.Status} {answer.Url}");
        };
        foreach (var kind in PageKinds.All)
        {
            await page.SetViewportSizeAsync(640, 400);
            await page.GotoAsync(site.Root + kind);
            if (kind == "check.html")
                await page.WaitForSelectorAsync("html[data-ready]");
            foreach (var (width, text) in ((int, string)[])[(640, "100%"), (1280, "200%")])
            {
                await page.SetViewportSizeAsync(width, 400);
                await page.EvaluateAsync("size => document.documentElement.style.fontSize = size", text);
                (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(width, kind);
                (await page.EvaluateAsync<string[]>(CutOff)).ShouldBeEmpty(kind);
            }
        }

        said.ShouldBeEmpty();
    }

    [Fact]
    public async Task Nothing_moves_by_itself_for_whoever_asked_for_less_motion()
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}check.html");
        await page.WaitForSelectorAsync("html[data-ready]");
        foreach (
            var (asked, scrolling) in ((ReducedMotion, string)[])[(ReducedMotion.Reduce, "auto"), (ReducedMotion.NoPreference, "smooth")]
        )
        {
            await page.EmulateMediaAsync(new() { ReducedMotion = asked });
            (await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).scrollBehavior")).ShouldBe(scrolling);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = !part.open)");
            (await page.EvaluateAsync<int>("document.getAnimations().length")).ShouldBe(0);
        }
    }

    [Fact]
    public async Task The_comparison_fits_the_width_of_a_printed_sheet()
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = 1047, Height = 700 },
            }
        );
        await page.GotoAsync($"{site.Root}compare.html");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(1047);
        (await page.PdfAsync(new() { PreferCSSPageSize = true })).AsSpan(0, 5).SequenceEqual("%PDF-"u8).ShouldBeTrue();
    }

    [Fact]
    public async Task What_the_check_page_prints_is_the_sheet_of_the_command_and_nothing_else()
    {
        var page = await site.CheckAsync(CheckTests.Wagon);
        var today = DateOnly.Parse(
            await page.EvaluateAsync<string>("new Date().toLocaleDateString('sv')"),
            System.Globalization.CultureInfo.InvariantCulture
        );
        var job = JobReader.Read(YamlText.Read(CheckTests.Wagon, "job"), TheBook.Input.Book);
        var assessment = Assessor.Assess(TheBook.Input.Book, job);
        var sheet = RecordSheet.Of(
            TheBook.Input.Book,
            job,
            assessment,
            Remedies.Find(TheBook.Input.Book, job, null, assessment),
            "the check page",
            today
        );
        (await page.Locator("#sheet").InnerHTMLAsync()).ShouldBe(
            new AngleSharp.Html.Parser.HtmlParser().ParseDocument(sheet).Body!.InnerHtml
        );
        (await page.Locator("#sheet").IsVisibleAsync()).ShouldBeFalse();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        (await page.Locator("#sheet").IsVisibleAsync()).ShouldBeTrue();
        (await page.Locator("#said").IsVisibleAsync()).ShouldBeFalse();
        (await page.Locator("form").First.IsVisibleAsync()).ShouldBeFalse();
        (await page.PdfAsync(new() { PreferCSSPageSize = true })).Length.ShouldBeGreaterThan(5000);
        await page.EvaluateAsync(
            "document.querySelector('#job [name=\"on\"], #job input[type=\"text\"]').value = 'x'; "
                + "document.getElementById('job').dispatchEvent(new Event('input', { bubbles: true }))"
        );
        await page.WaitForFunctionAsync(
            "document.getElementById('sheet').childNodes.length === 0 || "
                + "document.getElementById('answer').getAttribute('aria-busy') === 'false'"
        );
    }

    [Fact]
    public async Task Without_script_the_check_page_says_what_it_needs_and_the_tables_are_complete()
    {
        var page = await site.OpenAsync(new() { JavaScriptEnabled = false });
        await page.GotoAsync($"{site.Root}check.html");
        (await page.Locator("main").InnerTextAsync()).ShouldContain("needs script and WebAssembly");
        (await page.Locator("noscript a[href='compare.html']").CountAsync()).ShouldBe(1);
        await page.GotoAsync($"{site.Root}compare.html");
        (await page.Locator("#comparison tbody tr:visible").CountAsync()).ShouldBeGreaterThan(20);
        (await page.Locator("#choose").IsVisibleAsync()).ShouldBeFalse();
    }
}
