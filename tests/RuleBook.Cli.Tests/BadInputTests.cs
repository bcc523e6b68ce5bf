using RuleBook.Authoring.Tests;

namespace RuleBook.Cli.Tests;

/// <summary>Bad input gets a position, what is wrong and what would be right, exit code 2, and nothing on standard output.</summary>
public sealed class BadInputTests
{
    private const string Sound = """
        registered-in: au-qld
        on: 2026-11-20
        vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes }
        modification: { suspension-lift: 45 mm }
        """;

    [Theory]
    [InlineData("suspension-lift: 45 mm", "suspension-lft: 45 mm", ":4:17: error unknown-key:", "did you mean 'suspension-lift'?")]
    [InlineData("45 mm", "45 kg", ":4:34: error wrong-unit:", "use one of mm, cm, in, m")]
    [InlineData("45 mm", "45", ":4:34: error not-a-quantity:", "the unit is missing")]
    [InlineData("45 mm", "1,045 mm", ":4:", "error")]
    [InlineData("2026-11-20", "2026-02-30", ":2:5: error not-a-date:", "not a day of the calendar")]
    [InlineData("au-qld", "au-qdl", ":1:16: error unknown-jurisdiction:", "did you mean 'au-qld'?")]
    [InlineData("suspension-lift: 45 mm", "tyres: 265/70R7Q", ":4:24: error not-a-tyre-size:", "")]
    [InlineData("category: MC", "category: MX", ":3:22: error not-a-word:", "'MX' is not one of")]
    [InlineData("suspension-lift: 45 mm", "body-lift: -5 mm", ":4:28: error negative:", "zero or more")]
    [InlineData("on: 2026-11-20", "on: 2026-11-20\ndates: { work: 2026-11-01 }", ":3:8: error contradiction:", "keep one of the two")]
    [InlineData("on: 2026-11-20", "dates: { work: 2026-11-20, certification: 2026-11-01 }", ":2:8: error contradiction:", "on or after")]
    [InlineData("on: 2026-11-20", "on: 2026-11-20\non: 2026-11-21", ":3:1: error", "")]
    [InlineData("vehicle: {", "vehicle: { tyres: [265/65R17], ", "", "")]
    public async Task A_job_that_cannot_be_read_says_where_and_what_would_be_right(string was, string becomes, string place, string tip)
    {
        var answer = await Invocation.Assess(Sound.Replace(was, becomes, StringComparison.Ordinal));
        if (place.Length == 0)
        {
            answer.Code.ShouldBe(0); // the control: the same job with a harmless change is read
            return;
        }

        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldContain(place);
        answer.Error.ShouldContain(tip);
        answer.Error.ShouldNotContain("   at ");
    }

    [Fact]
    public async Task A_growth_that_the_sizes_contradict_is_an_error()
    {
        var answer = await Invocation.Assess(
            """
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, tyres: [265/65R17] }
            modification: { tyres: 265/70R17, tyre-diameter-growth: 50 mm }
            """
        );
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain(":4:57: error contradiction:");
        answer.Error.ShouldContain("804 - 776 = 28 mm");
    }

    [Fact]
    public async Task An_alias_bomb_is_refused_at_the_first_anchor()
    {
        var answer = await Invocation.Assess("a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]\n");
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain(":1:4: error");
    }

    [Fact]
    public async Task Ten_thousand_levels_of_nesting_are_refused()
    {
        var answer = await Invocation.Assess($"vehicle: {new string('[', 10_000)}{new string(']', 10_000)}\n");
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("error");
        answer.Error.Length.ShouldBeLessThan(1000);
    }

    [Fact]
    public async Task A_file_of_a_hundred_megabytes_is_refused_unread()
    {
        var file = Path.Combine(Path.GetTempPath(), $"large-{Guid.NewGuid():N}.yaml");
        try
        {
            await using (var stream = File.Create(file))
                stream.SetLength(100 * 1024 * 1024);
            var answer = await Invocation.Of(["assess", file]);
            answer.Code.ShouldBe(2);
            answer.Out.ShouldBeEmpty();
            answer.Error.ShouldContain("error");
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("assess", "no-such-file.yaml")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--in", "au-xyz")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--on", "yesterday")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--set", "vehicle.category")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--set", "vehicle.colour=red")]
    [InlineData("assess", "examples/touring-wagon.yaml", "--format", "xml")]
    [InlineData("assess")]
    [InlineData("limits", "au-xyz")]
    [InlineData("limits")]
    [InlineData("timeline", "ride-hight")]
    [InlineData("inspect", "examples")]
    [InlineData("frobnicate")]
    public async Task A_command_that_cannot_be_carried_out_exits_with_2_and_says_why(params string[] args)
    {
        string[] rooted =
        [
            .. args.Select(arg => arg.StartsWith("examples", StringComparison.Ordinal) ? Path.Combine(Invocation.Root, arg) : arg),
        ];
        var answer = await Invocation.Of(rooted);
        answer.Code.ShouldBe(2);
        (answer.Error + answer.Out).ShouldNotBeEmpty();
        (answer.Error + answer.Out).ShouldNotContain("   at ");
    }

    [Fact]
    public async Task A_refused_job_leaves_no_file_behind()
    {
        using var folder = new TemporaryFolder();
        var answer = await Invocation.Assess("registered-in: au-xyz\n", "--output", Path.Combine(folder.Path, "answer.txt"));
        answer.Code.ShouldBe(2);
        Directory.GetFiles(folder.Path).ShouldBeEmpty();
    }
}
