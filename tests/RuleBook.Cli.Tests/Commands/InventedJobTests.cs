using System.Globalization;
using System.Text.Json;
using RuleBook.Cli.Commands;
using Spectre.Console;

namespace RuleBook.Cli.Tests.Commands;

/// <summary>
/// What each command makes of jobs before one invented rule: 50 mm without a certificate, 75 mm with one, nothing beyond. The exit codes
/// are those of the README.
/// </summary>
public sealed class InventedJobTests : IDisposable
{
    private const string NotAdvice = "This is not legal advice: the authority and the certifier decide. Each in full: assess FILE.";

    private readonly string folder = InventedBookTests.Copy();

    public InventedJobTests() => Limit(50);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("40 mm", 0, "Allowed without a certificate, 10 mm left (suspension lift). The north, 20 November 2026.")]
    [InlineData("60 mm", 0, "Allowed with a certificate (without one: suspension lift 60 mm, limit 50 mm: 10 mm too much).")]
    [InlineData("90 mm", 1, "Not allowed (suspension lift 90 mm, limit 75 mm: 15 mm too much).")]
    [InlineData("unknown", 3, "Undecided")]
    [InlineData("0 mm", 5, "Nothing to judge")]
    public async Task A_job_is_answered_by_the_rule_with_the_exit_code_of_its_answer(string lift, int code, string says)
    {
        var answer = await Of("assess", Job("job", lift));
        (answer.Code, answer.Error).ShouldBe((code, ""));
        answer.Out.ShouldStartWith(says);
        // The same job with another lift, and as on another day.
        (await Of("assess", Job("other", "40 mm"), "--set", $"modification.suspension-lift={lift}")).Code.ShouldBe(code);
        (await Of("assess", Job("early", lift), "--on", "2014-06-01")).Out.ShouldContain("1 June 2014.");
    }

    [Fact]
    public async Task An_answer_is_given_as_text_in_full_as_data_as_a_page_and_as_a_record_to_the_console_or_to_a_file()
    {
        var (job, file) = (Job("job", "60 mm"), Path.Combine(folder, "answer"));
        var first = await Of("assess", job);
        first.Out.ShouldContain("More: --full");
        first.Out.ShouldContain("To comply    suspension lift 50 mm: no certificate\n");
        var full = await Of("assess", job, "--full");
        full.Out.ShouldNotContain("--full");
        full.Out.Length.ShouldBeGreaterThan(first.Out.Length);
        foreach (var (format, verdict) in new[] { ("json", "verdict"), ("record", "answer") })
        {
            using var data = JsonDocument.Parse((await Of("assess", job, "--format", format)).Out);
            data.RootElement.TryGetProperty(verdict, out _).ShouldBeTrue(format);
        }

        (await Of("assess", job, "--format", "html")).Out.ShouldStartWith("<!doctype html>", Case.Insensitive);
        foreach (var format in new[] { "text", "json" })
        {
            (await Of("assess", job, "--format", format, "--output", file)).Out.ShouldBeEmpty();
            Words(File.ReadAllText(file)).ShouldBe(Words((await Of("assess", job, "--format", format)).Out));
        }

        var nowhere = await Of("assess", job, "--in", "xb");
        nowhere.Code.ShouldBe(2);
        nowhere.Error.ShouldStartWith("--in:1:1: error unknown-jurisdiction: 'xb' is not a jurisdiction of the book");
        using var there = JsonDocument.Parse((await Of("assess", job, "--in", "xa", "--format", "json")).Out);
        there.RootElement.GetProperty("jurisdiction").GetString().ShouldBe("xa");
    }

    /// <summary>From the worst: not read, not allowed, not as planned, undecided, nothing to judge, allowed.</summary>
    [Fact]
    public async Task Several_jobs_are_a_line_each_and_the_worst_is_the_exit_code()
    {
        var many = Directory.CreateDirectory(Path.Combine(folder, "jobs")).FullName;
        string[] files = [Job("jobs/a", "40 mm"), Job("jobs/b", "0 mm"), Job("jobs/c", "unknown"), Job("jobs/d", "90 mm")];
        var one = await Of("assess", many);
        one.Out.ShouldBe(
            $"""
            a.yaml  allowed without a certificate
            b.yaml  nothing to judge
            c.yaml  undecided: no certificate to not allowed
            d.yaml  not allowed
            4 jobs: 1 not allowed, 1 undecided, 1 with nothing to judge, 1 allowed.
            {NotAdvice}

            """
        );
        one.Code.ShouldBe(1);
        (await Of(["assess", .. files[..3]])).Code.ShouldBe(3);
        (await Of(["assess", .. files[..2]])).Code.ShouldBe(5);
        (await Of("assess", files[0], files[0])).Code.ShouldBe(0);

        File.WriteAllText(Path.Combine(many, "e.json"), """{ "registered-in": "xb", "modification": { "colour": "red" } }""");
        File.WriteAllText(Path.Combine(many, "notes.txt"), "no job");
        var with = await Of("assess", many);
        with.Code.ShouldBe(2);
        with.Out.ShouldContain("\n5 jobs: 1 not read, 1 not allowed, 1 undecided, 1 with nothing to judge, 1 allowed.\n");
        with.Out.ShouldContain("\ne.json  not read: ");
        with.Out.ShouldContain("; and 1 more\n");
        (await Of("assess", many, "--format", "json")).Error.ShouldStartWith(
            "--format:1:1: error one-at-a-time: several jobs are told as text"
        );
        (await Of("assess", many, "--full")).Code.ShouldBe(2);
        (await Of("assess", Directory.CreateDirectory(Path.Combine(folder, "none")).FullName)).Error.ShouldBe(
            "JOB:1:1: error no-file: the folder holds no job (name one with files that end in .yaml, .yml or .json)\n"
        );
    }

    [Fact]
    public async Task A_job_is_asked_in_every_place_that_registers_and_mended_by_the_least_that_helps()
    {
        var job = Job("job", "90 mm");
        var across = await Of("across", job);
        (across.Code, across.Error).ShouldBe((0, ""));
        across.Out.ShouldStartWith("as on 20 November 2026\n* The north  not allowed\n* state of registration: its rules decide.");
        across.Out.ShouldNotContain("The nation ");
        using var everywhere = JsonDocument.Parse((await Of("across", job, "--format", "json")).Out);
        everywhere.RootElement.GetProperty("registered-in").GetString().ShouldBe("xa-n");
        everywhere
            .RootElement.GetProperty("answers")
            .EnumerateArray()
            .Select(each => each.GetProperty("jurisdiction").GetString())
            .ShouldBe(["xa-n"]);

        var remedy = await Of("remedy", job);
        remedy.Code.ShouldBe(1);
        remedy.Out.ShouldContain(
            """
            To be allowed without a certificate
              - suspension lift 50 mm (40 mm less)
                then: allowed without a certificate

            To be allowed with a certificate
              - suspension lift 75 mm (15 mm less)
                then: allowed with a certificate
            """
        );
        using var mended = JsonDocument.Parse((await Of("remedy", job, "--format", "json")).Out);
        mended.RootElement.GetProperty("headline").GetString().ShouldBe("prohibited");
        (await Of("remedy", job, "--in", "xb")).Error.ShouldStartWith("--in:1:1: error unknown-jurisdiction: 'xb'");
        (await Of("remedy", job, "--set", "modification.suspension-lift=40 mm")).Code.ShouldBe(0);
    }

    [Fact]
    public async Task A_kept_answer_is_asked_again_and_what_no_longer_stands_is_told_with_a_letter()
    {
        var kept = Directory.CreateDirectory(Path.Combine(folder, "kept")).FullName;
        // Before there was a rule it does not matter what it says.
        foreach (var (name, day) in new[] { ("stands", "2014-06-01"), ("falls", "2026-11-20") })
            (
                await Of("assess", Job(name, "40 mm"), "--on", day, "--format", "record", "--output", Path.Combine(kept, name + ".json"))
            ).Error.ShouldBeEmpty();
        var falls = Path.Combine(kept, "falls.json");
        (await Of("replay", falls)).ShouldSatisfyAllConditions(
            same => same.Code.ShouldBe(0),
            same => same.Out.ShouldStartWith("The same answer, to the byte.\n")
        );
        (await Of("recheck", kept)).Code.ShouldBe(0);

        Limit(30);
        (await Of("replay", falls)).ShouldSatisfyAllConditions(
            other => other.Code.ShouldBe(1),
            other => Words(other.Out).ShouldStartWith("ANOTHER ANSWER: allowed without a certificate -> allowed with a certificate."),
            other =>
                Words(other.Out)
                    .ShouldContain(
                        "figure corrected: xa-n/ride-height/raise, suspension-lift (no-certificate): at-most 50 mm -> at-most 30 mm"
                    )
        );
        var before = File.ReadAllText(falls);
        var told = await Of("recheck", kept, "--letters", Path.Combine(folder, "letters"));
        told.Code.ShouldBe(1);
        Words(told.Out).ShouldContain("falls.json: NO LONGER STANDS: allowed without a certificate -> allowed with a certificate");
        File.ReadAllText(falls).ShouldBe(before);
        Directory.GetFiles(Path.Combine(folder, "letters")).Select(Path.GetFileName).ShouldBe(["falls.txt"]);
        File.ReadAllText(Path.Combine(folder, "letters", "falls.txt")).ShouldContain("What we said:  allowed without a certificate");
        (await Of("recheck", kept, "--write")).Code.ShouldBe(1);
        using var was = JsonDocument.Parse(before);
        using var now = JsonDocument.Parse(File.ReadAllText(falls));
        now.RootElement.GetProperty("earlier")[0]
            .GetProperty("answer")
            .GetRawText()
            .ShouldBe(was.RootElement.GetProperty("answer").GetRawText());
        (await Of("recheck", kept)).Code.ShouldBe(0);

        File.WriteAllText(Path.Combine(kept, "newer.json"), """{ "record": 7 }""");
        (await Of("replay", Path.Combine(kept, "newer.json"))).Error.ShouldContain("its format is 7");
        var refused = await Of("recheck", kept);
        refused.Code.ShouldBe(2);
        Words(refused.Out).ShouldContain("its format is 7");
        (await Of("recheck", Path.Combine(folder, "gone"))).Error.ShouldEndWith(
            "error not-a-folder: there is no such folder (name the folder with the records)\n"
        );
        (await Of("recheck", Path.Combine(folder, "letters"))).Error.ShouldEndWith(
            "error no-record: no record is here (records are *.json files that 'assess --format record' wrote)\n"
        );
    }

    [Fact]
    public async Task A_topic_that_the_book_has_not_got_is_refused_with_the_nearest()
    {
        var refused = await Of("limits", "xa", "--topic", "ride-hight");
        (refused.Code, refused.Out, refused.Error).ShouldBe(
            (2, "", "--topic:1:1: error unknown-topic: 'ride-hight' is not a topic (did you mean 'ride-height'?)\n")
        );
        (await Of("limits", "xa", "--topic", "ride-height")).Code.ShouldBe(0);
    }

    [Fact]
    public async Task A_book_is_given_a_name_with_the_news_since_the_one_before()
    {
        (await Of("editions")).Out.ShouldStartWith("This book is no edition; it has none yet.\n");
        var packed = Path.Combine(folder, "first.rulebook");
        var first = await Of("edition", "2026.10.1");
        first.Code.ShouldBe(0);
        first.Out.ShouldMatch(
            "^edition 2026\\.10\\.1: sha256:[0-9a-f]{64}, 0 news drafted in /.*/jurisdictions/editions\\.yaml: edit them by hand\n$"
        );
        (await Of("pack", packed)).Code.ShouldBe(0);
        (await Of("edition", "2026.10.2")).Error.ShouldBe(
            "NAME:1:1: error edition-exists: the book as it is has a name: edition 2026.10.1 (change the book first, or cite "
                + "that edition)\n"
        );
        (await Of("editions")).Out.ShouldContain("This is edition 2026.10.1 of the book.");
        Words((await Of("assess", Job("job", "40 mm"))).Out).ShouldContain("edition 2026.10.1");

        Limit(30);
        (await Of("editions")).Out.ShouldContain("This book is no edition; it was changed after edition 2026.10.1.");
        (await Of("edition", "2026-12")).Error.ShouldContain("editions.yaml");
        (await Of("edition", "2026.10.1")).Error.ShouldBe(
            "NAME:1:1: error edition-exists: there is an edition 2026.10.1 (take the next number)\n"
        );
        (await Of("edition", "2026.9.4")).Error.ShouldBe(
            "NAME:1:1: error editions-out-of-order: edition 2026.9.4 of today does not come after 2026.10.1 of 2026-11-25 (take "
                + "a later month,"
                + " or the next number)\n"
        );
        var second = await Of("edition", "2026.11.1", "--since", packed);
        second.Code.ShouldBe(0, second.Error);
        using var named = JsonDocument.Parse((await Of("editions", "--format", "json")).Out);
        named
            .RootElement.GetProperty("editions")
            .EnumerateArray()
            .SelectMany(each => each.GetProperty("news").EnumerateArray())
            .Select(news => $"{news.GetProperty("kind").GetString()} in {news.GetProperty("jurisdictions")[0].GetString()}")
            .ShouldBe(["corrected in xa-n"]);
        // The figure was 50 mm since 2015: answers that were given are others.
        (await Of("editions", "--format", "markdown")).Out.ShouldContain("## Past answers corrected");
    }

    [Fact]
    public async Task Questions_are_asked_until_the_answer_stands_and_what_cannot_be_read_is_asked_again()
    {
        var asked = await Asked("xb\nN\n20/11/2026\n2026-11-20\nMC\n40\n40 mm\n\n\n\nno line more is read\n");
        asked.Code.ShouldBe(0);
        asked.Out.ShouldBe(
            """
            registered-in: xa-n
            on: 2026-11-20
            vehicle:
              category: MC
            modification:
              suspension-lift: 40 mm

            """
        );
        var lines = asked.Error.Split('\n');
        lines[0].ShouldBe("An empty line leaves a fact unknown. Ctrl-C ends without writing anything.");
        lines[1].ShouldBe("Where is the vehicle registered? xa-n");
        lines[2].ShouldStartWith(">   'xb' is not in the book: ");
        asked.Error.ShouldContain("On which day is the work done? (empty: today, 2026-11-25)\n>   ");
        asked.Error.ShouldContain("How much does the suspension lift it, unladen? 40 mm, -30 mm where it gets lower\n>   ");
        asked.Error.ShouldContain("How high are blocks between body and frame? 25 mm\n> ");
        asked.Error.ShouldContain("Which size stands on the tyre placard? 265/65R17\n> ");
        asked.Error.ShouldNotContain("Which size is fitted?");
        asked.Error.ShouldContain("Which GVM is asked for? 3500 kg; empty where it stays\n> \nAllowed without a certificate, 10 mm left");

        (await Asked("xa-n\n\n\n40 mm\n\n265/65R17\n\n\n")).ShouldSatisfyAllConditions(
            with => with.Error.ShouldContain("Which size is fitted? 265/70R17; empty where it stays\n> "),
            with => with.Out.ShouldContain("on: 2026-11-25\n"),
            with => with.Out.ShouldContain("  tyres: 265/65R17\n")
        );
        (await Asked("xa-n\n\n\n40 mm\n\n\n\n")).Out.ShouldContain("vehicle:\n  category: unknown\n");
        (await Asked("")).ShouldSatisfyAllConditions(
            nothing => nothing.Code.ShouldBe(2),
            nothing =>
                nothing.Error.ShouldEndWith(
                    "standard input:1:1: error missing-key: the questions were not answered (answer at least where the vehicle "
                        + "is registered)\n"
                )
        );
    }

    [Fact]
    public async Task The_table_of_what_the_book_holds_is_written_between_the_marks_of_the_readme()
    {
        var readme = Path.Combine(folder, "README.md");
        File.WriteAllText(readme, "before\n<!-- coverage -->\nold\n<!-- /coverage -->\nafter\n");
        var table = (await Of("limits", "--coverage")).Out;
        (await Of("limits", "--coverage", "--write")).Out.ShouldBe("written: README.md\n");
        File.ReadAllText(readme).ShouldBe($"before\n<!-- coverage -->\n{table}<!-- /coverage -->\nafter\n");
        (await Of("limits", "--coverage", "--write")).Out.ShouldBe("fresh: README.md says what the book holds\n");
        foreach (var without in new[] { "none\n", "<!-- coverage -->\n", "<!-- /coverage -->\n<!-- coverage -->\n" })
        {
            File.WriteAllText(readme, without);
            (await Of("limits", "--coverage", "--write")).Error.ShouldEndWith(
                "error missing-key: the marks of the coverage are not in it (put the lines <!-- coverage --> and <!-- /coverage "
                    + "--> where the "
                    + "table is to stand)\n"
            );
            File.ReadAllText(readme).ShouldBe(without);
        }

        File.Delete(readme);
        (await Of("limits", "--coverage", "--write")).Code.ShouldBe(2);
    }

    private Task<Invocation> Of(params string[] args) => Invocation.Of([.. args, "--book", folder], width: 200);

    private async Task<Invocation> Asked(string typed)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var error = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, Out = new AnsiConsoleOutput(output) });
        console.Profile.Width = 200;
        var code = await CommandLine.RunAsync(
            ["job", "--ask", "--book", folder],
            new Surroundings(output, error, console, new DateOnly(2026, 11, 25), Invocation.Root) { In = new StringReader(typed) }
        );
        return new Invocation(code, output.ToString(), error.ToString());
    }

    private string Job(string name, string lift)
    {
        var file = Path.Combine(folder, name + ".yaml");
        File.WriteAllText(
            file,
            "{ registered-in: xa-n, on: 2026-11-20, vehicle: { category: MC, four-wheel-drive: yes }, modification: { "
                + $"suspension-lift: {lift} }} }}\n"
        );
        return file;
    }

    private void Limit(int free) =>
        File.WriteAllText(
            Path.Combine(folder, "jurisdictions", "xa-n", "ride-height.yaml"),
            $$"""
            jurisdiction: xa-n
            topic: ride-height
            rules:
              - { rule: raise, title: Raising, from: 2015-01-01, sources: [{ cite: act, clause: "3" }], beyond: prohibited, tiers: [
                  { pathway: no-certificate, within: { suspension-lift: {{free}} mm } },
                  { pathway: certificate, within: { suspension-lift: 75 mm } } ] }
            """
        );

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
