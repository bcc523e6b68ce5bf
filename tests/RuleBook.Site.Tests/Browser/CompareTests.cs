using Microsoft.Playwright;

namespace RuleBook.Site.Tests.Browser;

public sealed class CompareTests(BrowserSite site)
{
    private static Task<string> ShownAsync(IPage page) => page.Locator("#comparison").InnerTextAsync();

    private static async Task<ILocator> CellAsync(IPage page, string row, string column)
    {
        var at = await page.Locator($"#comparison thead [data-c={column}]").EvaluateAsync<int>("cell => cell.cellIndex");
        return page.Locator($"tr[id='{row}'] > *").Nth(at);
    }

    [Fact]
    public async Task A_filter_hides_what_binds_other_vehicles_and_the_address_reproduces_the_view()
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}compare.html");
        var all = await ShownAsync(page);
        await page.Locator("#f-four-wheel-drive").SelectOptionAsync("yes");
        await page.Locator("#f-stability-control").SelectOptionAsync("no");
        var filtered = await ShownAsync(page);
        filtered.Length.ShouldBeLessThan(all.Length);
        filtered.ShouldNotContain("electronic stability control: yes");
        filtered.ShouldNotContain("four-wheel drive: no");
        await page.GetByText("Columns", new() { Exact = true }).ClickAsync();
        await page.Locator("input[value=au-tas]").UncheckAsync();
        var chosen = await ShownAsync(page);
        chosen.ShouldNotContain("Tasmania");

        var other = await site.OpenAsync();
        await other.GotoAsync(page.Url);
        (await ShownAsync(other)).ShouldBe(chosen);
    }

    /// <summary>Queensland: 125 mm with a certificate before 26 October 2018, 150 mm from that day (department's notifications of 2018).</summary>
    [Theory]
    [InlineData("2018-10-25", "at most 125 mm", "at most 150 mm")]
    [InlineData("2018-10-26", "at most 150 mm", "at most 125 mm")]
    public async Task A_day_shows_the_limits_that_were_in_force_on_it(string day, string holds, string other)
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}compare.html?four-wheel-drive=yes");
        await page.Locator("#on").FillAsync(day);
        await page.Locator("#go").ClickAsync();
        await page.WaitForURLAsync($"**/compare/au/*on={day}*");
        var cell = await CellAsync(page, "ride-height.total-lift", "au-qld");
        (await cell.InnerTextAsync()).ShouldContain(holds);
        (await cell.InnerTextAsync()).ShouldNotContain(other);
        (await page.Locator("#f-four-wheel-drive").InputValueAsync()).ShouldBe("yes");

        var linked = await site.OpenAsync();
        await linked.GotoAsync($"{site.Root}compare.html?on={day}&four-wheel-drive=yes");
        await linked.WaitForURLAsync("**/compare/au/*");
        await linked.WaitForLoadStateAsync();
        (await linked.Locator("#comparison").InnerTextAsync()).ShouldBe(await page.Locator("#comparison").InnerTextAsync());
    }

    /// <summary>California Vehicle Code, 24008.5(b)(2): 27 in; its section has held since 1 January 1988.</summary>
    [Theory]
    [InlineData("compare.html")]
    [InlineData("compare/au/2018-10-26.html")]
    public async Task A_state_of_another_nation_stands_beside_the_others_and_the_address_keeps_it(string path)
    {
        var page = await site.OpenAsync();
        await page.GotoAsync(site.Root + path);
        await page.GetByText("Columns", new() { Exact = true }).ClickAsync();
        await page.Locator("#also").SelectOptionAsync("us-ca");
        await page.WaitForFunctionAsync("() => location.search.includes('also=us-ca')");
        var cell = await CellAsync(page, "ride-height.frame-height", "us-ca");
        (await cell.InnerTextAsync()).ShouldContain("at most 27 in (685.8 mm)");
        (await (await CellAsync(page, "ride-height.frame-height", "au-qld")).InnerTextAsync()).ShouldBe("no limit of its own");
        await cell.Locator("button").First.ClickAsync();
        (await page.Locator("[popover]:popover-open").InnerTextAsync()).ShouldContain("24008.5");

        var other = await site.OpenAsync();
        await other.GotoAsync(page.Url);
        await other.Locator("#comparison thead [data-c=us-ca]").WaitForAsync();
        await page.Keyboard.PressAsync("Escape");
        (await ShownAsync(other)).ShouldBe(await ShownAsync(page));
    }

    [Fact]
    public async Task A_row_opens_clause_data_line_and_correction_report_of_each_cell()
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}compare.html?four-wheel-drive=yes");
        await (await CellAsync(page, "ride-height.total-lift", "au-qld")).Locator("div:visible button").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        var where = page.Locator("[popover]:popover-open");
        (await where.InnerTextAsync()).ShouldStartWith("Raising a four-wheel drive: ");
        var links = await where.Locator("a").EvaluateAllAsync<string[]>("links => links.map(link => link.getAttribute('href'))");
        links.ShouldBe([
            "jurisdictions/au-qld.html#ride-height.raise-four-wheel-drive",
            links[1],
            "jurisdictions/au-qld.html#report.ride-height.raise-four-wheel-drive",
        ]);
        links[1].ShouldMatch("^lines/au-qld/ride-height[.]yaml[.]html#L[0-9]+$");
        await where.GetByText("correction report").ClickAsync();
        await page.WaitForURLAsync("**/jurisdictions/au-qld.html*");
        var report = page.Locator("[id='report.ride-height.raise-four-wheel-drive']");
        (await report.IsVisibleAsync()).ShouldBeTrue();
        (await report.InnerTextAsync()).ShouldContain("Data: jurisdictions/au-qld/ride-height.yaml:");
    }

    [Fact]
    public async Task Header_and_first_column_stay_in_sight_and_are_opaque()
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}compare.html");
        var box = page.Locator(".tall");
        await box.EvaluateAsync("box => { box.scrollTop = 900; box.scrollLeft = 500; }");
        var header = await page.Locator("#comparison thead th").First.BoundingBoxAsync();
        var frame = await box.BoundingBoxAsync();
        (header!.Y - frame!.Y).ShouldBeLessThan(3);
        (header.X - frame.X).ShouldBeLessThan(3);
        (await page.Locator("#comparison thead th").First.EvaluateAsync<string>("cell => getComputedStyle(cell).backgroundColor")).ShouldStartWith("rgb(");
    }

    [Fact]
    public async Task A_hostile_address_stays_text()
    {
        var page = await site.OpenAsync();
        var opened = false;
        page.Dialog += (_, _) => opened = true;
        await page.GotoAsync($"{site.Root}compare.html?category=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E&on=2018-99-99&columns=%22%3E%3Cscript%3Ealert(1)%3C/script%3E#%22onload=");
        (await page.Locator("#comparison").CountAsync()).ShouldBe(1);
        (await page.Locator("img, script:not([src])").CountAsync()).ShouldBe(0);
        opened.ShouldBeFalse();
    }
}
