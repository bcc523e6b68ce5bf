using System.Diagnostics;

namespace RuleBook.Cli.Tests;

/// <summary>A command line that cannot be read is told as it was typed, with one hint; a terminal's own settings are kept.</summary>
public sealed class UsageTests
{
    private static readonly string Example = Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml");

    [Theory]
    [InlineData("asess job.yaml", "'asess' is not known here (did you mean 'assess'? 'rulebook --help' tells what there is)")]
    [InlineData(
        "assess job.yaml --fulll",
        "'--fulll' is not known here (did you mean '--full'? 'rulebook assess --help' tells what there is)"
    )]
    [InlineData(
        "assess job.yaml --format xml",
        "Argument 'xml' not recognized. Must be one of: 'text' 'json' 'html' 'record' ('rulebook assess --help' tells what there is)"
    )]
    [InlineData("assess", "Required argument 'JOB' missing for command: 'assess' ('rulebook assess --help' tells what there is)")]
    [InlineData("assess -f job.yaml", "'-f' is not known here ('rulebook assess --help' tells what there is)")]
    [InlineData("limits au-qld more", "'more' is not known here ('rulebook limits --help' tells what there is)")]
    public async Task A_usage_error_is_the_line_and_one_hint(string line, string hint)
    {
        var answer = await Invocation.Of(line.Split(' '));
        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldBe($"rulebook {line}\nerror: {hint}\n");
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("across")]
    [InlineData("margin")]
    [InlineData("remedy")]
    [InlineData("limits")]
    [InlineData("cases")]
    [InlineData("changes")]
    [InlineData("fleet")]
    [InlineData("export")]
    [InlineData("site")]
    public async Task Help_is_no_wider_than_a_wide_terminal_whatever_the_book_holds(string command)
    {
        var help = await Invocation.Of([command, "--help"]);
        help.Code.ShouldBe(0);
        help.Out.Split('\n').ShouldAllBe(line => line.Length <= 140);
    }

    [Theory]
    [InlineData("QLD", "au-qld")]
    [InlineData("qld", "au-qld")]
    [InlineData("AU-QLD", "au-qld")]
    [InlineData("au-qdl", "au-qld")]
    [InlineData("Queensland", "au-qld")]
    [InlineData("new south wales", "au-nsw")]
    [InlineData("Tasmannia", "au-tas")]
    public async Task A_jurisdiction_is_guessed_from_its_name_from_capitals_or_the_end_of_its_id(string typed, string meant)
    {
        (await Invocation.Of(["limits", typed])).Error.ShouldBe(
            $"ID:1:1: error unknown-jurisdiction: '{typed}' is not a jurisdiction of the book (did you mean '{meant}'?)\n"
        );
        (await Invocation.Assess($"registered-in: {typed}\non: 2026-11-20\nvehicle: {{}}\n")).Error.ShouldContain(
            $":1:16: error unknown-jurisdiction: '{typed}' is not a jurisdiction of the book (did you mean '{meant}'?)"
        );
    }

    [Theory]
    [InlineData("27/11/2026", "write the year first: 2026-11-27)")]
    [InlineData("11/27/2026", "write the year first: 2026-11-27)")]
    [InlineData("5.1.2026", "write the year first: 2026-01-05, or 2026-05-01 where the month stood first)")]
    [InlineData("5/5/2026", "write the year first: 2026-05-05)")]
    [InlineData("27/11/26", "write year-month-day, such as 2018-10-26, of the years 1900 to 2999)")] // of which century?
    [InlineData("31/2/2026", "write year-month-day, such as 2018-10-26, of the years 1900 to 2999)")]
    public async Task A_day_as_spreadsheets_write_it_is_turned_about(string typed, string tip)
    {
        (await Invocation.Assess($"registered-in: au-qld\non: {typed}\nvehicle: {{}}\n")).Error.ShouldContain(tip);
        (await Invocation.Of(["limits", "au-qld", "--on", typed])).Error.ShouldContain(tip);
    }

    [Theory]
    [InlineData("mc", "(did you mean 'MC'?)")]
    [InlineData("XX", "'XX' is not one of MA, MB, MC, ")] // nothing is near: no guess, and the words are told once
    public async Task A_category_in_small_letters_is_guessed_and_nonsense_is_not(string typed, string tip) =>
        (await Invocation.Assess($"registered-in: au-qld\non: 2026-11-20\nvehicle: {{ category: {typed} }}\n")).Error.ShouldContain(tip);

    [Fact]
    public async Task A_file_in_a_folder_that_is_not_there_is_told_as_such()
    {
        var refused = await Invocation.Of(["assess", Example, "--output", "/no/such/folder/answer.txt"]);
        refused.Code.ShouldBe(2);
        refused.Error.ShouldBe(
            "/no/such/folder/answer.txt:1:1: error not-writable: there is no folder '/no/such/folder' (make it first, or check its name)\n"
        );
    }

    [Fact]
    public void Through_a_pipe_the_columns_asked_for_are_kept()
    {
        Run("env", "COLUMNS=50", Command, "assess", Example).Split('\n').ShouldAllBe(line => line.Length <= 50);
        Run("env", "COLUMNS=200", Command, "assess", Example).Split('\n').ShouldContain(line => line.Length > 80);
        Run("env", "COLUMNS=wide", Command, "assess", Example).Split('\n').ShouldAllBe(line => line.Length <= 80);
    }

    [Fact]
    public void Without_colour_nothing_is_bold_either()
    {
        Run("script", "-qec", $"NO_COLOR=1 {Command} assess {Example}", "/dev/null").ShouldNotContain("\u001b[1");
        Run("script", "-qec", $"env -u NO_COLOR {Command} assess {Example}", "/dev/null").ShouldContain("\u001b[1");
    }

    [Theory]
    [InlineData("rulebook ass", "assess")]
    [InlineData("rulebook limits au-q", "au-qld")]
    [InlineData("rulebook assess x.yaml --fo", "--format")]
    public void A_shell_completes_commands_options_and_jurisdictions(string line, string completed)
    {
        var words = line.Split(' ');
        Run(
                "bash",
                "-c",
                $"""
                rulebook() {'{'} {Command} "$@"; {'}'}
                cd {Invocation.Root}
                source <(rulebook completions bash)
                COMP_LINE="{line}"; COMP_POINT={line.Length}; COMP_WORDS=({line}); COMP_CWORD={words.Length - 1}
                _rulebook; echo "$COMPREPLY"
                """
            )
            .Trim()
            .ShouldBe(completed);
    }

    private static string Command => Path.Combine(AppContext.BaseDirectory, "RuleBook.Cli");

    private static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, WorkingDirectory = Invocation.Root }
        )!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return text;
    }
}
