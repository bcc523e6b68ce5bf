namespace RuleBook.Site.Tests.Browser;

public sealed class FilterTests(BrowserSite site)
{
    [Fact]
    public async Task The_log_of_changes_is_filtered_by_state_and_topic_and_the_address_keeps_the_filter()
    {
        var page = await site.OpenAsync();
        await page.GotoAsync($"{site.Root}changes.html");
        var all = await page.Locator("li[data-kind]").CountAsync();
        await page.Locator("#place").SelectOptionAsync("au-qld");
        await page.Locator("#topic").SelectOptionAsync("ride-height");
        var shown = await page.Locator("li[data-kind]:visible").CountAsync();
        shown.ShouldBeInRange(1, all - 1);
        (await page.Locator("#shown").InnerTextAsync()).ShouldBe($"{shown} entries");
        (
            await page.Locator("li[data-kind]:visible").EvaluateAllAsync<string[]>("entries => entries.map(entry => entry.dataset.place)")
        ).ShouldAllBe(place => place == "au-qld");

        // An entry opens its smallest job as it is answered on the day before and from the day on.
        await page.Locator("li[data-kind=law]:visible", new() { HasText = "26 October 2018" })
            .GetByText("the day before", new() { Exact = true })
            .ClickAsync();
        await BrowserSite.ArrivedAsync(page, "/check[.]html");
        await page.WaitForSelectorAsync(".verdict");
        (await page.Locator("#i-on").InputValueAsync()).ShouldBe("2018-10-25");
        (await page.Locator(".verdict.certificate").CountAsync()).ShouldBe(1);
        await page.GoBackAsync();

        var other = await site.OpenAsync();
        await other.GotoAsync(page.Url);
        (await other.Locator("li[data-kind]:visible").CountAsync()).ShouldBe(shown);

        // A state and a topic of which nothing is recorded.
        var nothing = await other.EvaluateAsync<string[]>(
            """
            () => {
              const known = new Set([...document.querySelectorAll("li[data-kind]")].map(({ dataset }) => `${dataset.place} ${dataset.topic}`));
              const values = id => [...document.getElementById(id).options].map(option => option.value).filter(value => value);
              return values("place").flatMap(place => values("topic").map(topic => [place, topic])).find(pair => !known.has(pair.join(" ")));
            }
            """
        );
        await other.Locator("#place").SelectOptionAsync(nothing[0]);
        await other.Locator("#topic").SelectOptionAsync(nothing[1]);
        (await other.Locator("#shown").InnerTextAsync()).ShouldStartWith("No entry");
    }
}
