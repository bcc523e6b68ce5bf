using System.Text.Json;
using RuleBook.Cli.Fleets;
using RuleBook.Text;

namespace RuleBook.Cli.Tests;

/// <summary>What is told at the end of a fleet and written beside it, counted by hand; places and reasons are invented.</summary>
public sealed class FleetTellingTests
{
    private const string NotLegalAdvice =
        "This is not legal advice: the authority and the certifier decide. One row in full: --explain ROW";

    [Fact]
    public void Rows_are_counted_by_verdict_by_place_and_by_reason_the_most_first()
    {
        var summary = new FleetSummary();
        summary.Add(Answer("xa", "no-certificate"), 3);
        summary.Add(Answer("xb", "undecided", "the height", "the mass"), 5);
        summary.Add(Answer("xa", "undecided", "the height"), 1);
        summary.Reject();
        summary.Reject();
        summary.Defused = 4;
        summary.Rows.ShouldBe(11);
        string[] told =
        [
            "11 rows: 6 undecided, 3 no-certificate, 2 rejected",
            "  xa no-certificate: 3",
            "  xa undecided: 1",
            "  xb undecided: 5",
            "most common reasons:",
            "  6: the height",
            "  5: the mass",
            "4 cells begin like a formula of a spreadsheet: each has an apostrophe before it in what was written",
            NotLegalAdvice,
        ];
        summary.Lines().ShouldBe(told);
        // A run that goes on after another has counted what that one did.
        new FleetSummary { Counts = summary.Counts }
            .Lines()
            .ShouldBe(told);
    }

    [Fact]
    public void Ten_reasons_are_told_and_after_a_thousand_different_ones_they_are_other_reasons()
    {
        var summary = new FleetSummary();
        for (var at = 0; at < 1002; at++)
            summary.Add(Answer("xa", "undecided", $"reason {at:0000}"), 1);
        summary.Add(Answer("xa", "undecided", "reason 0999"), 1);
        string[] told = [.. summary.Lines()];
        told.SkipWhile(line => line != "most common reasons:").Skip(1).SkipLast(1).Count().ShouldBe(10);
        told.ShouldContain("  2: other reasons");
        told.ShouldContain("  2: reason 0999");
        new FleetSummary().Lines().ShouldBe(["0 rows: 0 rejected", NotLegalAdvice]);
    }

    [Fact]
    public void Rows_that_an_earlier_book_answered_otherwise_are_counted_with_the_first_of_each()
    {
        var effect = new FleetEffect("main~3");
        effect.Add(1, Answer("xa", "certificate"), Answer("xa", "no-certificate"));
        effect.Add(2, Answer("xa", "certificate"), Answer("xa", "certificate"));
        effect.Add(3, null, Answer("xb", "undecided"));
        effect.Add(4, Answer("xb", "certificate"), Answer("xb", "no-certificate"));
        effect.Add(5, Answer("xb", "undecided", "the mass"), Answer("xb", "undecided", "the height"));
        string[] told =
        [
            "against main~3: another verdict on 3 rows",
            "  certificate -> no-certificate: 2, such as row 1 (xa)",
            "  not readable -> undecided: 1, such as row 3 (xb)",
            "  still undecided, with another limit, margin, question or evidence: 1, such as row 5 (xb)",
        ];
        effect.Lines().ShouldBe(told);
        new FleetEffect("main~3") { Counts = effect.Counts }
            .Lines()
            .ShouldBe(told);
        new FleetEffect("main").Lines().ShouldBe(["against main: another verdict on 0 rows"]);
    }

    [Fact]
    public void A_row_is_written_as_it_came_with_its_answer_behind_it_and_what_a_spreadsheet_would_run_is_counted()
    {
        var columns = new FleetColumns("fleet.csv", ["registered-in", "owner"]);
        var answer = Answer("xa", "no-certificate");
        const string told = "no-certificate,,,,,,,,";
        new FleetWriter(columns, false).Header.ShouldBe(
            "registered-in,owner,verdict,headline,tightest-limit,margin,blockers,missing,to-show,beside-the-verdict,weakest-evidence\r\n"
        );
        new FleetWriter(columns, true).Header.ShouldEndWith(",weakest-evidence,verdict-before\r\n");
        new FleetWriter(columns, false).Row(new FleetRow(1, 2, ["xa", "a, b"]), answer, null).ShouldBe(($"xa,\"a, b\",{told}\r\n", 0));
        new FleetWriter(columns, false).Row(new FleetRow(1, 2, ["=1", "-5"]), answer, null).ShouldBe(($"'=1,-5,{told}\r\n", 1));
        new FleetWriter(columns, true)
            .Row(new FleetRow(1, 2, ["xa", ""]), answer, Answer("xa", "certificate"))
            .ShouldBe(($"xa,,{told},certificate\r\n", 0));
        new FleetWriter(columns, true).Row(new FleetRow(1, 2, ["xa", ""]), answer, null).ShouldBe(($"xa,,{told},not readable\r\n", 0));
    }

    [Fact]
    public void A_row_that_could_not_be_read_is_written_aside_with_its_place_and_the_head_of_its_column()
    {
        FleetWriter.RejectedHeader.ShouldBe("row,line,column,header,reason,tip\r\n");
        var wrong = Problem.Error("not-a-date", new Mark("fleet.csv", 9, 2), "'soon' is no day", "write 2026-11-20");
        var writer = new FleetWriter(new FleetColumns("fleet.csv", ["registered-in", "on"]), false);
        writer.Rejected(new FleetRow(7, 9, ["xa", "soon"]), wrong).ShouldBe("7,9,2,on,'soon' is no day,write 2026-11-20\r\n");
        writer
            .Rejected(new FleetRow(7, 9, ["xa", "", "x"]), wrong with { Mark = new Mark("fleet.csv", 9, 3) })
            .ShouldBe("7,9,3,,'soon' is no day,write 2026-11-20\r\n");
        new FleetWriter(null, false).Rejected(new FleetRow(7, 9, ["{}"]), wrong).ShouldStartWith("7,9,2,,");
    }

    [Fact]
    public void A_job_given_as_JSON_is_answered_with_it_and_its_answer_side_by_side()
    {
        var writer = new FleetWriter(null, true);
        writer.Header.ShouldBeEmpty();
        var (text, _) = writer.Row(new FleetRow(1, 1, [" {\"job\": \"W-1\"} "]), Answer("xa", "certificate"), Answer("xa", "undecided"));
        text.ShouldEndWith("\n");
        using var json = JsonDocument.Parse(text);
        json.RootElement.GetProperty("job").GetProperty("job").GetString().ShouldBe("W-1");
        var answer = json.RootElement.GetProperty("answer");
        answer.EnumerateObject().Select(each => each.Name).ShouldBe([.. Answered.Columns, "verdict-before"]);
        answer.GetProperty("verdict").GetString().ShouldBe("certificate");
        answer.GetProperty("verdict-before").GetString().ShouldBe("undecided");
    }

    private static Answered Answer(string place, string verdict, params string[] reasons) =>
        new(place, verdict, [verdict, "", "", "", "", string.Join("; ", reasons), "", "", ""], [.. reasons]);
}
