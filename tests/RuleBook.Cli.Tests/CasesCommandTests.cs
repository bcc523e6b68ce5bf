using System.Text.Json;
using System.Xml.Linq;

namespace RuleBook.Cli.Tests;

/// <summary>
/// What <c>cases</c> shows a maintainer. The case rests on the minister's release of 20 September 2018 (Queensland): 50 mm and 25 mm are
/// free.
/// </summary>
public sealed class CasesCommandTests : IDisposable
{
    private const string Sound = """
        vehicles:
          wagon: { category: MC, four-wheel-drive: yes }
        cases:
          - id: free
            says: 75 mm are free of a certificate.
            vehicle: wagon
            changes: { modification: { suspension-lift: 50 mm, tyre-diameter-growth: 50 mm } }
            on: [2018-10-26, 2026-11-20]
            expect: { verdict: no-certificate }
            because: { source: ministers-release-2018-09-20 }
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-cases-").FullName;

    [Fact]
    public async Task The_text_counts_the_cases_of_each_file()
    {
        var answer = await Cases(Sound);
        answer.Code.ShouldBe(0, answer.Error);
        answer.Words.ShouldContain("au-qld/ride-height: 2 of 2 as expected");
        answer.Words.ShouldContain("2 cases, all as expected");
    }

    /// <summary>A book with a rule for some vehicles only: where none answers is a fault of the book.</summary>
    [Fact]
    public async Task A_walk_that_finds_where_a_book_has_no_answer_exits_with_1()
    {
        foreach (var part in (string[])["sound", "vehicle-not-covered"])
            GitBook.CopyTo(Path.Combine(Invocation.Root, "tests", "bad-books", part), folder);
        var walk = await Invocation.Of(["cases", "--walk", "--book", folder]);
        walk.Code.ShouldBe(1, walk.Error);
        walk.Words.ShouldEndWith("1 faults");
    }

    /// <summary>
    /// That book has two rules on ride height for a nation and one for the state within it; on certification it has a scheme and no rule.
    /// </summary>
    [Theory]
    [InlineData("--in", "xa", 3)]
    [InlineData("--in", "xa-n", 1)]
    [InlineData("--topic", "ride-height", 3)]
    [InlineData("--topic", "certification", 0)]
    public async Task A_walk_goes_where_it_is_sent(string option, string word, int rules)
    {
        var book = Path.Combine(Invocation.Root, "tests", "bad-books", "sound");
        (await Invocation.Of(["cases", "--walk", option, word, "--book", book])).Words.ShouldContain($"{rules} rules on ");
    }

    [Theory]
    [InlineData("--require 100%", "--require goes with --pin")]
    [InlineData("--in au", "--in and --topic go with --pin or --walk")]
    [InlineData("--topic towing", "--in and --topic go with --pin or --walk")]
    [InlineData("--pin --walk", "--pin and --walk are two runs")]
    [InlineData("--walk --format json", "--walk reads no cases and writes text")]
    [InlineData("--pin --format junit", "--pin writes text or json")]
    public async Task An_option_that_would_do_nothing_is_refused(string options, string why)
    {
        var answer = await Invocation.Of(["cases", .. options.Split(' ')]);
        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldContain(why);
    }

    /// <summary>From 50 mm as the source has it, 0.1 mm more is an edge that the figure gives and no source states.</summary>
    [Fact]
    public async Task An_edge_that_shares_the_reason_of_its_case_is_counted_apart_from_what_a_source_says()
    {
        var edge =
            Sound
            + """

                    then:
                      a-tenth-more: { changes: { modification: { suspension-lift: 50.1 mm } }, expect: { verdict: undecided } }
                      told-elsewhere: { expect: { verdict: no-certificate }, because: { source: lift-standards-2018 } }
                      left-open:
                        changes: { modification: { suspension-lift: 51 mm } }
                        expect: { verdict: undecided }
                        because: { source: lift-standards-2018 }
                """;
        var words = (await Cases(edge)).Words;
        words.ShouldContain(
            "6 with a reason of their own, 2 edges derived from the figure beside them; in 4 the sources leave the pathway open."
        );
        using var json = JsonDocument.Parse((await Cases(edge, "--format", "json")).Out);
        (json.RootElement.GetProperty("edges").GetInt32(), json.RootElement.GetProperty("open").GetInt32()).ShouldBe((2, 4));
        json.RootElement.GetProperty("cases")
            .EnumerateArray()
            .Select(one => one.GetProperty("edge").GetBoolean())
            .ShouldBe([false, false, true, true, false, false, false, false]);
    }

    [Fact]
    public async Task A_case_that_comes_out_otherwise_is_shown_with_its_source_and_exits_with_1()
    {
        var answer = await Cases(Wrong());
        answer.Code.ShouldBe(1);
        answer.Words.ShouldContain("tests/cases/au-qld/ride-height.yaml:4:5: free/2018-10-26");
        answer.Words.ShouldContain("expected prohibited, got no-certificate");
        answer.Words.ShouldContain("au-qld/ministers-release-2018-09-20");
        answer.Words.ShouldContain("2 cases, 2 not as expected");
    }

    [Fact]
    public async Task The_JSON_counts_and_names_every_case()
    {
        using var json = JsonDocument.Parse((await Cases(Wrong(), "--format", "json")).Out);
        json.RootElement.GetProperty("run").GetInt32().ShouldBe(2);
        json.RootElement.GetProperty("failed").GetInt32().ShouldBe(2);
        json.RootElement.GetProperty("cases")
            .EnumerateArray()
            .Select(one => one.GetProperty("case").GetString())
            .ShouldBe(["free/2018-10-26", "free/2026-11-20"]);
        json.RootElement.GetProperty("cases").EnumerateArray().ShouldAllBe(one => !one.GetProperty("passed").GetBoolean());
        using var sound = JsonDocument.Parse((await Cases(Sound, "--format", "json")).Out);
        sound.RootElement.GetProperty("cases").EnumerateArray().ShouldAllBe(one => one.GetProperty("passed").GetBoolean());
    }

    [Fact]
    public async Task The_JUnit_report_has_a_suite_for_each_file_with_its_counts()
    {
        var answer = await Cases(Wrong(), "--format", "junit");
        answer.Code.ShouldBe(1);
        var suite = XDocument.Parse(answer.Out).Root!.Elements("testsuite").Single();
        suite.Attribute("name")!.Value.ShouldBe("au-qld/ride-height");
        suite.Attribute("tests")!.Value.ShouldBe("2");
        suite.Attribute("failures")!.Value.ShouldBe("2");
        suite
            .Elements("testcase")
            .Select(one => one.Element("failure")!.Attribute("message")!.Value)
            .Distinct()
            .Single()
            .ShouldStartWith("expected prohibited");
        var sound = XDocument.Parse((await Cases(Sound, "--format", "junit")).Out).Root!.Elements("testsuite").Single();
        sound.Attribute("failures")!.Value.ShouldBe("0");
    }

    [Fact]
    public async Task An_unknown_key_exits_with_2_and_its_place()
    {
        var answer = await Cases(Sound.Replace("says:", "say:", StringComparison.Ordinal));
        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldContain(
            "tests/cases/au-qld/ride-height.yaml:5:5: error unknown-key: 'say' is not a key here (did you mean 'says'?)"
        );
    }

    [Fact]
    public async Task A_folder_without_a_case_exits_with_2()
    {
        var answer = await Invocation.Of(["cases", folder]);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("error no-case:");
    }

    [Fact]
    public async Task A_change_that_no_case_notices_is_told_with_its_place_and_a_job_and_less_than_the_share_asked_for_exits_with_1()
    {
        var answer = await Cases(Sound, "--pin", "--in", "au-nt", "--topic", "ride-height", "--require", "100%");
        answer.Code.ShouldBe(1, answer.Error);
        answer.Words.ShouldContain("jurisdictions/au-nt/ride-height.yaml:");
        answer.Words.ShouldContain("would go unnoticed");
        answer.Words.ShouldContain("registered-in: au-nt");

        using var json = JsonDocument.Parse(
            (await Cases(Sound, "--pin", "--in", "au-nt", "--topic", "ride-height", "--format", "json")).Out
        );
        json.RootElement.GetProperty("unnoticed").GetArrayLength().ShouldBeGreaterThan(0);
        json.RootElement.GetProperty("pinned").GetInt32().ShouldBe(0);
        foreach (var one in json.RootElement.GetProperty("unnoticed").EnumerateArray())
            answer.Words.ShouldContain($"{one.GetProperty("before").GetString()} -> {one.GetProperty("after").GetString()}");
    }

    [Theory]
    [InlineData("--in", "au-nz", "--in:1:1: error not-a-word: 'au-nz' is not in the book")]
    [InlineData("--topic", "towin", "--topic:1:1: error not-a-word: 'towin' is not in the book (did you mean 'towing'?)")]
    [InlineData("--require", "much", "--require:1:1: error not-a-share: 'much' is not a share")]
    public async Task A_choice_that_the_book_does_not_have_exits_with_2(string option, string word, string problem)
    {
        var answer = await Cases(Sound, "--pin", option, word);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain(problem);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string Wrong() => Sound.Replace("verdict: no-certificate", "verdict: prohibited", StringComparison.Ordinal);

    private async Task<Invocation> Cases(string text, params string[] options)
    {
        var place = Directory.CreateDirectory(Path.Combine(folder, "au-qld")).FullName;
        await File.WriteAllTextAsync(Path.Combine(place, "ride-height.yaml"), text);
        return await Invocation.Of(["cases", folder, .. options], width: 200);
    }
}
