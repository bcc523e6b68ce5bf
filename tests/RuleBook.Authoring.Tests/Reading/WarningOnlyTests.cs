using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Resolved;
using RuleBook.InForce;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>
/// A rule that is in force, with warnings only for a time (figures are invented; the time as in South Carolina's Act 24 of 2023: in force
/// on a day, for 180 days after that warnings only).
/// </summary>
public sealed class WarningOnlyTests
{
    private const string Told = "Raising a vehicle: until 2024-05-10 a breach brings a warning only; from then on it counts in full.";

    private static readonly Book Warned = Raise("warning-only: yes");
    private static readonly Book InFull = Raise("note: Nothing.");

    [Theory]
    [InlineData("2023-11-12", 51, Pathway.Prohibited, true)]
    [InlineData("2024-05-09", 51, Pathway.Prohibited, true)]
    [InlineData("2024-05-10", 51, Pathway.Prohibited, false)]
    [InlineData("2024-05-09", 50, Pathway.NoCertificate, false)]
    public void The_limit_holds_all_the_same_and_the_first_lines_say_from_when_a_breach_counts(
        string day,
        int lift,
        Pathway gives,
        bool warned
    )
    {
        var answer = Assessed(Warned, day, lift);

        answer.Between.ShouldBe(Only(gives));
        answer.Foremost.ShouldBe(warned ? [Told] : []);
        var lines = Telling.ReadAnswer.Of(answer).Parts.SelectMany(part => part.Lines).ToArray();
        lines.Any(line => line.Contains(Told, StringComparison.Ordinal)).ShouldBe(warned);
        Warns(JsonDocument.Parse(AssessmentJson.Write(answer)).RootElement.GetProperty("findings"))
            .ShouldBe(string.CompareOrdinal(day, "2024-05-10") < 0);
    }

    [Fact]
    public void Where_no_later_version_ends_the_warnings_the_day_is_told_as_not_known() =>
        Assessor
            .Assess(Endless, JobReader.Read(YamlText.Read(Job("2026-11-28", 51), "job"), Endless))
            .Foremost.ShouldBe([
                "Raising a vehicle: until a day that is not known a breach brings a warning only; from then on it counts in full.",
            ]);

    [Theory]
    [InlineData("2024-05-09", true)]
    [InlineData("2024-05-10", false)]
    public void What_is_left_says_that_a_breach_of_its_limits_brings_a_warning_only(string day, bool warned) =>
        MarginFinder.Find(Warned, JobReader.Read(YamlText.Read(Job(day, 10), "job"), Warned)).Cautions.Contains(Told).ShouldBe(warned);

    [Theory]
    [InlineData("not-regulated: Repealed.", "until 2024-05-10 a breach brings a warning only; from then on it is not regulated.")]
    [InlineData(
        "not-established: { ask: Somebody }",
        "until 2024-05-10 a breach brings a warning only; from then on what holds is not established."
    )]
    [InlineData(
        "tiers: [ { pathway: certificate, within: { suspension-lift: 60 mm } } ], beyond: prohibited",
        "until 2024-05-10 a breach brings a warning only; from then on allowed with a certificate."
    )]
    [InlineData(
        "like: 2023-11-12, warning-only: yes",
        "until a day that is not known a breach brings a warning only; from then on it counts in full."
    )]
    [InlineData(
        "like: 2023-11-12, warning-only: yes, until: 2024-12-01 }\n- { from: 2024-12-01, sources: [ { cite: law, clause: \"3\" "
            + "} ], like: 2023-11-12",
        "until 2024-12-01 a breach brings a warning only; from then on it counts in full."
    )]
    public void What_comes_after_the_warnings_is_told_as_it_is(string next, string told)
    {
        var book = SmallBook.WithVersions(
            $"{First("warning-only: yes")}\n- {{ from: 2024-05-10, sources: [ {{ cite: law, clause: \"2\" }} ], {next} }}"
        );

        Assessed(book, "2024-01-01", 51).Foremost.ShouldBe([$"Raising a vehicle: {told}"]);
    }

    [Fact]
    public void It_stands_in_the_limits_and_in_the_resolved_text_of_its_days_alone()
    {
        var place = Warned.Jurisdiction("au-qld")!;
        foreach (var (day, warns) in new[] { (new DateOnly(2024, 5, 9), true), (new DateOnly(2024, 5, 10), false) })
        {
            var versions = Resolver.Resolve(Warned, place.Rules[0], day);
            Warns(JsonDocument.Parse(LimitsJson.Write(Warned, place, day, versions)).RootElement.GetProperty("rules")).ShouldBe(warns);
        }

        ResolvedText.Of(Warned, place).Split("a breach brings a warning only").Length.ShouldBe(2);
    }

    [Fact]
    public void An_edit_of_it_is_told_beside_the_answers_that_it_leaves()
    {
        var report = Between(InFull, Warned);

        report.Answers.ShouldBeEmpty();
        report.Remarks.Select(remark => remark.Text).ShouldContain(text => text.Contains("a breach brings a warning only"));
    }

    [Fact]
    public void It_has_to_be_held_by_a_case_and_so_has_the_day_that_ends_it() =>
        new Pinner(Warned, [])
            .Run((_, _) => true)
            .Unnoticed.Select(one => one.What)
            .ShouldSatisfyAllConditions(
                what => what.ShouldContain("a breach brings a warning only"),
                what => what.ShouldContain("from 2024-05-10")
            );

    private static readonly Book Endless = SmallBook.WithVersions(First("warning-only: yes"));

    private static Book Raise(string first) =>
        SmallBook.WithVersions(
            $$"""
            {{First(first)}}
            - from: 2024-05-10
              sources: [ { cite: law, clause: "1" } ]
              like: 2023-11-12
            """
        );

    private static string First(string more) =>
        $$"""
            - from: 2023-11-12
              sources: [ { cite: law, clause: "1" } ]
              tiers: [ { pathway: no-certificate, within: { suspension-lift: 50 mm } } ]
              beyond: prohibited
              {{more}}
            """;

    private static string Job(string day, int lift) =>
        $"{{ registered-in: au-qld, on: {day}, vehicle: {{ category: MC }}, modification: {{ suspension-lift: {lift} mm }} }}";

    private static Assessment Assessed(Book book, string day, int lift) =>
        Assessor.Assess(book, JobReader.Read(YamlText.Read(Job(day, lift), "job"), book));

    private static bool Warns(JsonElement rules) =>
        rules.EnumerateArray().Single().TryGetProperty("warning-only", out var warns) && warns.GetBoolean();
}
