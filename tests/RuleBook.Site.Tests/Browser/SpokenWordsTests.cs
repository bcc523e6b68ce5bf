namespace RuleBook.Site.Tests.Browser;

/// <summary>The words of the page itself, beside those of the answer: each where it is true, and only there.</summary>
public sealed class SpokenWordsTests(BrowserSite site)
{
    /// <summary>
    /// Queensland frees 75 mm in all and no body lift, and certifies a suspension lift of 75 mm (notifications of 2018, second hand).
    /// </summary>
    [Fact]
    public async Task A_limit_that_is_kept_is_told_as_ok_and_one_that_is_passed_as_beyond()
    {
        var page = await site.CheckAsync(
            CheckTests.Wagon,
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        await page.Locator("#reasons summary").ClickAsync();
        var kept = page.Locator("#reasons p", new() { HasText = ": 30 mm left" }).First;
        (await kept.InnerTextAsync()).ShouldStartWith("ok suspension lift 45 mm, limit 75 mm");
        var passed = page.Locator("#reasons p", new() { HasText = "25 mm too much" }).First;
        (await passed.InnerTextAsync()).ShouldStartWith("beyond body lift 25 mm");

        var asked = page.Locator("#reasons p", new() { HasText = "tyres covered by the bodywork" }).First;
        (await asked.InnerTextAsync()).ShouldStartWith("to show tyres covered");
        (
            await page.Locator("#reasons a")
                .EvaluateAllAsync<bool>("links => links.length > 0 && links.every(link => link.getAttribute('href') === link.textContent)")
        ).ShouldBeTrue("an address leads where it says");

        // The phone's bar says what the answer begins with.
        (await page.Locator("#brief").IsVisibleAsync()).ShouldBeTrue();
        (await page.Locator("#brief").InnerTextAsync()).ShouldContain("with a certificate", Case.Insensitive);

        await page.Locator("#across summary").ClickAsync();
        await page.Locator("#across p", new() { HasText = "state of registration: its rules decide" }).WaitForAsync();
        await page.Locator("#margin summary").ClickAsync();
        await page.Locator("#margin h3", new() { HasText = "Suspension lift (now 45 mm)" }).WaitForAsync();
    }

    /// <summary>YAML 1.2.2, 10.3.2: true and false are booleans, not words.</summary>
    [Fact]
    public async Task A_fact_written_as_true_or_false_stands_in_its_field_as_yes_or_no()
    {
        var page = await site.CheckAsync("""{"vehicle":{"four-wheel-drive":true,"stability-control":false}}""");
        (await page.GetByLabel("four-wheel drive", new() { Exact = true }).InputValueAsync()).ShouldBe("yes");
        (await page.GetByLabel("electronic stability control", new() { Exact = true }).InputValueAsync()).ShouldBe("no");
    }
}
