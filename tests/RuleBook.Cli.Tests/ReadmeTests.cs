using System.Diagnostics;
using System.Text.RegularExpressions;
using RuleBook.Authoring.Tests;

namespace RuleBook.Cli.Tests;

/// <summary>Every command of the README runs, and its table of coverage is what the command prints.</summary>
public sealed partial class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Invocation.Root, "README.md"));

    private static string[] Jurisdictions() => Directory.GetDirectories(Path.Combine(Invocation.Root, "jurisdictions"));

    public static TheoryData<string> Commands => [.. RunCommand().Matches(Readme).Select(match => match.Groups[1].Value)];

    [Fact]
    public void The_readme_opens_with_two_commands_one_for_the_job_and_one_for_the_tests()
    {
        var blocks = ShellBlock().Matches(Readme).Select(match => match.Groups[1].Value.Trim()).ToArray();
        blocks[0].ShouldStartWith("dotnet run --project src/RuleBook.Cli -- assess ");
        blocks[1].ShouldBe("dotnet test --solution RuleBook.sln");
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Every_command_of_the_readme_runs(string command)
    {
        string[] args = [.. Argument().Matches(command).Select(match => match.Groups[1].Success ? match.Groups[1].Value : match.Value)];
        using var folder = new TemporaryFolder();
        string[] rooted =
        [
            .. args.Select(arg =>
                arg.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Invocation.Root, arg)
                : arg.StartsWith("out/", StringComparison.Ordinal) ? Path.Combine(folder.Path, arg)
                : arg
            ),
        ];
        var answer = await Invocation.Of(rooted);
        answer.Code.ShouldBeInRange(0, 4);
        answer.Code.ShouldNotBe(2, answer.Error);
        answer.Out.ShouldNotBeEmpty();
    }

    [Fact]
    public async Task The_table_of_coverage_is_the_one_the_command_prints()
    {
        var printed = (await Invocation.Of(["limits", "--coverage"])).Out;
        Readme.ShouldContain(
            $"<!-- coverage -->\n{printed}<!-- /coverage -->\n",
            Case.Sensitive,
            "run: rulebook limits --coverage --write"
        );
        printed.Split('\n').Count(line => line.Contains("(`", StringComparison.Ordinal)).ShouldBe(Jurisdictions().Length);
    }

    [Fact]
    public void The_readme_is_short() => Readme.Split('\n').Length.ShouldBeLessThanOrEqualTo(151); // 150 lines and the last line end

    [Fact]
    public async Task What_the_first_command_prints_is_what_the_readme_shows()
    {
        var job = ShellBlock().Matches(Readme)[0].Groups[1].Value.Trim().Split(' ')[^1];
        var printed = (await Invocation.Of(["assess", Path.Combine(Invocation.Root, job)])).Out;
        Readme.ShouldContain($"```\n{printed}```", Case.Sensitive);
    }

    [Fact]
    public async Task The_data_of_the_site_are_read_alike_from_a_shell_from_Python_and_from_JavaScript()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            (await Invocation.Of(["site", Path.Combine(folder.FullName, "site")])).Code.ShouldBe(0);
            var site = Path.Combine(folder.FullName, "site");
            string[] printed =
            [
                await Printed(
                    site,
                    "bash",
                    "-c",
                    ShellBlock()
                        .Matches(Readme)
                        .Select(match => match.Groups[1].Value)
                        .Single(block => block.StartsWith("grep", StringComparison.Ordinal))
                ),
                await Printed(site, "python3", "-c", Block("python")),
                await Printed(site, "node", "--input-type=module", "--eval", Block("js")),
            ];
            printed.Distinct().ShouldHaveSingleItem();
            int.Parse(printed[0], System.Globalization.CultureInfo.InvariantCulture).ShouldBeGreaterThan(0);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Block(string language) =>
        Regex.Match(Readme, $"```{language}\n(.+?)```", RegexOptions.Singleline).Groups[1].Value;

    private static async Task<string> Printed(string folder, string program, params string[] args)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, args) { WorkingDirectory = folder, RedirectStandardOutput = true }
        )!;
        var printed = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        process.ExitCode.ShouldBe(0, program);
        return printed.Trim();
    }

    [GeneratedRegex(@"^dotnet run --project src/RuleBook\.Cli -- (.+)$", RegexOptions.Multiline)]
    private static partial Regex RunCommand();

    [GeneratedRegex(@"```sh\n(.+?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlock();

    [GeneratedRegex("\"([^\"]*)\"|[^ ]+")]
    private static partial Regex Argument();
}
