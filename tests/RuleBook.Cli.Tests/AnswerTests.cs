using System.Text.Json;
using RuleBook.Authoring.Tests;

namespace RuleBook.Cli.Tests;

/// <summary>What a reader sees, and the exit codes that the README promises.</summary>
public sealed class AnswerTests
{
    public static TheoryData<string> Examples =>
        [.. Directory.GetFiles(Path.Combine(Invocation.Root, "examples"), "*.yaml").Select(file => Path.GetFileName(file)).Order()];

    [Theory]
    [InlineData("touring-wagon.yaml", 0)]
    [InlineData("too-high-prohibited.yaml", 1)]
    [InlineData("western-undecided.yaml", 3)]
    public async Task The_exit_code_tells_permitted_prohibited_and_undecided_apart(string example, int code) =>
        (await Assess(example)).Code.ShouldBe(code);

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task No_line_of_an_answer_is_wider_than_a_phone(string example)
    {
        var answer = await Invocation.Of(["assess", Path.Combine(Invocation.Root, "examples", example)], width: 40);
        answer.Code.ShouldNotBe(2, answer.Error);
        answer.Out.Split('\n').ShouldAllBe(line => line.Length <= 40);
        answer.Out.ShouldNotContain(" \n");
    }

    [Theory]
    [MemberData(nameof(Examples))]
    // Answers.md of the project: decision first.
    public async Task The_first_screen_has_at_most_twelve_lines_of_eighty_columns(string example) =>
        (await Assess(example)).Out.TrimEnd('\n').Split('\n').Length.ShouldBeLessThanOrEqualTo(12);

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task No_sentence_of_the_first_screen_has_an_id_of_the_book(string example) =>
        (await Assess(example)).Out.ShouldNotMatch("[a-z]+-[a-z]+/[a-z]");

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Every_answer_defers_to_the_authority_and_the_certifier(string example) =>
        (await Assess(example)).Words.ShouldContain("not legal advice");

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_same_job_gives_the_same_bytes_twice(string example) =>
        (await Assess(example, "--format", "json")).Out.ShouldBe((await Assess(example, "--format", "json")).Out);

    /// <summary>The certifiers are named as the schemes name them (certification.yaml of each place).</summary>
    [Theory]
    [InlineData("au-qld", "an approved person of Queensland")]
    [InlineData("au-vic", "a VASS signatory of Victoria")]
    [InlineData("nz", "an LVV certifier of New Zealand")]
    public async Task Who_certifies_where_one_is_appointed_elsewhere_is_told_in_good_English(string place, string says)
    {
        var job =
            $"{{ registered-in: {place}, on: 2026-11-20, certifier: {{ appointed-in: [au-nt] }}, vehicle: {{ category: MC, "
            + $"four-wheel-drive: yes, stability-control: no }}, modification: {{ suspension-lift: 60 mm }} }}";
        (await Invocation.Assess(job, "--full")).Words.ShouldContain(says);
    }

    [Fact]
    public async Task Colour_is_never_the_only_carrier()
    {
        var file = Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml");
        var plain = await Invocation.Of(["assess", file]);
        var coloured = await Invocation.Of(["assess", file], colour: true);
        plain.Out.ShouldNotContain("\u001b");
        coloured.Out.ShouldContain("\u001b[");
        System
            .Text.RegularExpressions.Regex.Replace(coloured.Out, "\u001b\\[[0-9;]*m", "")
            .Split('\n')
            .Select(line => line.TrimEnd())
            .ShouldBe(plain.Out.Split('\n'));
    }

    [Fact]
    public async Task A_what_if_changes_one_fact_and_nothing_else()
    {
        using var before = await Json("touring-wagon.yaml");
        using var after = await Json("touring-wagon.yaml", "--set", "modification.suspension-lift=60 mm");
        before.RootElement.GetProperty("verdict").GetString().ShouldBe("no-certificate");
        after.RootElement.GetProperty("verdict").GetString().ShouldBe("certificate");
    }

    [Fact]
    public async Task The_state_named_decides_and_nothing_else_about_the_job_changes()
    {
        using var here = await Json("touring-wagon.yaml");
        using var there = await Json("touring-wagon.yaml", "--in", "au-nsw");
        there.RootElement.GetProperty("jurisdiction").GetString().ShouldBe("au-nsw");
        there.RootElement.GetProperty("on").GetString().ShouldBe(here.RootElement.GetProperty("on").GetString());
    }

    [Fact]
    public async Task Judging_by_the_national_code_says_that_nobody_registers_there()
    {
        var answer = await Assess("touring-wagon.yaml", "--in", "au");
        answer.Words.ShouldContain("registered by the states and territories");
    }

    [Fact]
    public async Task The_basis_of_the_diameters_is_named_when_it_flips_the_answer()
    {
        // 265/70R16 to 285/65R18: 49 mm by the handbook's rule, 50.3 mm unrounded (derived from UN Regulation 30's rule).
        (await Assess("basis-flips.yaml")).Words.ShouldContain("The basis of the tyre diameters decides");
        (await Assess("basis-flips.yaml", "--full")).Out.ShouldContain("49 mm");
    }

    [Fact]
    public async Task Across_shows_every_state_and_territory()
    {
        var answer = await Invocation.Of(["across", Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml"), "--format", "json"]);
        using var json = JsonDocument.Parse(answer.Out);
        json.RootElement.GetProperty("registered-in").GetString().ShouldBe("au-qld");
        json.RootElement.GetProperty("answers")
            .EnumerateArray()
            .Select(each => each.GetProperty("jurisdiction").GetString())
            .ShouldBe(["au-act", "au-nsw", "au-nt", "au-qld", "au-sa", "au-tas", "au-vic", "au-wa"]);
    }

    [Fact]
    public async Task Several_jobs_are_a_line_each_and_the_worst_decides_the_exit_code()
    {
        using var temporary = new TemporaryFolder();
        var folder = temporary.Path;
        File.Copy(Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml"), Path.Combine(folder, "touring-wagon.yaml"));
        File.Copy(Path.Combine(Invocation.Root, "examples", "too-high-prohibited.yaml"), Path.Combine(folder, "too-high-prohibited.yml"));
        var both = await Invocation.Of(["assess", folder]);
        both.Code.ShouldBe(1); // prohibited is worse than allowed
        both.Words.ShouldContain("2 jobs: 1 not allowed, 1 allowed.");
        both.Out.Split('\n').ShouldContain(line => line.StartsWith("touring-wagon.yaml ", StringComparison.Ordinal));

        await File.WriteAllTextAsync(Path.Combine(folder, "broken.yaml"), "job: [", TestContext.Current.CancellationToken);
        var three = await Invocation.Of(["assess", folder]);
        three.Code.ShouldBe(2); // what could not be read is no answer, and the others are still answered
        three.Words.ShouldContain("3 jobs: 1 not read, 1 not allowed, 1 allowed.");
    }

    [Fact]
    public async Task An_answer_written_to_a_file_is_the_answer_printed()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "answer.json");
        var printed = await Assess("touring-wagon.yaml", "--format", "json");
        (await Assess("touring-wagon.yaml", "--format", "json", "--output", file)).Out.ShouldBeEmpty();
        (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ShouldBe(printed.Out);
    }

    private static Task<Invocation> Assess(string example, params string[] options) =>
        Invocation.Of(["assess", Path.Combine(Invocation.Root, "examples", example), .. options]);

    private static async Task<JsonDocument> Json(string example, params string[] options) =>
        JsonDocument.Parse((await Assess(example, ["--format", "json", .. options])).Out);
}
