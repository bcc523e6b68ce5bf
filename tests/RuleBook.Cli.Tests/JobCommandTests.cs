using System.Globalization;
using RuleBook.Authoring.Schemas;
using RuleBook.Authoring.Tests;
using RuleBook.Cli.Commands;
using RuleBook.Yaml;
using Spectre.Console;

namespace RuleBook.Cli.Tests;

/// <summary>A job to start from. Basis of the expectations on the verdicts: the limits named in the comments.</summary>
public sealed class JobCommandTests
{
    [Theory]
    [InlineData("wagon", 3)]
    [InlineData("ute", 0)] // New South Wales, 40 of 50 mm; NA has a GVM of up to 3.5 t whatever the plate says
    [InlineData("van", 3)]
    [InlineData("trailer", 3)]
    public async Task A_template_is_a_job_that_is_answered_and_says_what_plates_still_have_to_tell(string template, int code)
    {
        var job = await Invocation.Of(["job", "--template", template]);
        job.Code.ShouldBe(0, job.Error);
        SchemaCheck.Find("job", YamlText.Read(job.Out, template)).ShouldBeEmpty();
        var answer = await Invocation.Assess(job.Out);
        answer.Code.ShouldBe(code);
        answer.Error.ShouldBeEmpty();
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "job.yaml");
        (await Invocation.Of(["job", "--template", template, "--output", file])).ShouldBe(new Invocation(0, "", ""));
        (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ShouldBe(job.Out);
        job.Out.Split('\n').Count(line => line.Contains('#', StringComparison.Ordinal)).ShouldBeGreaterThan(10);
    }

    [Fact]
    public async Task Questions_end_as_soon_as_no_answer_would_change_the_verdict()
    {
        // Queensland since 26 October 2018: 50 mm of suspension without a certificate, with or without stability control (minister's
        // release of 20 September 2018).
        var asked = await Asked("qld\n2026-11-20\nMC\n45 mm\n\n\n\nyes\nthis line is not read\n");
        asked.Code.ShouldBe(0);
        asked.Error.ShouldContain("Can all wheels be driven?");
        asked.Error.ShouldNotContain("stability control?");
        asked.Error.ShouldContain("Allowed without a certificate, 5 mm left (suspension lift).");
        asked.Out.ShouldBe(
            """
            registered-in: au-qld
            on: 2026-11-20
            vehicle:
              category: MC
              four-wheel-drive: yes
            modification:
              suspension-lift: 45 mm

            """
        );
    }

    [Fact]
    public async Task What_cannot_be_read_is_asked_again_with_what_would_be_right()
    {
        var asked = await Asked("nowhere\nau-qld\n20/11/2026\n2026-11-20\nMC\n45\n45 mm\n\n\n\nyes\n");
        asked.Code.ShouldBe(0);
        asked.Error.ShouldContain("'nowhere' is not in the book");
        asked.Error.ShouldContain("write the year first: 2026-11-20");
        asked.Error.ShouldContain("the unit is missing");
        asked.Out.ShouldContain("suspension-lift: 45 mm");
    }

    [Fact]
    public async Task An_empty_line_leaves_a_fact_unknown_and_it_is_asked_once()
    {
        var asked = await Asked("au-qld\n\nMC\n45 mm\n\n\n\n\n");
        asked.Code.ShouldBe(3);
        asked.Error.Split("Can all wheels be driven?\n").Length.ShouldBeLessThanOrEqualTo(2);
        asked.Out.ShouldNotContain("four-wheel-drive");
        asked.Out.ShouldContain("on: 2026-11-25"); // today of the tests
    }

    [Fact]
    public async Task A_job_that_is_there_already_is_never_replaced()
    {
        var file = Path.GetTempFileName();
        try
        {
            var refused = await Invocation.Of(["job", "--template", "ute", "--output", file]);
            refused.Code.ShouldBe(2);
            refused.Error.ShouldBe(
                $"{file}:1:1: error not-writable: the file is there already (name another; what you have typed is not replaced)\n"
            );
            new FileInfo(file).Length.ShouldBe(0);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("job")]
    [InlineData("job", "--ask", "--template", "ute")]
    public async Task A_job_begins_in_one_way(params string[] args) => (await Invocation.Of(args)).Code.ShouldBe(2);

    private static async Task<Invocation> Asked(string typed)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var error = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, Out = new AnsiConsoleOutput(output) });
        console.Profile.Width = 80;
        var code = await CommandLine.RunAsync(
            ["job", "--ask"],
            new Surroundings(output, error, console, new DateOnly(2026, 11, 25), Invocation.Root) { In = new StringReader(typed) }
        );
        return new Invocation(code, output.ToString(), error.ToString());
    }
}
