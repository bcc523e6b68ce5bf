using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Yaml;
using RuleBook.Reading;

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

    public static TheoryData<string, string, string> Refused => new()
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
    };

    [Fact]
    public void A_sound_case_is_read() => Read(Sound).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_wrong_in_a_case_is_an_error_at_its_place(string written, string wrong, string problem) =>
        Read(Sound.Replace(written, wrong, StringComparison.Ordinal)).ShouldContain(problem);

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
        return [.. problems.Select(problem => $"{problem.Mark} {problem.Code}")];
    }
}
