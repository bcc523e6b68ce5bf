namespace RuleBook.Site.Tests.Browser;

/// <summary>The quick check of the first page.</summary>
public sealed class FirstPageTests(BrowserSite site)
{
    [Fact]
    public async Task The_first_page_answers_two_states_side_by_side_and_each_card_opens_the_whole_answer()
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        await page.GotoAsync($"{site.Root}index.html");
        await page.GetByLabel("Queensland", new() { Exact = true }).CheckAsync();
        await page.GetByLabel("Victoria", new() { Exact = true }).CheckAsync();
        await page.GetByLabel("suspension lift, mm").FillAsync("100");
        await page.Keyboard.PressAsync("Tab");
        await page.Locator(".quick-card").Nth(1).WaitForAsync();
        await page.Locator("#answers:not(.before) .quick-card .verdict", new() { HasText = "Queensland" }).WaitForAsync();
        var card = page.Locator(".quick-card", new() { HasText = "Victoria" });
        var verdict = await card.Locator(".verdict").GetAttributeAsync("class");
        await card.Locator("a").ClickAsync();
        await BrowserSite.ArrivedAsync(page, "/check[.]html");
        await page.Locator("#said .verdict").WaitForAsync();
        (await page.Locator("#said .verdict").GetAttributeAsync("class")).ShouldBe(verdict);
        (await page.GetByLabel("registered in").InputValueAsync()).ShouldBe("au-vic");
        (await page.GetByLabel("suspension lift", new() { Exact = true }).InputValueAsync()).ShouldBe("100");
    }

    [Fact]
    public async Task By_keyboard_alone_the_first_page_answers_after_ten_tabs_at_most_and_the_states_are_one_of_them()
    {
        var page = await site.OpenAsync(
            new()
            {
                ViewportSize = new() { Width = 1440, Height = 900 },
            }
        );
        await page.GotoAsync($"{site.Root}index.html");
        await page.Locator("#quick").WaitForAsync();
        var (tabs, focused) = (0, "");
        async Task TabTo(string name)
        {
            while (focused != name && tabs < 10)
            {
                await page.Keyboard.PressAsync("Tab");
                tabs++;
                focused = await page.EvaluateAsync<string>("document.activeElement.name ?? document.activeElement.className ?? ''");
            }

            focused.ShouldBe(name, $"after {tabs} tabs");
        }

        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter"); // to the content
        tabs = 1;
        await TabTo("place");
        while (await page.EvaluateAsync<string>("document.activeElement.value") != "au-qld")
            await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Space");
        await TabTo("lift");
        await page.Keyboard.TypeAsync("50");
        await TabTo("placard");
        await page.Locator("#answers:not(.before) .quick-card .verdict", new() { HasText = "Queensland" }).WaitForAsync();
    }
}
