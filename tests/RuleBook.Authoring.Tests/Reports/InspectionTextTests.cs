using System.Text.Json.Nodes;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Reports;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Reports;

/// <summary>Text and JSON of an inspection (derived from their documented form).</summary>
public sealed class InspectionTextTests
{
    private static readonly InspectionReport Report = new(
        [
            Problem.Error("no-source", new Mark("a.yaml", 1, 2), "the version cites no source", "add one"),
            Problem.Error("tag", new Mark("a.yaml", 5, 6), "a tag", ""),
            new Problem("source-overdue", Severity.Warning, new Mark("b.yaml", 3, 4), "it is overdue", ""),
        ],
        Files: 2,
        Digest: "sha256:0",
        Book: null
    );

    [Fact]
    public void The_text_has_a_line_for_each_problem_and_one_that_sums_up()
    {
        using var output = new StringWriter();
        InspectionText.Write(Report, output);

        output
            .ToString()
            .ShouldBe(
                "a.yaml:1:2: error no-source: the version cites no source (add one)\na.yaml:5:6: error tag: a tag\nb.yaml:3:4: "
                    + "warning source-overdue: it is overdue\n2 errors, 1 warning in 2 files\n"
            );
    }

    [Fact]
    public void A_sound_book_is_said_to_be_sound_with_its_digest() =>
        InspectionText.Summary(Report with { Problems = [] }).ShouldBe("sound: 0 jurisdictions in 2 files, sha256:0");

    [Fact]
    public void The_json_has_the_same_in_fields()
    {
        using var stream = new MemoryStream();
        InspectionJson.Write(Report, stream);
        JsonNode
            .Parse(stream.ToArray())!
            .ToJsonString()
            .ShouldBe(
                """{"sound":false,"book":"sha256:0","files":2,"errors":2,"warnings":1,"problems":["""
                    + """{"file":"a.yaml","line":1,"column":2,"severity":"error","code":"no-source","text":"the version cites no source","""
                    + "\"tip\":\"add one\"},"
                    + """{"file":"a.yaml","line":5,"column":6,"severity":"error","code":"tag","text":"a tag","tip":""},"""
                    + """{"file":"b.yaml","line":3,"column":4,"severity":"warning","code":"source-overdue","text":"it is """
                    + """overdue","tip":""}]}"""
            );
    }
}
