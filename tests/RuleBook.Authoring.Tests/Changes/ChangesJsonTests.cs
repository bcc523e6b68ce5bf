using System.Text.Json.Nodes;
using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>A comparison for a program, key by key as <c>schema/changes.schema.json</c> names them.</summary>
[Trait("Basis", "derived")]
public sealed class ChangesJsonTests
{
    private static readonly Mark Place = new("xa/ride-height.yaml", 7, 3);
    private static readonly Outcome Free = new(Pathway.NoCertificate, Pathway.NoCertificate);
    private static readonly Outcome Open = new(Pathway.Certificate, Pathway.Prohibited);
    private static readonly NamedBook Old = new("main", "sha256:a");
    private static readonly NamedBook New = new("here", "sha256:b");

    private static readonly AnswerChange Change = new(
        "xa",
        "Here",
        "ride-height",
        "Ride height",
        new DateOnly(2018, 10, 26),
        null,
        [new VehicleWord("category", "vehicle category", ["MC", "NA"])],
        Free,
        Open,
        "xa/ride-height/raise",
        Place,
        true,
        new ShownJob("on: 2018-10-26\n", "lift 60 mm", new DateOnly(2018, 10, 26)),
        new ShownJob("on: 2018-10-27\n", "lift 70 mm", new DateOnly(2018, 10, 27))
    );

    private static readonly Remark Beside = new(
        RemarkKind.Other,
        "xa",
        "Here",
        "xa/raise",
        new DateOnly(2019, 7, 1),
        "codes differ",
        Place
    );

    [Fact]
    public void An_answer_that_changes_has_its_days_vehicles_place_and_jobs() =>
        Json(new ChangeReport([Change], []))
            .ShouldBe(
                OneLine(
                    """
                    {"changes":true,"old":{"name":"main","book":"sha256:a"},"new":{"name":"here","book":"sha256:b"},"answers":[
                    {"jurisdiction":"xa","topic":"ride-height","from":"2018-10-26","until":null,
                    "vehicles":[{"fact":"category","words":["MC","NA"]}],"vehicles-in-words":"vehicle category MC or NA",
                    "before":["no-certificate","no-certificate"],"after":["certificate","prohibited"],
                    "rule":"xa/ride-height/raise","removed":true,"file":"xa/ride-height.yaml","line":7,"column":3,
                    "witness":{"on":"2018-10-26","says":"lift 60 mm","job":"on: 2018-10-26\n"},
                    "furthest":{"on":"2018-10-27","says":"lift 70 mm","job":"on: 2018-10-27\n"}}],"remarks":[]}
                    """
                )
            );

    [Fact]
    public void The_smallest_job_stands_alone_where_no_larger_one_shows_it()
    {
        var answer = JsonNode.Parse(Json(new ChangeReport([Change with { Furthest = null, From = null, Until = new(2020, 1, 2) }], [])))![
            "answers"
        ]![0]!;
        answer.AsObject().ContainsKey("furthest").ShouldBeFalse();
        (answer["from"]?.ToString(), answer["until"]?.ToString()).ShouldBe((null, "2020-01-02"));
    }

    [Theory]
    [InlineData(RemarkKind.JurisdictionAdded, "jurisdiction-added")]
    [InlineData(RemarkKind.JurisdictionRemoved, "jurisdiction-removed")]
    [InlineData(RemarkKind.Scheme, "scheme")]
    [InlineData(RemarkKind.Measured, "measured")]
    [InlineData(RemarkKind.DecidedBy, "decided-by")]
    [InlineData(RemarkKind.Corrected, "corrected")]
    [InlineData(RemarkKind.NotShown, "not-shown")]
    [InlineData(RemarkKind.Other, "other")]
    [InlineData(RemarkKind.Evidence, "evidence")]
    public void What_changes_beside_the_answers_has_its_kind(RemarkKind kind, string word) =>
        JsonNode.Parse(Json(new ChangeReport([], [Beside with { Kind = kind }])))!["remarks"]![0]!
            .ToJsonString()
            .ShouldBe(
                OneLine(
                    $$"""
                    {"kind":"{{word}}","jurisdiction":"xa","about":"xa/raise","from":"2019-07-01","text":"codes differ",
                    "file":"xa/ride-height.yaml","line":7,"column":3}
                    """
                )
            );

    [Fact]
    public void Saved_jobs_are_told_with_what_could_not_be_read() =>
        Json(
                new ChangeReport([], []),
                new JobReport(
                    3,
                    [new JobChange("a.yaml", "W-1", Free, Open), new JobChange("b.yaml", null, null, Free)],
                    [Problem.Error("no-day", Place, "no day", "give one")]
                )
            )
            .ShouldBe(
                OneLine(
                    """
                    {"changes":true,"old":{"name":"main","book":"sha256:a"},"new":{"name":"here","book":"sha256:b"},"answers":[],"remarks":[],
                    "jobs":{"answered":3,"changed":[
                    {"file":"a.yaml","job":"W-1","before":["no-certificate","no-certificate"],"after":["certificate","prohibited"]},
                    {"file":"b.yaml","job":null,"before":null,"after":["no-certificate","no-certificate"]}],"unreadable":[
                    {"file":"xa/ride-height.yaml","line":7,"column":3,"code":"no-day","text":"no day","tip":"give one"}]}}
                    """
                )
            );

    [Fact]
    public void Nothing_that_changes_is_no_change_whether_or_not_jobs_were_asked()
    {
        Json(new ChangeReport([], [])).ShouldStartWith("""{"changes":false,""");
        Json(new ChangeReport([], []), new JobReport(2, [], [])).ShouldStartWith("""{"changes":false,""");
    }

    /// <summary>As one line, so that what is expected can be broken where it reads well.</summary>
    private static string Json(ChangeReport report, JobReport? jobs = null)
    {
        var text = ChangesJson.Write(new ComparedBooks(Old, New, report, jobs));
        text.ShouldEndWith("}\n");
        return JsonNode.Parse(text)!.ToJsonString();
    }

    private static string OneLine(string text) => text.ReplaceLineEndings("");
}
