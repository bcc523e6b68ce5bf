using System.Diagnostics;
using System.Runtime.Versioning;

namespace RuleBook.Cli.Tests;

/// <summary>
/// A book, its repository and its jobs may come from anybody: nothing in them leads elsewhere, hides a change or acts where it is printed.
/// </summary>
public sealed class HostileBookTests : IDisposable
{
    private readonly GitBook git = new();

    public void Dispose() => git.Dispose();

    private string In(string path) => Path.Combine(git.Folder, path);

    [Fact]
    public async Task A_link_in_a_book_is_refused_and_what_it_leads_to_is_not_published()
    {
        var secret = Path.Combine(Path.GetTempPath(), $"secret-{Guid.NewGuid():N}");
        await File.WriteAllTextAsync(secret, "topic: towing\nsecret: 42\n", TestContext.Current.CancellationToken);
        File.CreateSymbolicLink(In("jurisdictions/nz/towing.yaml"), secret);
        var site = Path.Combine(git.Folder, "out");
        foreach (
            var args in (string[][])
                [
                    ["site", site, "--book", git.Folder],
                    ["limits", "au-qld", "--book", git.Folder],
                    ["inspect", git.Folder],
                ]
        )
        {
            var answer = await Invocation.Of(args);
            answer.Code.ShouldBe(2);
            (answer.Error + answer.Out).ShouldContain("jurisdictions/nz/towing.yaml:1:1: error link-in-book:");
        }

        Directory.Exists(site).ShouldBeFalse();
        Git("add", "--all");
        Git("-c", "user.name=S", "-c", "user.email=s@example.org", "commit", "--quiet", "--message", "link");
        (await Invocation.Of(["changes", "HEAD", git.Old, "--book", git.Folder])).Error.ShouldContain("error link-in-book:");
        File.Delete(secret);
    }

    [Fact]
    public async Task An_attribute_of_the_repository_hides_no_change()
    {
        await File.WriteAllTextAsync(
            In(".gitattributes"),
            "jurisdictions/au-qld/ride-height.yaml export-ignore\n*.yaml eol=crlf\n",
            TestContext.Current.CancellationToken
        );
        Git("add", "--all");
        Git("-c", "user.name=S", "-c", "user.email=s@example.org", "commit", "--quiet", "--message", "attributes");
        var answer = await Invocation.Of(["changes", "HEAD", "HEAD~2", "--book", git.Folder]);
        answer.Code.ShouldBe(1);
        answer.Words.ShouldContain("Queensland (au-qld), ride height");
        answer.Words.ShouldNotContain("removed");
    }

    [Fact]
    public async Task A_checkout_with_line_ends_of_another_system_gives_the_same_bytes()
    {
        var (one, two) = (Path.Combine(git.Folder, "one"), Path.Combine(git.Folder, "two"));
        (await Invocation.Of(["site", one, "--book", git.Folder, "--compress", "no"])).Code.ShouldBe(0);
        foreach (var file in Directory.EnumerateFiles(In("jurisdictions"), "*.yaml", SearchOption.AllDirectories))
            await File.WriteAllTextAsync(
                file,
                (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ReplaceLineEndings("\r\n"),
                TestContext.Current.CancellationToken
            );
        (await Invocation.Of(["site", two, "--book", git.Folder, "--compress", "no"])).Code.ShouldBe(0);
        Shell($"diff -r '{one}' '{two}'");
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task A_folder_of_jobs_that_cannot_be_looked_into_fails()
    {
        Assert.SkipWhen(Environment.UserName == "root", "root can look into every folder");
        Directory.CreateDirectory(In("jobs/closed"), UnixFileMode.None);
        var answer = await Invocation.Of(["changes", "HEAD", "--jobs", In("jobs"), "--book", git.Folder]);
        File.SetUnixFileMode(In("jobs/closed"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        (answer.Code, answer.Words.Contains("unreadable-folder", StringComparison.Ordinal)).ShouldBe((2, true));
    }

    [Theory]
    [InlineData("W-1\u202Egnp.exe", "W-1\\u{202E}gnp.exe")]
    [InlineData("W-1 ::error file=a::owned", "W-1 :\\u{3A}error file=a:\\u{3A}owned")]
    [InlineData("W-1\\nAllowed without a certificate.", "W-1\\u{A}Allowed without")]
    [InlineData("W\\u200B1", "W\\u{200B}1")]
    [InlineData("\uE0001\uFEFF", "\\u{E000}1\\u{FEFF}")]
    public async Task A_name_that_would_act_where_it_is_printed_is_shown_and_does_nothing(string name, string shown)
    {
        var answer = await Invocation.Assess(
            $$"""
            { "job": "{{name}}", "registered-in": "au-qld", "on": "2026-11-20", "vehicle": { "category": "MC",
              "four-wheel-drive": "yes" }, "modification": { "suspension-lift": "45 mm" } }
            """
        );
        answer.Error.ShouldBeEmpty();
        answer.Words.ShouldContain(shown);
    }

    [Fact]
    public async Task A_file_name_that_would_act_in_a_log_is_shown_and_does_nothing()
    {
        var answer = await Invocation.Of(["assess", "::error::owned\u001b[31m\nx.yaml"]);
        answer.Error.ShouldContain(":\\u{3A}error:\\u{3A}owned\\u{1B}[31m\\u{A}x.yaml:1:1: error no-file:");
        answer.Error.TrimEnd('\n').ShouldNotContain("\n");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(20)]
    [InlineData(25)]
    [InlineData(31)]
    public async Task A_terminal_of_few_columns_and_a_name_of_wide_characters_come_to_an_end(int width)
    {
        var job = Path.Combine(git.Folder, "wide.yaml");
        await File.WriteAllTextAsync(
            job,
            (
                await File.ReadAllTextAsync(
                    Path.Combine(Invocation.Root, "examples", "van-weighed.yaml"),
                    TestContext.Current.CancellationToken
                )
            )
                .Replace("name: ", "name: 車検証車検証車検証", StringComparison.Ordinal)
                .Replace("job: ", "job: 車検証車検証車検証車検証 ", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        foreach (var command in (string[])["assess", "across", "margin"])
            (
                await Invocation.Of([command, job], width).WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken)
            ).Out.ShouldNotBeEmpty();
    }

    private void Git(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("git", arguments) { WorkingDirectory = git.Folder })!;
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, string.Join(' ', arguments));
    }

    private static void Shell(string command)
    {
        using var shell = Process.Start("/bin/sh", ["-c", command]);
        shell.WaitForExit();
        shell.ExitCode.ShouldBe(0, command);
    }
}
