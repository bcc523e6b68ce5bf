using System.Globalization;
using RuleBook.Cli.Commands;

namespace RuleBook.Cli.Tests;

/// <summary>
/// No input reaches the last handler; what does (it would be a fault of the program) ends with a line and exit code 70 (EX_SOFTWARE,
/// sysexits.h).
/// </summary>
public sealed class FaultTests
{
    private const string Towing = """
        registered-in: au-qld
        on: 2026-11-20
        vehicle: { category: MC, four-wheel-drive: yes, tare: 2000 kg, tare-axles: { front: 1000 kg, rear: 1000 kg }, wheelbase: 2800 mm,
          ratings: { gvm: 2900 kg, gcm: 6000 kg, braked-tow: 3000 kg } }
        trailer: { mass: 1500 kg, axles: 1400 kg }
        modification: { suspension-lift: 45 mm, accessories: [ { name: bar, mass: 60 kg, behind-front-axle: 0 mm } ] }
        """;

    [Theory]
    [InlineData("mass: 60 kg", "mass: -3000 kg", ":6:54: error contradiction:", "take off more than the vehicle weighs")]
    [InlineData("2026-11-20", "9999-12-31", ":2:5: error not-a-date:", "of the years 1900 to 2999")]
    [InlineData("2026-11-20", "0001-01-01", ":2:5: error not-a-date:", "of the years 1900 to 2999")]
    [InlineData("category: MC,", "category: MC, first-registered: 9999-12-31,", "error not-a-date:", "is not a date")]
    [InlineData("category: MC,", "category: MC, built: 9999,", "error not-a-date:", "")]
    public async Task Figures_that_cannot_be_are_told_at_their_place(string was, string becomes, string place, string right)
    {
        var answer = await Invocation.Assess(Towing.Replace(was, becomes, StringComparison.Ordinal));
        (answer.Code, answer.Out).ShouldBe((2, ""));
        answer.Error.ShouldContain(place);
        answer.Error.ShouldContain(right);
    }

    [Theory]
    [InlineData("assess", "examples/touring-wagon.yaml", "--on", "9999-12-31")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--on", "0001-01-01")]
    [InlineData("limits", "au-qld", "--on", "9999-12-31")]
    [InlineData("timeline", "ride-height", "--on", "0001-01-01")]
    [InlineData("changes", "")]
    [InlineData("changes", " ")]
    [InlineData("changes", ".", "")]
    [InlineData("site", "out/site", "--since", "")]
    [InlineData("assess", "@examples/touring-wagon.yaml")]
    public async Task An_empty_or_impossible_argument_is_an_error_and_never_all_clear(params string[] args)
    {
        string[] rooted =
        [
            .. args.Select(arg =>
                arg is "." || arg.StartsWith("examples", StringComparison.Ordinal) ? Path.Combine(Invocation.Root, arg) : arg
            ),
        ];
        var answer = await Invocation.Of(rooted);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("error");
        answer.Out.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_path_of_sixty_thousand_parts_is_refused()
    {
        var path = string.Join('.', Enumerable.Repeat("a", 60_000));
        var answer = await Invocation.Of(["assess", Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml"), "--set", $"{path}=1"]);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("more than 64 parts");
        answer.Error.Length.ShouldBeLessThan(1000);
    }

    [Fact]
    public async Task A_job_with_four_hundred_mistakes_prints_a_hundred_and_says_how_many_it_does_not()
    {
        var answer = await Invocation.Assess(
            $"registered-in: au-qld\non: 2026-11-20\n{string.Concat(Enumerable.Range(0, 400).Select(i => $"wrong-{i}: 1\n"))}"
        );
        answer.Code.ShouldBe(2);
        answer.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(101);
        answer.Error.ShouldEndWith("\nand 300 more problems, not printed\n");
    }

    [Theory]
    [InlineData("load: { occupants: [", "{ mass: 80 kg }", "] }")]
    [InlineData("vehicle: { tyres: [", "265/65R17", "] }")]
    [InlineData("shown: {", "a@: yes", "}")]
    public async Task A_list_longer_than_any_job_needs_is_refused_and_the_most_is_said(string before, string entry, string after)
    {
        var entries = string.Join(
            ", ",
            Enumerable.Range(0, 20_000).Select(i => entry.Replace("@", i.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal))
        );
        var answer = await Invocation.Assess($"registered-in: au-qld\non: 2026-11-20\n{before}{entries}{after}\n");
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("error too-many:");
        answer.Error.ShouldContain("at most");
        answer.Error.Length.ShouldBeLessThan(500);
    }

    [Fact]
    public async Task A_fault_of_the_program_ends_with_one_line_where_to_report_it_and_code_70()
    {
        using var broken = new Broken();
        using var error = new StringWriter();
        var surroundings = new Surroundings(
            broken,
            error,
            Spectre.Console.AnsiConsole.Console,
            new DateOnly(2026, 11, 25),
            Invocation.Root
        );
        (await CommandLine.RunAsync(["assess", Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml")], surroundings)).ShouldBe(
            70
        );
        error
            .ToString()
            .TrimEnd()
            .ShouldMatch(
                "^fault: no answer was made, and the fault is the program's, not the input's: "
                    + "InvalidOperationException: broken \\(at RuleBook\\..+\\)"
                    + "\\. Please report this line with the command and its files: the maintainers, as an issue of the "
                    + "repository that the command "
                    + "came from$"
            );
    }

    [Fact]
    public async Task A_standard_error_that_nobody_reads_takes_nothing_from_the_exit_code()
    {
        using var broken = new Broken();
        var surroundings = new Surroundings(
            TextWriter.Null,
            broken,
            Spectre.Console.AnsiConsole.Console,
            new DateOnly(2026, 11, 25),
            Invocation.Root
        );
        (await CommandLine.RunAsync(["assess", "no-such-file.yaml"], surroundings)).ShouldBe(2);
    }

    /// <summary>A writer that fails: as an object that is gone on one line, as a full disk on another.</summary>
    private sealed class Broken : StringWriter
    {
        public override void Write(char value) => throw new InvalidOperationException("broken");

        public override void Write(string? value) => throw new InvalidOperationException("broken");

        public override void WriteLine(string? value) => throw new IOException("No space left on device");
    }
}
