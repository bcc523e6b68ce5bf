using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Telling.Sheets;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>The sheet that is printed, ticked and signed, line by line as a signatory is to read it, written by hand.</summary>
[Trait("Basis", "derived")]
public sealed class RecordSheetTests
{
    private static readonly Book Certified = Book(
        Rule("raise", Since("2012-01-01", $$""" "measured": { "mass-state": "unladen" }, {{Tiers}} """)),
        (
            "jurisdictions/au-a/certification",
            """
            { "topic": "certification", "schemes": [ { "scheme": "e", "title": "Engineers", "versions": [ { "from": "2013",
              "certifier": "engineer", "appointed-by": "Office A", "reregistering": "Inspect it.",
              "issued": [ { "pathway": "certificate", "papers": [ "report", "plate" ] } ], "steps": [ { "text": "inspect",
                "pathways": "certificate" }, { "text": "ask", "before-work": "yes", "pathways": "certificate" } ],
              "sources": [ { "cite": "law", "clause": "7" } ] } ] } ] }
            """
        )
    );

    /// <summary>
    /// 2400 kg and the fuel of tanks that nobody stated are at least 10 kg over 2390 kg; 60 mm are 10 mm over 50 mm, and leave 15 of 75
    /// and 90 of 150 mm.
    /// </summary>
    [Fact]
    public void It_tells_the_decision_what_was_typed_what_was_compared_and_has_a_box_for_what_is_to_do() =>
        Sheet(
                Certified,
                """
                "job": "W-1", "vehicle": { "tare": "2400 kg", "tanks": [ ], "ratings": { "gvm": "2390 kg" } },
                "modification": { "suspension-lift": "60 mm", "guard-flare": "30 mm",
                  "accessories": [ { "name": "a <bar>, rather a long one", "mass": "0 kg" } ] },
                "shown": { "travel-kept": "yes" },
                "held": [ { "paper": "certificate", "issued-in": "au-b", "number": "47", "day": "2021-03" } ]
                """
            )
            .ShouldBe([
                "<header>",
                "<div>",
                "<h1>Record of an answer: W-1</h1>",
                "<p>State A (au-a), as on 25 November 2026</p>",
                "</div>",
                """<p class="small"><span>Made 27 November 2026</span><br><span>rulebook 2</span><br><span>book made</span></p>""",
                "</header>",
                "<p><strong>This is no certificate and no approval.</strong> It records what the limits in the book give for what was "
                    + "typed below. The authority of the state of registration and the licensed certifier decide.</p>",
                """<div class="decision">""",
                "<p>NOT AS PLANNED: at least 10 kg over GVM before anybody gets in (2400 of 2390 kg); not judged, no rule in the book "
                    + "speaks of it: guard-flare.</p>",
                "<p>The modification itself: allowed with a certificate (without one: suspension-lift 60 mm, limit 50 mm: 10 mm too much). "
                    + "State A, 25 November 2026.</p>",
                "<p>Loads not judged against the front axle rating, the rear axle rating: not all of it is stated.</p>",
                "<p>To comply: suspension lift 50 mm: allowed without a certificate, still not as planned; what is left open above "
                    + "stays so; still not judged: guard-flare.</p>",
                "</div>",
                "<h2>Not judged, not established</h2>",
                "<ul>",
                "<li>Guard-flare: no rule in the book speaks of it. Ask Office A.</li>",
                "</ul>",
                "<h2>What was typed</h2>",
                """<table class="typed">""",
                Head("Input", "As typed", "Input", "As typed"),
                "<tbody>",
                "<tr><td>registered in</td><td>au-a</td><td>on</td><td>2026-11-25</td></tr>",
                "<tr><td>job</td><td>W-1</td><td>vehicle: tare</td><td>2400 kg</td></tr>",
                "<tr><td>vehicle: tanks</td><td></td><td>vehicle: ratings, gvm</td><td>2390 kg</td></tr>",
                "<tr><td>modification: suspension lift</td><td>60 mm</td><td>modification: guard flare</td><td>30 mm</td></tr>",
                """<tr><td>shown: travel kept</td><td colspan="3">yes</td></tr>""",
                """<tr><td>modification: accessories</td><td colspan="3">name a &lt;bar&gt;, rather a long one, mass 0 kg</td></tr>""",
                """<tr><td>held</td><td colspan="3">paper certificate, issued-in au-b, number 47, day 2021-03</td></tr>""",
                "</tbody>",
                "</table>",
                "<h2>Measured and reckoned: mass state unladen</h2>",
                "<table>",
                Head("Measure", "Value", "How it came about", "Instrument, uncertainty"),
                "<tbody>",
                """<tr><td>Suspension-lift</td><td class="value">60 mm</td><td>60 mm (stated)</td><td class="fill"></td></tr>""",
                """<tr><td>Total-lift</td><td class="value">60 mm</td><td>suspension-lift 60 &#x2B; body-lift 0 """
                    + """&#x2B; tyre-lift 0 = 60 mm</td><td class="fill"></td></tr>""",
                "</tbody>",
                "</table>",
                "<p>Assumed, for nothing is stated to change it: body-lift 0 mm; tyre-diameter-growth 0 mm.</p>",
                "<h2>Limits that were compared</h2>",
                "<table>",
                Head("Limit", "Rule", "Source and clause", "Known"),
                "<tbody>",
                "<tr><td>Suspension-lift 60 mm, limit 75 mm: 15 mm left</td><td>raise</td><td>law</td><td>authority&#x27;s text</td></tr>",
                "<tr><td>Total-lift 60 mm, limit 150 mm: 90 mm left</td><td>raise</td><td>law</td><td>authority&#x27;s text</td></tr>",
                """<tr class="passed"><td>Suspension-lift 60 mm, limit 50 mm: 10 mm too much</td><td>raise</td><td>law</td>"""
                    + "<td>authority&#x27;s text</td></tr>",
                "</tbody>",
                "</table>",
                "<h2>Masses against ratings</h2>",
                "<table>",
                Head("Compared", "State", "Mass", "Rating", "Left"),
                "<tbody>",
                """<tr class="passed"><td>Vehicle against its GVM</td><td>unladen</td><td>2400 kg</td><td>2390 kg</td>"""
                    + "<td>10 kg too much</td></tr>",
                "</tbody>",
                "</table>",
                "<h2>Conditions</h2>",
                """<ul class="boxes">""",
                Box(
                    """<div class="evidence"><span>Travel kept (the job says that it is met). Evidence:</span>"""
                        + """<span class="line"></span></div>"""
                ),
                Box("""<div class="evidence"><span>Test (to be shown). Evidence:</span><span class="line"></span></div>"""),
                "</ul>",
                "<h2>Who certifies</h2>",
                "<p>Engineers: engineer, appointed by Office A. Issued: report, plate.</p>",
                """<ul class="boxes">""",
                Box("<div>Before the work: ask</div>"),
                Box("<div>inspect</div>"),
                "</ul>",
                "<h2>Papers held</h2>",
                """<ul class="boxes">""",
                Box(
                    "<div>certificate 47, State B, 2021-03: what State A asks of a vehicle that comes from elsewhere: Inspect it. "
                        + "Ask Office A.</div>"
                ),
                "</ul>",
                "<h2>Bear in mind</h2>",
                """<ul class="small">""",
                "<li>not legal advice</li>",
                "</ul>",
                """<div class="sign">""",
                "<span>Name</span><span>Appointment or licence number</span><span>Day</span><span>Signature</span>",
                "</div>",
                """<footer><p class="small">Book: <code>made</code>. The same answer can be made again from a record in JSON: """
                    + "rulebook assess JOB --format record, rulebook replay RECORD.</p></footer>",
            ]);

    [Fact]
    public void What_is_open_what_is_free_and_what_is_not_met_are_told_as_such()
    {
        var free = Sheet(Certified, Lift("40 mm"));
        free.ShouldContain("<h1>Record of an answer: without a name</h1>");
        free[free.IndexOf("<h2>Who certifies</h2>") + 1].ShouldBe("<p>Nobody: no certificate is needed.</p>");
        free.ShouldNotContain(line => line.StartsWith("<h2>Not judged", StringComparison.Ordinal));
        free.ShouldNotContain("<h2>Papers held</h2>");
        free.ShouldNotContain(line => line.StartsWith("<p>To comply", StringComparison.Ordinal));

        var open = Sheet(Certified, Lift("unknown"));
        open[open.IndexOf("<h2>What would decide</h2>") + 2]
            .ShouldBe(
                "<li>What is the suspension-lift? at most 50 mm: allowed without a certificate; over 50 mm up to 75 mm: allowed with a "
                    + "certificate; over 75 mm: not allowed</li>"
            );

        Sheet(Stating(""" "not-established": { "ask": "Office C." } """), Lift("40 mm"))
            .ShouldContain("<li>Nobody has established the limits for raise. Ask Office C.</li>");

        var answer = Assess(Certified, Lift("40 mm"));
        var finding = answer.Findings.Single();
        var unmet = finding with { Conditions = [finding.Conditions.Single() with { State = Truth.No }] };
        Sheet(Certified, Read(Certified, Lift("40 mm")), answer with { Findings = [unmet] }, [])
            .ShouldContain(
                Box(
                    """<div class="evidence"><span>Travel kept (the job says that it is NOT met). Evidence:</span>"""
                        + """<span class="line"></span></div>"""
                )
            );
    }

    private static string Box(string content) => $"""<li><span class="box"></span>{content}</li>""";

    private static string Head(params string[] columns) =>
        $"<thead><tr>{string.Concat(columns.Select(column => $"<th scope=\"col\">{column}</th>"))}</tr></thead>";

    private static List<string> Sheet(Book book, string more)
    {
        var job = Read(book, more);
        var answer = Assessor.Assess(book, job);
        return Sheet(book, job, answer, [.. Remedies.Find(book, job, null, answer)]);
    }

    private static List<string> Sheet(Book book, Job job, Assessment answer, Remedy[] remedies) =>
        [.. RecordSheet.Of(book, job, answer, remedies, "rulebook 2", new DateOnly(2026, 11, 27)).TrimEnd().Split('\n')];
}
