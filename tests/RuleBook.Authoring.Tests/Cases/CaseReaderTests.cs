using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Authoring.Cases;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Cases;

/// <summary>What is refused in a case file, and where. The places are counted by hand in the text (derived).</summary>
public sealed class CaseReaderTests
{
    private const string Sound = """
        vehicles:
          wagon: { category: MC, four-wheel-drive: yes }
        cases:
          - id: a-case
            says: A sentence.
            vehicle: wagon
            changes: { modification: { suspension-lift: 50 mm } }
            on: 2019-01-01
            expect: { verdict: no-certificate }
            because: { common-practice: So it is done. }
        """;

    public static TheoryData<string, string, string> Refused =>
        new()
        {
            { "says: A sentence.", "say: A sentence.", "f:5:5 unknown-key" },
            { "vehicle: wagon", "vehicle: waggon", "f:6:14 unknown-vehicle" },
            { "suspension-lift", "suspension-lft", "f:7:32 unknown-key" },
            { "changes: { ", "changes: { on: 2019-01-02, ", "f:7:16 unknown-key" },
            { "2019-01-01", "2019-02-29", "f:8:9 not-a-date" },
            { "verdict: no-certificate", "verdict: none", "f:9:24 not-a-word" },
            { "verdict: no-certificate", "between: [prohibited, certificate]", "f:9:13 wrong-shape" },
            { "no-certificate }", "no-certificate, decides: total-height }", "f:9:49 not-a-word" },
            { "no-certificate }", "no-certificate, decide: total-lift }", "f:9:40 unknown-key" },
            { "common-practice: So it is done.", "source: never-written, clause: 1", "f:10:14 unknown-source" },
            { "common-practice: So it is done.", "memory: once, common-practice: twice", "f:10:14 one-content" },
            { "on: 2019-01-01", "on: []", "f:8:9 wrong-shape" },
            { "on: 2019-01-01", "on: [2019-01-01, 2019-02-29]", "f:8:22 not-a-date" },
            { "on: 2019-01-01", "each: { on: [2019-01-01] }", "f:8:13 unknown-key" },
            { "on: 2019-01-01", "each: { dates.work: [2019-01-01] }", "f:8:13 unknown-key" },
            { "on: 2019-01-01", "each: { registered-in: [au-nsw] }", "f:8:13 unknown-key" },
            { "on: 2019-01-01", "each: { vehicle.category: [MC, MX] }", "f:8:36 not-a-word" },
            { "on: 2019-01-01", "each: { vehicle.colour: [red] }", "f:8:30 unknown-key" },
            { "on: 2019-01-01", "each: { vehicle.category: [] }", "f:8:31 wrong-shape" },
            { "on: 2019-01-01", "each: { vehicle.category: [[MC]] }", "f:8:32 wrong-shape" },
            { "on: 2019-01-01", "each: { modification.suspension-lift: [20 mm] }", "f:7:49 contradiction" },
            { "on: 2019-01-01", "then: { more: { changes: { dates: {} }, expect: { verdict: certificate } } }", "f:8:32 unknown-key" },
            { "on: 2019-01-01", "then: { more: { expects: { verdict: certificate } } }", "f:8:21 unknown-key" },
            { "on: 2019-01-01", "then: { more: { on: 2019-01-02 } }", "f:8:19 missing-key" },
            { "on: 2019-01-01", "then: { more: { then: {}, expect: { verdict: certificate } } }", "f:8:21 unknown-key" },
            { "on: 2019-01-01", "then: { more: none }", "f:8:19 wrong-shape" },
        };

    [Fact]
    public void A_sound_case_is_read() => Read(Sound).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_wrong_in_a_case_is_an_error_at_its_place(string written, string wrong, string problem) =>
        Read(Sound.Replace(written, wrong, StringComparison.Ordinal)).ShouldContain(problem);

    [Fact]
    public void A_list_of_days_is_a_case_for_each_day() =>
        Ids(Sound.Replace("2019-01-01", "[2018-10-26, 2019-01-01]", StringComparison.Ordinal))
            .ShouldBe(["a-case/2018-10-26", "a-case/2019-01-01"]);

    [Fact]
    public void Lists_of_values_are_a_case_for_every_combination_in_the_order_written() =>
        Ids(
                Sound.Replace(
                    "on: 2019",
                    "each: { vehicle.stability-control: [yes, no], vehicle.category: [MC, NA] }\n    on: 2019",
                    StringComparison.Ordinal
                )
            )
            .ShouldBe(["a-case/yes/MC", "a-case/yes/NA", "a-case/no/MC", "a-case/no/NA"]);

    [Fact]
    public void What_differs_is_a_case_of_its_own_and_the_rest_is_taken_over()
    {
        var cases = Cases(
            """
            vehicles:
              wagon: { category: MC, four-wheel-drive: yes }
            cases:
              - id: a-case
                says: A sentence.
                vehicle: wagon
                changes: { modification: { suspension-lift: 50 mm } }
                dates: { work: 2019-01-01, certification: 2019-02-01 }
                expect: { verdict: no-certificate, decides: suspension-lift }
                because: { common-practice: So it is done. }
                then:
                  with-tyres: { changes: { modification: { tyre-diameter-growth: 10 mm } }, expect: { verdict: certificate } }
                  on-days: { says: Another., on: [2019-01-01, 2019-01-02], because: { memory: once }, expect: { verdict: prohibited } }
            """
        );

        cases.Select(one => one.Id).ShouldBe(["a-case", "a-case/with-tyres", "a-case/on-days/2019-01-01", "a-case/on-days/2019-01-02"]);
        cases.Select(one => one.Mark.Line).ShouldBe([4, 12, 13, 13]);
        cases.Select(one => one.Says).ShouldBe(["A sentence.", "A sentence.", "Another.", "Another."]);
        cases.Select(one => one.Because.Basis).ShouldBe([ReadAs.CommonPractice, ReadAs.CommonPractice, ReadAs.Memory, ReadAs.Memory]);
        cases.Select(one => one.Expect.Decides).ShouldBe(["suspension-lift", null, null, null]);
        cases.Select(one => one.Job.Dates.Latest).ShouldBe([new(2019, 2, 1), new(2019, 2, 1), new(2019, 1, 1), new(2019, 1, 2)]);
        cases
            .Select(one => one.Written.Find("modification"))
            .OfType<Mapping>()
            .Select(changes => changes.Entries.Length)
            .ShouldBe([1, 2, 1, 1]);
    }

    [Fact]
    public void A_case_stands_for_500_at_most()
    {
        string[] days =
        [
            .. Enumerable
                .Range(0, 251)
                .Select(day => new DateOnly(2019, 1, 1).AddDays(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        ];
        string Spread(int count) =>
            Sound.Replace(
                "on: 2019-01-01",
                $"each: {{ vehicle.stability-control: [yes, no] }}\n    on: [{string.Join(", ", days.Take(count))}]",
                StringComparison.Ordinal
            );

        Ids(Spread(250)).Length.ShouldBe(500);
        Read(Spread(251)).ShouldBe(["f:4:5 too-many-cases"]);
    }

    [Fact]
    public void A_mistake_in_a_case_is_reported_once_though_others_take_it_over() =>
        Loaded(
                Sound
                    .Replace(
                        "on: 2019-01-01",
                        "then: { more: { on: 2019-01-02, expect: { verdict: certificate } } }\n    on: 2019-01-01",
                        StringComparison.Ordinal
                    )
                    .Replace("suspension-lift", "suspension-lft", StringComparison.Ordinal)
            )
            .ShouldBe(["tests/cases/au-qld/ride-height.yaml:7:32 unknown-key"]);

    [Fact]
    public void An_id_that_two_expansions_share_is_an_error() =>
        Loaded(Sound.Replace("on: 2019-01-01", "on: [2019-01-01, 2019-01-01]", StringComparison.Ordinal))
            .ShouldBe(["tests/cases/au-qld/ride-height.yaml:4:5 duplicate-id"]);

    [Fact]
    public void A_folder_without_a_case_is_an_error()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            Should.Throw<InputException>(() => CaseFolder.Load(folder.FullName, TestBook.Book)).Problems.Single().Code.ShouldBe("no-case");
        }
        finally
        {
            folder.Delete();
        }
    }

    private static string[] Read(string text)
    {
        var problems = new List<Problem>();
        new CaseReader(TestBook.Book, "au-qld", "ride-height", problems).Read(YamlText.Read(text, "f"));
        return Shown(problems);
    }

    private static ImmutableArray<Case> Cases(string text) =>
        new CaseReader(TestBook.Book, "au-qld", "ride-height", []).Read(YamlText.Read(text, "f"));

    private static string[] Ids(string text) => [.. Cases(text).Select(one => one.Id)];

    private static string[] Loaded(string text)
    {
        using var folder = new TemporaryFolder();
        folder.Write("au-qld/ride-height.yaml", text);
        return Shown(Should.Throw<InputException>(() => CaseFolder.Load(folder.Path, TestBook.Book)).Problems);
    }

    private static string[] Shown(IEnumerable<Problem> problems) => [.. problems.Select(problem => $"{problem.Mark} {problem.Code}")];
}
