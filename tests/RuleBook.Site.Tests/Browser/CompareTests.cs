using Microsoft.Playwright;

namespace RuleBook.Site.Tests.Browser;

public sealed class CompareTests(BrowserSite site)
{
    private static Task<string> ShownAsync(IPage page) => page.Locator("#comparison").InnerTextAsync();

    private async Task<IPage> OpenAsync(string path)
    {
        var page = await site.OpenAsync();
        await page.GotoAsync(site.Root + path);
        await page.Locator("html[data-shown]").WaitForAsync();
        return page;
    }

    private static ILocator Cell(IPage page, string place, string question, string topic = "ride-height") =>
        page.Locator($"#{topic} tr[data-c={place}]:visible td[data-label='{question}']");

    [Fact]
    public async Task A_vehicle_is_always_chosen_and_the_address_reproduces_vehicle_states_and_topic()
    {
        var page = await OpenAsync("compare.html");
        var first = await ShownAsync(page);
        first.ShouldContain("Tasmania");
        await page.Locator("#vehicle").SelectOptionAsync("wagon-without");
        await page.Locator("label:has([value=au-tas])").ClickAsync();
        await page.Locator(".tabs a").Nth(1).ClickAsync();
        var chosen = await ShownAsync(page);
        chosen.ShouldNotBe(first);
        chosen.ShouldNotContain("Tasmania");

        (await ShownAsync(await OpenAsync(page.Url[site.Root.Length..]))).ShouldBe(chosen);
        var older = await OpenAsync("compare.html?four-wheel-drive=yes&stability-control=no");
        (await older.Locator("#vehicle").InputValueAsync()).ShouldBe("wagon-without");
    }

    /// <summary>
    /// Queensland: 125 mm with a certificate before 26 October 2018, 150 mm from that day (department's notifications of 2018).
    /// </summary>
    [Theory]
    [InlineData("2018-10-25", "25 October 2018", "125 mm in all", "150 mm in all")]
    [InlineData("2018-10-26", "26 October 2018", "150 mm in all", "125 mm in all")]
    [InlineData("2018-10-27", "27 October 2018", "150 mm in all", "125 mm in all")]
    public async Task The_day_asked_for_is_the_day_shown_with_the_limits_in_force_on_it(
        string day,
        string words,
        string holds,
        string other
    )
    {
        var page = await OpenAsync("compare.html?vehicle=wagon-without");
        await page.Locator("#on").FillAsync(day);
        await page.Locator("#go").ClickAsync();
        await BrowserSite.ArrivedAsync(page, $"/compare/au/.*on={day}");
        await page.Locator("html[data-shown]").WaitForAsync();
        (await page.Locator(".lead").InnerTextAsync()).ShouldStartWith(
            day == "2018-10-26" ? $"As on {words}, for a vehicle" : $"As on {words}, unchanged since "
        );
        var cell = await Cell(page, "au-qld", "Certified up to").InnerTextAsync();
        cell.ShouldContain(holds);
        cell.ShouldNotContain(other);
        (await page.Locator("#vehicle").InputValueAsync()).ShouldBe("wagon-without");
    }

    /// <summary>
    /// California Vehicle Code, 24008.5(b)(2): 27 in for up to 4,500 lb, 30 in for up to 7,500 lb; its section has held since 1 January
    /// 1988.
    /// </summary>
    [Theory]
    [InlineData("compare.html")]
    [InlineData("compare/au/2018-10-26.html")]
    public async Task A_state_of_another_nation_stands_beside_the_others_and_the_address_keeps_it(string path)
    {
        var page = await OpenAsync(path);
        await page.Locator("#also").SelectOptionAsync("us-ca");
        await page.WaitForFunctionAsync("() => location.search.includes('also=us-ca')");
        (await Cell(page, "us-ca", "Free up to").First.InnerTextAsync()).ShouldContain("frame height 30 in");

        var other = await OpenAsync(page.Url[site.Root.Length..]);
        await other.Locator("tr[data-c=us-ca]").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        (await ShownAsync(other)).ShouldBe(await ShownAsync(page));
    }

    [Fact]
    public async Task The_standing_of_a_cell_opens_clause_data_line_and_correction_report()
    {
        var page = await OpenAsync("compare.html");
        await Cell(page, "au-qld", "Certified up to").Locator("button").FocusAsync();
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
        await BrowserSite.ArrivedAsync(page, "/jurisdictions/au-qld[.]html");
        var report = page.Locator("[id='report.ride-height.raise-four-wheel-drive']");
        await report.WaitForAsync();
        (await report.InnerTextAsync()).ShouldContain("Data: jurisdictions/au-qld/ride-height.yaml:");
        await page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await report.Locator("xpath=following-sibling::p[1]").GetByRole(AriaRole.Button).ClickAsync();
        await page.GetByText("Copied.").WaitForAsync();
        (await page.EvaluateAsync<string>("navigator.clipboard.readText()")).ShouldBe(await report.TextContentAsync());
    }

    [Fact]
    public async Task All_states_and_the_national_code_fit_1440_pixels_and_heads_stay_in_sight()
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = 1440, Height = 600 },
            }
        );
        await page.GotoAsync($"{site.Root}compare.html");
        await page.Locator("html[data-shown]").WaitForAsync();
        var box = page.Locator(".compared .tall:visible");
        (await box.EvaluateAsync<int>("box => box.scrollWidth - box.clientWidth")).ShouldBe(0);
        await box.EvaluateAsync("box => { box.scrollTop = 600; }");
        var header = await page.Locator("#ride-height thead th").First.BoundingBoxAsync();
        (header!.Y - (await box.BoundingBoxAsync())!.Y).ShouldBeLessThan(3);
        (
            await page.Locator("#ride-height thead th").First.EvaluateAsync<string>("cell => getComputedStyle(cell).backgroundColor")
        ).ShouldStartWith("rgb(");
    }

    [Fact]
    public async Task A_hostile_address_stays_text()
    {
        var page = await site.OpenAsync();
        var opened = false;
        page.Dialog += (_, _) => opened = true;
        await page.GotoAsync(
            $"{site.Root}compare.html?category=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E&on=2018-99-99"
                + "&columns=%22%3E%3Cscript%3Ealert(1)%3C/script%3E#%22onload="
        );
        (await page.Locator("#comparison").CountAsync()).ShouldBe(1);
        (await page.Locator("img, script:not([src])").CountAsync()).ShouldBe(0);
        opened.ShouldBeFalse();
    }
}
