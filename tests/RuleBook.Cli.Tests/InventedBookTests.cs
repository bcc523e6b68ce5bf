using System.Text.Json;

namespace RuleBook.Cli.Tests;

/// <summary>
/// What the command tells of a book that is small enough to be told by hand, <c>tests/invented-book</c>: a nation and a state of it, with
/// one rule of each kind. No figure is that of any law; the words of the vocabulary are those of this repository.
/// </summary>
public sealed class InventedBookTests : IDisposable
{
    private readonly string folder = Copy();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_limits_of_a_nation_are_told_with_how_each_is_known() =>
        (await Of("limits", "xa", "--on", "2026-11-20")).ShouldBe(
            """
            The nation (xa): limits in force on 20 November 2026
            Vehicles are registered in the north.
            A rule binds these only where it names them: vehicle category LA, LB, LC, LD, LE, TA, TB, TC, TD.

            Raising
              xa/ride-height/raise
              * in force from 2012-01-01
                - allowed without a certificate, four-wheel drive: yes and GVM at most 3500 kg
                  - suspension lift at most 55 mm (50 mm with a tolerance of 5 mm) (second hand)
                  - body lift: no limit (second hand)
                  - increase in wheel track: not established (second hand)
                - allowed with a certificate:
                  - suspension lift from 5 mm (10 mm with a tolerance of 5 mm) up to 80 mm (75 mm with a tolerance of 5 mm)
                  - to show: lane-change test passed
                - beyond: not allowed (second hand)
                Measured between wheel centre and guard edge. Mass state: unladen. Suspension lift with a tolerance of 5 mm. On level ground.
                The code, 1 (The nation; the authority's own text; checked 2026-11)
                A letter (A reader; known at second hand; checked 2026-10-05)

            Lowering
              xa/ride-height/lower
              * nothing in the book for this day
                ? not established; ask The nation's office

            Longer shackles
              xa/ride-height/extend
              * in force by 2019-05-06, start not established
                - in every case: not established
                The code, 2 (The nation; the authority's own text; checked 2026-11)

            Not legal advice
            The nation's office and the licensed certifier decide.

            """
        );

    [Fact]
    public async Task The_limits_of_a_state_are_told_with_what_it_adopts() =>
        (await Of("limits", "xa-n", "--on", "2026-11-20")).ShouldBe(
            """
            The north (xa-n): limits in force on 20 November 2026
            A rule binds these only where it names them: vehicle category LA, LB, LC, LD, LE, TA, TB, TC, TD.

            Raising in the north
              xa-n/ride-height/raise
              * in force from 2016-03-01, a breach brings a warning only
                adopts xa/ride-height/raise as on 6 May 2013
                - allowed without a certificate, four-wheel drive: yes and GVM at most 3500 kg
                  - suspension lift at most 55 mm (50 mm with a tolerance of 5 mm) (second hand)
                  - body lift: no limit (second hand)
                  - increase in wheel track: not established (second hand)
                - allowed with a certificate:
                  - suspension lift from 5 mm (10 mm with a tolerance of 5 mm) up to 70 mm (65 mm with a tolerance of 5 mm)
                  - to show: lane-change test passed
                - beyond: not allowed (second hand)
                Measured between wheel centre and guard edge. Mass state: unladen. Suspension lift with a tolerance of 5 mm. On level ground.
                The act, 4 (The north; the authority's own text; checked 2026-11)
                The code, 1 (The nation; the authority's own text; checked 2026-11)
                A letter (A reader; known at second hand; checked 2026-10-05)

            Swapping springs
              xa-n/ride-height/swap
              * in force by 2014-02-03, start not established
                ? not established; ask The northern office; open The annex
                The act, 6 (The north; the authority's own text; checked 2026-11)

            Not legal advice
            The northern office and the licensed certifier decide. https://north.example/

            """
        );

    [Fact]
    public async Task How_the_rules_of_a_topic_came_about_is_told_a_line_a_change() =>
        (await Of("timeline", "ride-height", "--on", "2026-11-20")).ShouldBe(
            """
            ride height: one line a change, oldest first
            2012-01-01     xa/ride-height/raise: no-certificate (four-wheel-drive yes) suspension-lift at most 50 mm; certificate suspension-lift at most 75 mm
            by 2014-02-03  xa-n/ride-height/swap: in force, what it says is not established
            [2015-01-01..2015-12-31]  xa-n/ride-height/raise: not regulated
            2016-03-01     xa-n/ride-height/raise: adopts xa/ride-height/raise as it stood on 6 May 2013, with 1 exception, a breach brings a warning only
            by 2019-05-06  xa/ride-height/extend: in every case not established
            by 2019-05-06  xa/ride-height/lower: in every case not allowed
            2020-02-01     xa/ride-height/lower: ended
            2027-03-01     xa-n/ride-height/raise: announced, decides nothing: no-certificate suspension-lift at most 30 mm
            no day         xa/ride-height/extend: proposed, decides nothing: certificate suspension-lift at most 60 mm

            Positions on xa/ride-height/raise as on 20 November 2026
              - xa-n: in force with exceptions since 2016-03-01

            """
        );

    [Fact]
    public async Task The_same_changes_as_data_have_the_line_of_the_file_on_which_each_stands()
    {
        const string nation = "jurisdictions/xa/ride-height.yaml";
        const string state = "jurisdictions/xa-n/ride-height.yaml";
        using var told = JsonDocument.Parse(await Of("timeline", "ride-height", "--on", "2026-11-20", "--format", "json"));
        told.RootElement.GetProperty("topic").GetString().ShouldBe("ride-height");
        told.RootElement.GetProperty("book").GetString()!.ShouldStartWith("sha256:");
        Values(told.RootElement.GetProperty("changes"), "rule", "since", "seen-by", "kind", "adopts", "exceptions", "at")
            .ShouldBe([
                $"xa/ride-height/raise|2012-01-01||stated||0|{nation}:7:9",
                $"xa-n/ride-height/swap||2014-02-03|not-established||0|{state}:22:9",
                $"xa-n/ride-height/raise|[2015-01-01..2015-12-31]||not-regulated||0|{state}:7:9",
                $"xa-n/ride-height/raise|2016-03-01||adopted|xa/ride-height/raise|1|{state}:10:9",
                $"xa/ride-height/extend||2019-05-06|stated||0|{nation}:39:9",
                $"xa/ride-height/lower||2019-05-06|stated||0|{nation}:30:9",
                $"xa/ride-height/lower|2020-02-01||ended||0|{nation}:30:9",
                $"xa-n/ride-height/raise|2027-03-01||announced||0|{state}:15:9",
                $"xa/ride-height/extend|||proposed||0|{nation}:44:9",
            ]);
        Values(told.RootElement.GetProperty("positions"), "rule", "jurisdiction", "position")
            .ShouldBe(["xa/ride-height/raise|xa-n|in force with exceptions since 2016-03-01"]);
        var lines = (await Of("timeline", "ride-height", "--on", "2026-11-20")).Split('\n');
        foreach (var what in Values(told.RootElement.GetProperty("changes"), "what"))
            lines.ShouldContain(line => line.EndsWith($": {what}", StringComparison.Ordinal));

        static IEnumerable<string> Values(JsonElement list, params string[] keys) =>
            list.EnumerateArray().Select(each => string.Join('|', keys.Select(key => each.GetProperty(key).ToString())));
    }

    [Fact]
    public async Task What_the_book_holds_is_a_line_a_place_and_a_line_a_topic()
    {
        (await Of("limits", "--coverage")).ShouldBe(
            """
            | jurisdiction | rules | authority's text | second hand | common practice | memory | no source | not established |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            | The nation (`xa`) | 3 | 1 | 2 | 0 | 0 | 0 | 1 |
            | The north (`xa-n`) | 3 | 1 | 0 | 0 | 0 | 0 | 2 |

            """
        );
        (await Of("limits", "xa-n", "--coverage")).ShouldBe(
            """
            | topic, coverage | rules | authority's text | second hand | common practice | memory | no source | not established |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            | certification, partial | 1 | 0 | 0 | 0 | 0 | 0 | 1 |
            | mass ratings, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | ride height, complete | 2 | 1 | 0 | 0 | 0 | 0 | 1 |
            | rules of use, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | towing, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | tyres and wheels, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |

            """
        );
    }

    /// <summary>Warned of: both coverages say complete where something is not established, and nothing follows the end of a rule.</summary>
    [Fact]
    public async Task What_is_wrong_with_the_book_is_counted_in_the_last_line() =>
        (await Of("inspect")).ShouldEndWith("\n0 errors, 3 warnings in 14 files\n");

    /// <summary>The nation's rule measures so; the state's adopts it.</summary>
    [Fact]
    public async Task An_answer_in_full_says_how_the_rule_that_gives_it_measures()
    {
        var job = Path.Combine(folder, "job.yaml");
        await File.WriteAllTextAsync(
            job,
            """
            registered-in: xa-n
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, ratings: { gvm: 2900 kg } }
            modification: { suspension-lift: 40 mm }
            """,
            TestContext.Current.CancellationToken
        );
        (await Asked("assess", job, "--full")).ShouldContain(
            "\n  Measured between wheel centre and guard edge. Mass state: unladen. Suspension lift with a tolerance of 5 mm. "
                + "On level ground.\n"
        );
        Measured(await Asked("assess", job, "--format", "json"), "findings").ShouldBe("unladen|On level ground.|wheel-centre, guard-edge");
        Measured(await Asked("limits", "xa-n", "--format", "json"), "rules").ShouldBe("unladen|On level ground.|wheel-centre, guard-edge");

        static string Measured(string json, string rules)
        {
            using var told = JsonDocument.Parse(json);
            var each = told
                .RootElement.GetProperty(rules)
                .EnumerateArray()
                .Single(rule => rule.GetProperty("rule").GetString() == "xa-n/ride-height/raise")
                .GetProperty("measured");
            each.GetProperty("total").GetArrayLength().ShouldBe(0);
            var points = string.Join(", ", each.GetProperty("between").EnumerateArray().Select(point => point.GetString()));
            return $"{each.GetProperty("mass-state")}|{each.GetProperty("note")}|{points}";
        }
    }

    private async Task<string> Asked(params string[] args) => (await Invocation.Of([.. args, "--book", folder], width: 200)).Out;

    private async Task<string> Of(params string[] args)
    {
        var answer = await Invocation.Of([.. args, "--book", folder], width: 200);
        answer.Error.ShouldBeEmpty();
        return answer.Out;
    }

    /// <summary>The invented book with the words of this repository, in a folder of its own.</summary>
    internal static string Copy()
    {
        var folder = Directory.CreateTempSubdirectory("rulebook-invented-").FullName;
        GitBook.CopyTo(Path.Combine(Invocation.Root, "schema", "vocabulary"), Path.Combine(folder, "schema", "vocabulary"));
        GitBook.CopyTo(Path.Combine(Invocation.Root, "tests", "invented-book"), folder);
        return folder;
    }
}
