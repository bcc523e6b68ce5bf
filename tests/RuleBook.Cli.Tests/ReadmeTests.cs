using System.Text.RegularExpressions;

namespace RuleBook.Cli.Tests;

/// <summary>Every command of the README runs, and its table of coverage is what the command prints.</summary>
public sealed partial class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Invocation.Root, "README.md"));

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
        var folder = Directory.CreateTempSubdirectory().FullName;
        string[] rooted = [.. args.Select(arg =>
            arg.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Invocation.Root, arg)
            : arg.StartsWith("out/", StringComparison.Ordinal) ? Path.Combine(folder, arg)
            : arg)];
        var answer = await Invocation.Of(rooted);
        answer.Code.ShouldBeInRange(0, 4);
        answer.Code.ShouldNotBe(2, answer.Error);
        answer.Out.ShouldNotBeEmpty();
    }

    [Fact]
    public async Task The_table_of_coverage_is_the_one_the_command_prints()
    {
        var printed = (await Invocation.Of(["limits", "--coverage"])).Out;
        Readme.ShouldContain(printed, Case.Sensitive, "run: rulebook limits --coverage, and put the table into the README");
    }

    [GeneratedRegex(@"^dotnet run --project src/RuleBook\.Cli -- (.+)$", RegexOptions.Multiline)]
    private static partial Regex RunCommand();

    [GeneratedRegex(@"```sh\n(.+?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlock();

    [GeneratedRegex("\"([^\"]*)\"|[^ ]+")]
    private static partial Regex Argument();
}
