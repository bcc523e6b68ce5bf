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
/// A measure that the law takes within a tolerance or to the nearest step (rules and figures are invented; what they give is worked by
/// hand: a frame at 602.4 mm is 600 mm to the nearest 5 mm, at 602.6 mm it is 605 mm, and 602.5 mm could be either).
/// </summary>
public sealed class AllowanceTests
{
    private const string Step = "to-nearest: { frame-height: 5 mm }";
    private const string Tolerance = "tolerance: { frame-height: 5 mm }";

    [Theory]
    [InlineData("at-most: 600 mm", "602.4", "602.5")]
    [InlineData("at-most: 602 mm", "602.4", "602.5")]
    [InlineData("under: 600 mm", "597.4", "597.5")]
    [InlineData("under: 602 mm", "602.4", "602.5")]
    [InlineData("at-least: 600 mm", "597.6", "597.5")]
    [InlineData("at-least: 598 mm", "597.6", "597.5")]
    [InlineData("over: 600 mm", "602.6", "602.5")]
    [InlineData("over: 598 mm", "597.6", "597.5")]
    public void To_the_nearest_step_a_measure_is_taken_before_it_is_compared(string limit, string within, string beyond) =>
        Turns(Step, limit, within, beyond);

    [Theory]
    [InlineData("at-most: 600 mm", "605", "605.1")]
    [InlineData("under: 600 mm", "604.9", "605")]
    [InlineData("at-least: 600 mm", "595", "594.9")]
    [InlineData("over: 600 mm", "595.1", "595")]
    public void Within_a_tolerance_a_measure_may_lie_beyond_the_limit(string limit, string within, string beyond) =>
        Turns(Tolerance, limit, within, beyond);

    [Theory]
    [InlineData(Step, "over: 600 mm", "602.4", "602.5")]
    [InlineData(Step, "at-least: 600 mm", "597.4", "597.5")]
    [InlineData(Step, "under: 600 mm", "597.6", "597.5")]
    [InlineData(Tolerance, "over: 600 mm", "605", "605.1")]
    [InlineData(Tolerance, "at-most: 600 mm", "595.1", "595")]
    public void What_is_forbidden_begins_as_far_beyond_its_figure(string taken, string limit, string allowed, string forbidden)
    {
        var book = Raise(taken, $"[ {{ pathway: prohibited, within: {{ frame-height: {{ {limit} }} }} }} ]", "no-certificate");

        Answer(book, Job(allowed)).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job(forbidden)).ShouldBe(Only(Pathway.Prohibited));
    }

    [Fact]
    public void Another_measure_and_what_opens_a_tier_are_taken_as_they_are()
    {
        var book = Raise(
            Tolerance,
            "[ { pathway: no-certificate, when: { frame-height: 600 mm }, within: { suspension-lift: 50 mm } } ]",
            "prohibited"
        );

        Answer(book, Job("600", "suspension-lift: 50 mm")).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job("600.1", "suspension-lift: 50 mm")).ShouldBe(Only(Pathway.Prohibited));
        Answer(book, Job("600", "suspension-lift: 50.1 mm")).ShouldBe(Only(Pathway.Prohibited));
    }

    [Fact]
    public void The_answer_tells_the_figure_of_the_law_and_what_moves_it()
    {
        const string Limit = "605 mm (600 mm with a tolerance of 5 mm)";
        var book = Limited(Tolerance, "at-most: 600 mm");
        var place = book.Jurisdiction("au-qld")!;
        var answer = Assessor.Assess(book, JobReader.Read(YamlText.Read(Job("606"), "job"), book));

        string.Join("\n", Telling.ReadAnswer.Of(answer).Parts.SelectMany(part => part.Lines)).ShouldContain($"limit {Limit}");
        Exceeded(answer).GetProperty("stated").GetString().ShouldBe("600 mm with a tolerance of 5 mm");
        Exceeded(answer).GetProperty("limit").GetDecimal().ShouldBe(605);
        ResolvedText.Of(book, place).ShouldContain($"frame-height: at most {Limit}");
        LimitsJson
            .Write(book, place, new DateOnly(2026, 11, 28), Resolver.Resolve(book, place.Rules[0], new DateOnly(2026, 11, 28)))
            .ShouldContain("600 mm with a tolerance of 5 mm");
    }

    /// <summary>Who adopts a rule takes over how it measures, for its own exceptions too.</summary>
    [Fact]
    public void An_adopted_rule_brings_its_tolerance_along()
    {
        var book = SmallBook.Of(
            ("au", SmallBook.Raise(Version(Tolerance, "[ { pathway: no-certificate, within: { frame-height: 600 mm } } ]", "prohibited"))),
            (
                "au-qld",
                SmallBook.Raise(
                    """
                    - from: 2012-01-01
                      sources: [ { cite: law, clause: "2" } ]
                      adopts: { rule: au/ride-height/raise, as-of: amended }
                    - from: 2020-01-01
                      sources: [ { cite: law, clause: "3" } ]
                      adopts: { rule: au/ride-height/raise, as-of: amended }
                      except: [ { tier: no-certificate, within: { frame-height: 550 mm } } ]
                    """
                )
            )
        );

        foreach (var (day, most) in new[] { ("2019-12-31", 605), ("2020-01-01", 555) })
        {
            Answer(book, Job($"{most}", day: day)).ShouldBe(Only(Pathway.NoCertificate));
            Answer(book, Job($"{most}.1", day: day)).ShouldBe(Only(Pathway.Prohibited));
        }
    }

    [Fact]
    public void A_change_of_it_shows_in_the_answers()
    {
        var (before, after) = (Limited("mass-state: unladen", "at-most: 600 mm"), Limited(Step, "at-most: 600 mm"));

        var report = Between(before, after);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(before, after);
    }

    [Theory]
    [InlineData(Step, "frame-height taken to the nearest 5 mm")]
    [InlineData(Tolerance, "frame-height with a tolerance of 5 mm")]
    public void It_has_to_be_held_by_a_case_and_so_has_the_limit_that_it_moves(string taken, string told) =>
        new Pinner(Limited(taken, "at-most: 600 mm"), [])
            .Run((_, _) => true)
            .Unnoticed.Select(one => one.What)
            .ShouldSatisfyAllConditions(what => what.ShouldContain(told), what => what.ShouldContain("frame-height at most 600 mm"));

    private static void Turns(string taken, string limit, string within, string beyond)
    {
        var book = Limited(taken, limit);

        Answer(book, Job(within)).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job(beyond)).ShouldBe(Only(Pathway.Prohibited));
    }

    private static JsonElement Exceeded(Assessment answer) =>
        JsonDocument.Parse(AssessmentJson.Write(answer)).RootElement.GetProperty("findings")[0].GetProperty("exceeded")[0];

    private static Book Limited(string taken, string limit) =>
        Raise(taken, $"[ {{ pathway: no-certificate, within: {{ frame-height: {{ {limit} }} }} }} ]", "prohibited");

    private static Book Raise(string taken, string tiers, string beyond) => SmallBook.WithVersions(Version(taken, tiers, beyond));

    private static string Version(string taken, string tiers, string beyond) =>
        $$"""
            - from: 2011-01-01
              sources: [ { cite: law, clause: "1" } ]
              measured: { {{taken}} }
              tiers: {{tiers}}
              beyond: {{beyond}}
            """;

    private static string Job(string height, string modification = "", string day = "2026-11-28") =>
        $"{{ registered-in: au-qld, on: {day}, vehicle: {{ category: MC }}, modification: {{ {modification} }}, measured: {{ frame-height: "
        + $"{height} mm }} }}";
}
