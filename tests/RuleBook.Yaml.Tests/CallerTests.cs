using System.Text.Json.Nodes;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Yaml.Tests;

/// <summary>
/// This project sees nothing internal of the domain, as a caller does not: what it uses is what a caller can. The rule is invented, 50 mm
/// without a certificate and 75 mm with one; answers are by hand.
/// </summary>
[Trait("Basis", "derived")]
public sealed class CallerTests
{
    private static readonly Book Nation = Read(
        """
        jurisdiction: xa
        name: The nation
        registers: yes
        ask: { authority: The office }
        """,
        """
        jurisdiction: xa
        checked: 2026-11
        recheck-after: 2027-11
        sources: [ { source: code, title: The code, publisher: The office, read-as: primary } ]
        """,
        """
        jurisdiction: xa
        topic: ride-height
        rules:
          - rule: raise
            title: Raising
            from: 2012-01-01
            sources: [ { cite: code, clause: "1" } ]
            tiers:
              - { pathway: no-certificate, within: { suspension-lift: 50 mm } }
              - { pathway: certificate, within: { suspension-lift: 75 mm } }
            beyond: prohibited
        """
    );

    [Fact]
    public void A_job_is_read_assessed_and_told()
    {
        var answer = Assessor.Assess(Nation, JobReader.Read(YamlText.Read(Lifted(60), "job"), Nation));

        (answer.Headline, answer.Verdict, answer.Blockers.Length).ShouldBe((Headline.Certificate, Pathway.Certificate, 0));
        var passed = answer.Findings.ShouldHaveSingleItem().Exceeded.ShouldHaveSingleItem();
        (passed.Measure.Name, passed.Value.Exact, passed.Bound!.Value, passed.Tier.Pathway).ShouldBe(
            ("suspension-lift", 60, 50, Pathway.NoCertificate)
        );
        answer.WeakestEvidence!.Standing.Basis.ShouldBe(ReadAs.Primary);
        JsonNode.Parse(AssessmentJson.Write(answer))!["verdict"]!.GetValue<string>().ShouldBe("certificate");
        ShortAnswer.Of(answer).ShouldContain("with a certificate");
    }

    [Theory]
    [InlineData(50, Pathway.NoCertificate)]
    [InlineData(75, Pathway.Certificate)]
    [InlineData(76, Pathway.Prohibited)]
    public void Many_jobs_are_judged_by_a_table(int lift, Pathway gives)
    {
        var table = TableBook.Of(Nation).Table("xa", new DateOnly(2026, 11, 20));
        var row = table.NewRow();
        row.Set(table.Input("suspension-lift"), lift);
        var batch = new Batch(table, 1);
        batch.Set(0, row);
        var outcomes = new byte[1];
        table.Judge(batch, outcomes);

        new[] { table.Judge(row), Outcome.Unpack(outcomes[0]) }.ShouldAllBe(outcome => outcome == new Outcome(gives, gives));
    }

    [Fact]
    public void What_is_wrong_with_a_job_is_told_with_its_place() =>
        Should
            .Throw<InputException>(() => JobReader.Read(YamlText.Read("registered-in: nowhere\non: 2026-11-20\n", "job"), Nation))
            .Problems[0]
            .Mark.ShouldBe(new Mark("job", 1, 16));

    private static string Lifted(int lift) =>
        $"{{ registered-in: xa, on: 2026-11-20, vehicle: {{ category: MC }}, modification: {{ suspension-lift: {lift} mm }} }}";

    private static Book Read(string jurisdiction, string sources, string rules)
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "RuleBook.sln")))
            root = Path.GetDirectoryName(root)!;
        var words = Directory
            .GetFiles(Path.Combine(root, "schema", "vocabulary"))
            .Select(file => new BookFile($"schema/vocabulary/{Path.GetFileName(file)}", YamlText.ReadFile(file)));
        (string Name, string Text)[] law = [("jurisdiction", jurisdiction), ("sources", sources), ("ride-height", rules)];
        var problems = new List<Problem>();
        var book = BookReader.Read(
            [.. words, .. law.Select(file => new BookFile($"jurisdictions/xa/{file.Name}.yaml", YamlText.Read(file.Text, file.Name)))],
            "invented",
            problems
        );
        problems.ShouldBeEmpty();
        return book;
    }
}
