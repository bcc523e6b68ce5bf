using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace RuleBook.Site.Tests.Browser;

/// <summary>Jobs typed through the fields of the form, as a person types them.</summary>
public sealed class FormTests(BrowserSite site)
{
    private static IEnumerable<string> Examples() =>
        Directory.GetFiles(Path.Combine(TheBook.Folder, "examples"), "*.yaml").Order(StringComparer.Ordinal);

    [Fact]
    public async Task The_example_jobs_typed_field_by_field_give_byte_for_byte_what_the_command_gives()
    {
        var page = await site.CheckAsync();
        foreach (var file in Examples())
        {
            await page.Locator("#afresh").ClickAsync();
            await page.Locator("#sure-yes").ClickAsync();
            await page.EvaluateAsync("document.querySelectorAll('#job details').forEach(part => part.open = true)");
            await TypeAsync(page, "", JsonNode.Parse(TheCommand.Json(file))!);
            await SettleAsync(page);
            (await page.Locator("#rest").InputValueAsync()).ShouldBe("", file);
            TheCommand
                .FirstDifference(await page.Locator("#json").TextContentAsync(), await TheCommand.AssessAsync(file))
                .ShouldBeNull(file);
        }
    }

    [Fact]
    public async Task The_example_files_are_opened_as_YAML_every_key_finds_its_field_and_what_is_saved_is_the_same_job()
    {
        var page = await site.CheckAsync();
        foreach (var file in Examples())
        {
            await page.Locator("#afresh").ClickAsync();
            await page.Locator("#sure-yes").ClickAsync();
            await page.Locator("#open").SetInputFilesAsync(file);
            await page.Locator(".verdict").WaitForAsync();
            await BrowserSite.SettledAsync(page);
            (await page.Locator("#rest").InputValueAsync()).ShouldBe("", file);
            var expected = await TheCommand.AssessAsync(file);
            TheCommand.FirstDifference(await page.Locator("#json").TextContentAsync(), expected).ShouldBeNull(file);
            TheCommand.FirstDifference(await TheCommand.AssessAsync(await SaveAsync(page)), expected).ShouldBeNull(file);
        }
    }

    [Theory]
    [InlineData("job: [", "line 1, column")]
    [InlineData("job: a\njob: b", "'job' is already given at line 1, column 1")]
    [InlineData("job: &x a", "anchors (&) and aliases (*) are not allowed")]
    [InlineData("registered-in: au-qld\non: 2026-11-20\nvehicle: {}\nmodification: { suspension-lift: 45 }", "the unit is missing")]
    public async Task A_file_that_the_command_refuses_is_refused_with_its_reason_and_place(string text, string reason)
    {
        var page = await site.CheckAsync();
        await page.Locator("#open")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "job.yaml",
                    MimeType = "application/yaml",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(text),
                }
            );
        await page.Locator("#problems:not(:empty)").WaitForAsync();
        (await page.Locator("#problems").InnerTextAsync()).ShouldContain(reason);
        (await page.Locator(".verdict").CountAsync()).ShouldBe(0);
    }

    [Fact]
    public async Task What_has_no_field_stays_in_the_job()
    {
        const string job = """
            {"job":"a: #b","registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC","tyres":"265/65R17 112S","seats":"unknown"},
            "modification":{"accessories":{"name":"bar \"<&>\u00e9","mass":"55 kg"},"suspension-lift":"4.5 cm","tanks":[{"capacity":"80 L","fuel":"unknown"}]}}
            """;
        var page = await site.CheckAsync(job);
        var expected = TheCommand.Assess(job);
        expected.ShouldNotBeNull();
        TheCommand.FirstDifference(await page.Locator("#json").TextContentAsync(), expected).ShouldBeNull();
        (await page.GetByLabel("suspension lift", new() { Exact = true }).InputValueAsync()).ShouldBe("4.5 cm");
        (await page.GetByLabel("placard size 1, size").InputValueAsync()).ShouldBe("265/65R17 112S");
        (await page.Locator("#rest").InputValueAsync()).ShouldContain("bar");
        TheCommand
            .FirstDifference(await TheCommand.AssessAsync(await SaveAsync(page)), await page.Locator("#json").TextContentAsync())
            .ShouldBeNull();
    }

    [Fact]
    public async Task Rows_are_added_and_taken_out_by_keyboard_and_the_focus_stays_at_hand()
    {
        var page = await site.CheckAsync(CheckTests.Wagon);
        var add = page.GetByRole(AriaRole.Button, new() { Name = "add: accessory" });
        for (var i = 1; i <= 3; i++)
        {
            await add.FocusAsync();
            await page.Keyboard.PressAsync("Enter");
            await page.Keyboard.TypeAsync($"bar {i}");
            await page.Keyboard.PressAsync("Tab");
            await page.Keyboard.TypeAsync($"{i}0");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Take out accessory 2" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        (await page.EvaluateAsync<string>("document.activeElement.getAttribute('aria-label')")).ShouldBe("Take out accessory 2");
        (await page.GetByLabel("accessory 2, what").InputValueAsync()).ShouldBe("bar 3");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Enter");
        (await page.EvaluateAsync<string>("document.activeElement.textContent")).ShouldBe("add: accessory");
        await SettleAsync(page);
        page.Url.ShouldNotContain("accessories");
    }

    [Fact]
    public async Task A_mistake_in_a_row_is_told_beside_the_row()
    {
        var page = await site.CheckAsync(CheckTests.Wagon);
        await page.GetByRole(AriaRole.Button, new() { Name = "add: accessory" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "add: accessory" }).ClickAsync();
        await page.GetByLabel("accessory 2, mass, kg").FillAsync("heavy");
        await page.Keyboard.PressAsync("Tab");
        await page.Locator("td [aria-invalid]").WaitForAsync();
        (await page.GetByLabel("accessory 2, mass, kg").GetAttributeAsync("aria-describedby")).ShouldNotBeNull();
        (await page.Locator("#problems").InnerTextAsync()).ShouldContain(
            "accessory 2, mass, kg: 'heavy': a quantity is a number and its unit"
        );
    }

    private static async Task TypeAsync(IPage page, string path, JsonNode node)
    {
        switch (node)
        {
            case JsonObject map:
                foreach (var (key, value) in map)
                    await TypeAsync(page, path.Length == 0 ? key : $"{path}.{key}", value!);
                break;
            case JsonArray list:
                for (var i = 0; i < list.Count; i++)
                {
                    var rows = page.Locator($"[data-rows='{path}'] tbody tr");
                    if (await rows.CountAsync() == i)
                        await page.Locator($"[data-rows='{path}'] [data-add]").ClickAsync();
                    if (list[i] is JsonObject row)
                        foreach (var (key, value) in row)
                            await TypeAsync(rows.Nth(i).Locator($"[data-key='{key}']"), value!.GetValue<string>());
                    else
                        await TypeAsync(rows.Nth(i).Locator("[data-key='']"), list[i]!.GetValue<string>());
                }

                break;
            default:
                await TypeAsync(page.Locator($"[name='{path}']"), node.GetValue<string>());
                break;
        }
    }

    private static async Task TypeAsync(ILocator field, string text)
    {
        if (await field.EvaluateAsync<string>("field => field.localName") == "select")
        {
            await field.SelectOptionAsync(text);
            return;
        }

        var unit = await field.GetAttributeAsync("data-unit");
        await field.FillAsync(unit is not null && text.EndsWith($" {unit}", StringComparison.Ordinal) ? text[..^(unit.Length + 1)] : text);
    }

    private static async Task SettleAsync(IPage page) => await BrowserSite.SettledAsync(page);

    private static async Task<string> SaveAsync(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        var file = Path.Combine(Directory.CreateTempSubdirectory().FullName, download.SuggestedFilename);
        await download.SaveAsAsync(file);
        return file;
    }
}
