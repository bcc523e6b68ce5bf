using AngleSharp.Html.Parser;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Site.Sheets;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests;

/// <summary>
/// The sheet that a signatory prints, ticks and files, read back as a document. Derived: each fact is that of the assessment beside it.
/// </summary>
public sealed class RecordSheetTests
{
    [Theory]
    [InlineData("wagon-touring")]
    [InlineData("interstate-dual-cab")]
    [InlineData("western-undecided")]
    public void Every_fact_of_the_answer_stands_on_the_sheet_and_every_condition_has_a_box(string example)
    {
        var (assessment, sheet) = Of(File.ReadAllText(Path.Combine(TheBook.Folder, "examples", example + ".yaml")));
        var text = sheet.Body!.TextContent;
        text.ShouldContain("This is no certificate and no approval.");
        text.ShouldContain(assessment.Book);
        foreach (var line in Telling.FirstLines.Of(assessment, new DateOnly(2026, 11, 27)))
            text.ShouldContain(line);
        foreach (var caution in assessment.Cautions)
            text.ShouldContain(caution);
        foreach (var gap in assessment.Gaps)
            text.ShouldContain(gap.Ask.TrimEnd('.'));
        var conditions = assessment
            .Findings.Concat(assessment.OfUse)
            .SelectMany(finding => finding.Conditions)
            .DistinctBy(each => each.Condition.Name)
            .ToArray();
        var steps = assessment.IsCertified ? assessment.Certification!.Steps.Length : 0;
        sheet.QuerySelectorAll(".box").Length.ShouldBe(conditions.Length + steps);
        sheet
            .QuerySelectorAll(".sign span")
            .Select(each => each.TextContent)
            .ShouldBe(["Name", "Appointment or licence number", "Day", "Signature"]);
        sheet.QuerySelectorAll("script, link, img, iframe").ShouldBeEmpty();
    }

    [Fact]
    public void A_load_over_its_rating_is_marked_and_says_by_how_much()
    {
        var (_, sheet) = Of(File.ReadAllText(Path.Combine(TheBook.Folder, "examples", "wagon-touring.yaml")));
        sheet
            .QuerySelectorAll("tr.passed")
            .Select(row => row.TextContent)
            .ShouldContain(row => row.Contains("236.8 kg too much", StringComparison.Ordinal)); // 3736.8 of 3500 kg
    }

    [Fact]
    public void Hostile_text_in_any_field_stays_text()
    {
        const string hostile = "</title></style><script>alert(1)</script><img src=x onerror=alert(1)>{{ 7 * 7 }}";
        var (_, sheet) = Of(
            $$"""
            job: "{{hostile}}"
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes, tare: 2000 kg }
            modification: { suspension-lift: 40 mm, accessories: [ { name: "{{hostile}}", mass: 20 kg, behind-front-axle: 0 mm } ] }
            """
        );
        sheet.QuerySelectorAll("script, img").ShouldBeEmpty();
        sheet.Title.ShouldNotBeNull().ShouldContain("<script>");
        sheet.Body!.TextContent.ShouldContain("{{ 7 * 7 }}");
    }

    private static (Assessment Assessment, AngleSharp.Html.Dom.IHtmlDocument Sheet) Of(string written)
    {
        var job = JobReader.Read(YamlText.Read(written, "job"), TheBook.Input.Book);
        var assessment = Assessor.Assess(TheBook.Input.Book, job);
        var remedies = Remedies.Find(TheBook.Input.Book, job, null, assessment);
        return (
            assessment,
            new HtmlParser().ParseDocument(
                SheetPage.Of(TheBook.Input.Book, job, assessment, remedies, "rulebook 2.0.0", new DateOnly(2026, 11, 27))
            )
        );
    }
}
