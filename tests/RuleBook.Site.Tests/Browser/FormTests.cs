using Microsoft.Playwright;

namespace RuleBook.Site.Tests.Browser;

/// <summary>Jobs typed through the fields of the form, as a person types them.</summary>
public sealed class FormTests(BrowserSite site)
{
    /// <summary>
    /// Types a job into its fields, each as a person leaves it, and adds the rows that it needs; the last field is then left.
    /// </summary>
    private const string Type = """
        job => {
          let last;
          const put = (field, text) => {
            if (!field?.checkVisibility() || field.disabled) throw new Error("no field for " + text);
            const unit = ` ${field.dataset.unit}`;
            field.value = text.endsWith(unit) ? text.slice(0, -unit.length) : text;
            if (!field.value) throw new Error(`${field.name} does not take ${text}`);
            field.dispatchEvent(new Event("input", { bubbles: true }));
            last = field;
          };
          const type = (path, node) => {
            if (typeof node === "string") put(document.querySelector(`[name='${path}']`), node);
            else if (!Array.isArray(node)) for (const [key, value] of Object.entries(node)) type(path ? `${path}.${key}` : key, value);
            else node.forEach((row, i) => {
              const rows = document.querySelector(`[data-rows='${path}']`);
              if (rows.querySelectorAll("tbody tr").length === i) rows.querySelector("[data-add]").click();
              for (const [key, text] of typeof row === "string" ? [["", row]] : Object.entries(row))
                put(rows.querySelectorAll("tbody tr")[i].querySelector(`[data-key='${key}']`), text);
            });
          };
          type("", JSON.parse(job));
          last.dispatchEvent(new Event("change", { bubbles: true }));
        }
        """;

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
            await page.EvaluateAsync(Type, TheCommand.Json(file));
            await BrowserSite.SettledAsync(page);
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
            TheCommand.FirstDifference(TheCommand.Assess(await SaveAsync(page)), expected).ShouldBeNull(file);
        }
    }

    [Fact]
    public async Task A_file_that_the_command_refuses_is_refused_with_its_reason_and_place()
    {
        var page = await site.CheckAsync();
        foreach (
            var (text, reason) in ((string, string)[])
                [
                    ("job: [", "line 1, column"),
                    ("job: a\njob: b", "'job' is already given at line 1, column 1"),
                    ("job: &x a", "anchors (&) and aliases (*) are not allowed"),
                    ("registered-in: au-qld\non: 2026-11-20\nvehicle: {}\nmodification: { suspension-lift: 45 }", "the unit is missing"),
                ]
        )
        {
            await page.Locator("#open")
                .SetInputFilesAsync(
                    new FilePayload
                    {
                        Name = "job.yaml",
                        MimeType = "application/yaml",
                        Buffer = System.Text.Encoding.UTF8.GetBytes(text),
                    }
                );
            await page.Locator("#problems", new() { HasText = reason }).WaitForAsync();
            (await page.Locator(".verdict").CountAsync()).ShouldBe(0, text);
        }
    }

    [Fact]
    public async Task What_has_no_field_stays_in_the_job()
    {
        const string job = """
            {"job":"a: #b","registered-in":"au-qld","on":"2026-11-20","vehicle":{"category":"MC","tyres":"265/65R17 112S",
            "seats":"unknown"},
            "modification":{"accessories":{"name":"bar \"<&>\u00e9","mass":"55 kg"},"suspension-lift":"4.5 cm",
            "tanks":[{"capacity":"80 L","fuel":"unknown"}]}}
            """;
        var page = await site.CheckAsync(job);
        var expected = TheCommand.Assess(job);
        expected.ShouldNotBeNull();
        TheCommand.FirstDifference(await page.Locator("#json").TextContentAsync(), expected).ShouldBeNull();
        (await page.GetByLabel("suspension lift", new() { Exact = true }).InputValueAsync()).ShouldBe("4.5 cm");
        (await page.GetByLabel("placard size 1, size").InputValueAsync()).ShouldBe("265/65R17 112S");
        (await page.Locator("#rest").InputValueAsync()).ShouldContain("bar");
        TheCommand.FirstDifference(TheCommand.Assess(await SaveAsync(page)), await page.Locator("#json").TextContentAsync()).ShouldBeNull();
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
        await BrowserSite.SettledAsync(page);
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

    private static async Task<string> SaveAsync(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        return await File.ReadAllTextAsync((await download.PathAsync())!);
    }
}
