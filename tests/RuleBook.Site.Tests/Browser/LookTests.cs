using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
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
          .filter(each => each.checkVisibility() && getComputedStyle(each).overflow === "hidden" && !getComputedStyle(each).clipPath.startsWith("inset"))
          .filter(each => each.clientWidth > 1 && (each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1) && each.innerText)
          .map(each => each.outerHTML.slice(0, 90))
        """;

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_page_has_a_barrier_that_axe_can_find(ColorScheme scheme)
    {
        var page = await site.OpenAsync(new() { ColorScheme = scheme });
        foreach (var kind in PageKinds.All)
        {
            await page.GotoAsync(site.Root + kind);
            if (kind == "check.html")
                await page.WaitForSelectorAsync("html[data-ready]");
            await page.EvaluateAsync(Thin);
            if (kind == "changes.html")
                await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = true)");
            Barriers(kind, await page.RunAxe(Looked(scheme))).ShouldBeEmpty();
        }

        // With rows, grids and all parts of the form open.
        var job = TheCommand.Json(Path.Combine(TheBook.Folder, "examples", "van-weighed.yaml"));
        await page.GotoAsync($"{site.Root}check.html#{Uri.EscapeDataString(job)}");
        await page.ReloadAsync();
        await page.WaitForSelectorAsync(".verdict");
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = true)");
        await page.Locator("#margin table").First.WaitForAsync();
        Barriers("check.html with a job", await page.RunAxe(Looked(scheme))).ShouldBeEmpty();
    }

    /// <summary>Everything in the light; only what the colours decide in the dark.</summary>
    private static AxeRunOptions Looked(ColorScheme scheme) =>
        new()
        {
            ResultTypes = [ResultType.Violations],
            RunOnly =
                scheme == ColorScheme.Dark ? new RunOnlyOptions { Type = "rule", Values = ["color-contrast", "link-in-text-block"] } : null,
        };

    private static IEnumerable<string> Barriers(string kind, AxeResult result) =>
        result.Violations.Select(found =>
            $"{kind}: {found.Id}: {found.Help}: {string.Join(" | ", found.Nodes.Take(2).Select(node => node.Html))}"
        );

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
        await page.ReloadAsync();
        await page.WaitForSelectorAsync(".verdict");
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(360, "check.html with a job");
    }

    /// <summary>
    /// Of a screen of 1280 pixels a zoom of 200 % leaves 640; text alone at 200 % leaves them all (WCAG 2.2, 1.4.4 and 1.4.10).
    /// </summary>
    [Theory]
    [InlineData(640, "100%")]
    [InlineData(1280, "200%")]
    public async Task At_twice_the_size_no_page_scrolls_sideways_and_nothing_is_cut_off(int width, string text)
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 400 },
                DeviceScaleFactor = 2,
            }
        );
        foreach (var kind in PageKinds.All)
        {
            await page.GotoAsync(site.Root + kind);
            await page.EvaluateAsync("size => document.documentElement.style.fontSize = size", text);
            (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).ShouldBeLessThanOrEqualTo(width, kind);
            (await page.EvaluateAsync<string[]>(CutOff)).ShouldBeEmpty(kind);
        }
    }

    [Theory]
    [InlineData(ReducedMotion.Reduce, "auto")]
    [InlineData(ReducedMotion.NoPreference, "smooth")]
    public async Task Nothing_moves_by_itself_for_whoever_asked_for_less_motion(ReducedMotion asked, string scrolling)
    {
        var page = await site.OpenAsync(new() { ReducedMotion = asked });
        await page.GotoAsync($"{site.Root}check.html");
        (await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).scrollBehavior")).ShouldBe(scrolling);
        await page.WaitForSelectorAsync("html[data-ready]");
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(part => part.open = true)");
        (await page.EvaluateAsync<int>("document.getAnimations().length")).ShouldBe(0);
    }

    [Fact]
    public async Task No_page_complains_and_no_request_leaves_the_host()
    {
        var page = await site.OpenAsync();
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
            await page.GotoAsync(site.Root + kind);
            if (kind == "check.html")
                await page.WaitForSelectorAsync("html[data-ready]");
        }

        said.ShouldBeEmpty();
    }

    [Fact]
    public async Task The_comparison_fits_the_width_of_a_printed_sheet_and_a_record_prints()
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
        var record = await site.CheckAsync(CheckTests.Wagon);
        (await record.PdfAsync(new() { PreferCSSPageSize = true })).Length.ShouldBeGreaterThan(5000);
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
        await page.EvaluateAsync(
            "document.querySelector('#job [name=\"on\"], #job input[type=\"text\"]').value = 'x'; document.getElementById('job').dispatchEvent(new Event('input', { bubbles: true }))"
        );
        await page.WaitForFunctionAsync(
            "document.getElementById('sheet').childNodes.length === 0 || document.getElementById('answer').getAttribute('aria-busy') === 'false'"
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
