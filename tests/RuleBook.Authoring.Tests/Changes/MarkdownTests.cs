using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// A comment on a pull request shows what a book or a job says, and does nothing that it says (CommonMark 0.31, GitHub's extensions of it).
/// </summary>
public sealed class MarkdownTests
{
    private const string Hostile =
        "<img src=x onerror=alert(1)> | @team #1 [x](javascript:alert(1)) `a` *b* _c_ "
        + "https://example.org www.example.org\n# heading\u202e";

    [Fact]
    public void Nothing_in_a_name_a_title_or_a_file_becomes_markup_a_link_or_a_mention()
    {
        var text = ChangesMarkdown.Write(Everything());

        foreach (var active in (string[])["<img", "@team", " #1", "](", "`a`", "*b*", "_c_", "https://", "www.", "\n# ", "\u202e"])
            text.ShouldNotContain(active);
        text.Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal) && line.Contains("suspension", StringComparison.Ordinal))
            .ShouldAllBe(line => line.Count(mark => mark == '|') == 8); // seven cells: a bar in a cell would make more
    }

    [Fact]
    public void A_job_that_has_a_fence_in_it_does_not_end_its_block() =>
        // CommonMark 4.5: a closing fence is at least as long.
        Markdown.Block("yaml", "a: b\n````\n# x").ShouldBe("`````yaml\na: b\n````\n# x\n`````\n");

    [Fact]
    public void Where_nothing_changes_the_comment_says_so_and_no_more()
    {
        var text = ChangesMarkdown.Write(
            new ComparedBooks(new NamedBook("main", "sha256:a"), new NamedBook("here", "sha256:b"), new ChangeReport([], []), null)
        );

        text.ShouldContain("No answer changes.");
        text.ShouldNotContain("###");
        text.ShouldNotContain("<details>");
    }

    [Fact]
    public void Ten_thousand_changes_still_make_a_comment_that_a_forge_takes()
    {
        var one = Everything();
        var many = one with { Report = one.Report with { Answers = [.. Enumerable.Repeat(one.Report.Answers[0], 10_000)] } };

        var text = ChangesMarkdown.Write(many);
        text.Length.ShouldBeLessThan(65_536); // the most that GitHub takes for a comment
        var rows = text.Split('\n').Count(line => line.StartsWith("| ", StringComparison.Ordinal) && line.Contains("<br>"));
        text.ShouldContain($"\n{10_000 - rows} more are left out here.\n");
    }

    [Fact]
    public void A_rule_that_only_the_old_book_has_is_told_as_removed_and_any_other_is_not()
    {
        var gone = Everything();
        var stays = gone with { Report = gone.Report with { Answers = [gone.Report.Answers[0] with { Removed = false }] } };
        ChangesMarkdown.Write(gone).ShouldContain(" (removed)<br>");
        ChangesMarkdown.Write(stays).ShouldNotContain("(removed)");
    }

    /// <summary>Two answers of one place, one thing beside them, one source, two saved jobs and one that could not be read.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void The_comment_tells_answers_by_place_then_what_is_beside_them_then_saved_jobs()
    {
        var mark = new Mark("xa/ride-height.yaml", 7, 3);
        Outcome free = new(Pathway.NoCertificate, Pathway.NoCertificate);
        Outcome certified = new(Pathway.Certificate, Pathway.Certificate);
        ShownJob Shown(string says) => new($"says: {says}\n", says, new DateOnly(2018, 10, 26));
        var change = new AnswerChange(
            "xa",
            "Here",
            "ride-height",
            "Ride height",
            new DateOnly(2018, 10, 26),
            null,
            [new VehicleWord("category", "category", ["MC", "NA"])],
            free,
            certified,
            "xa/raise",
            mark,
            false,
            Shown("lift 60 mm"),
            Shown("lift 70 mm")
        );
        var other = change with { From = null, Vehicles = [], Before = certified, After = free, Removed = true, Furthest = null };
        var remark = new Remark(RemarkKind.Other, "xa", "Here", "xa/raise", new DateOnly(2019, 7, 1), "codes differ", mark);
        var compared = new ComparedBooks(
            new NamedBook("main", "sha256:a"),
            new NamedBook("new", "sha256:b"),
            new ChangeReport([change, other], [remark, remark with { Kind = RemarkKind.Evidence, From = null, Text = "law read" }]),
            new JobReport(
                3,
                [new JobChange("a.yaml", "W-1", free, certified), new JobChange("b.yaml", null, null, free)],
                [Problem.Error("x", mark, "no day", "give one")]
            )
        );
        ChangesMarkdown
            .Write(compared)
            .Split('\n')
            .ShouldBe([
                "## Answers that change",
                "",
                "From <code>main</code> to <code>new</code>: 2 answers change, 2 other things change, 2 of 3 saved jobs change.",
                "",
                "### Here (xa)",
                "",
                "| topic | vehicles | days | before | after | for example | rule |",
                "| --- | --- | --- | --- | --- | --- | --- |",
                "| Ride height | category MC or NA | from 26 October 2018 | allowed without a certificate | allowed with a certificate | "
                    + "lift 60 mm; lift 70 mm | xa/raise<br><code>xa/ride-height.yaml&#58;7</code> |",
                "| Ride height | every vehicle | on every day | allowed with a certificate | allowed without a certificate | lift 60 mm | "
                    + "xa/raise (removed)<br><code>xa/ride-height.yaml&#58;7</code> |",
                "",
                "<details><summary>Jobs that show it</summary>",
                "",
                "allowed without a certificate, then allowed with a certificate:",
                "",
                "```yaml",
                "says: lift 60 mm",
                "```",
                "",
                "allowed with a certificate, then allowed without a certificate:",
                "",
                "```yaml",
                "says: lift 60 mm",
                "```",
                "",
                "</details>",
                "",
                "### Beside the pathways",
                "",
                "- Here, xa/raise: codes differ (from 1 July 2019)",
                "",
                "<details><summary>What 1 rules, schemes and sources rest on</summary>",
                "",
                "- Here, xa/raise: law read",
                "",
                "</details>",
                "",
                "### Saved jobs",
                "",
                "3 answered, 2 changed.",
                "",
                "| job | before | after |",
                "| --- | --- | --- |",
                "| <code>a.yaml</code> W-1 | allowed without a certificate | allowed with a certificate |",
                "| <code>b.yaml</code> | could not be read | allowed without a certificate |",
                "",
                "Could not be read:",
                "",
                "- xa/ride-height.yaml&#58;7&#58;3&#58; error x&#58; no day &#40;give one&#41;",
                "",
            ]);
        ChangeWords
            .Sum(compared with { Report = new ChangeReport([change], [remark]), Jobs = new JobReport(1, [], []) })
            .ShouldBe("1 answer changes, 1 other thing changes, 0 of 1 saved job changes.");
    }

    [Theory]
    [InlineData(null, null, "on every day")]
    [InlineData("2018-10-26", null, "from 26 October 2018")]
    [InlineData(null, "2020-07-01", "before 1 July 2020")]
    [InlineData("2018-10-26", "2020-07-01", "from 26 October 2018 until 1 July 2020")]
    public void The_days_of_a_change_begin_with_the_first_that_differs(string? from, string? until, string told) =>
        ChangeWords.Days(Everything().Report.Answers[0] with { From = Day(from), Until = Day(until) }).ShouldBe(told);

    private static DateOnly? Day(string? text) =>
        text is null ? null : DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static ComparedBooks Everything()
    {
        var outcome = new Outcome(Pathway.NoCertificate, Pathway.NoCertificate);
        var mark = new Mark(Hostile, 1, 1);
        var change = new AnswerChange(
            Hostile,
            Hostile,
            Hostile,
            Hostile,
            null,
            null,
            [new VehicleWord("f", Hostile, [Hostile])],
            outcome,
            Outcome.Open,
            Hostile,
            mark,
            true,
            new ShownJob("registered-in: au-qld\n", $"suspension lift {Hostile}", new DateOnly(2018, 10, 26)),
            null
        );
        return new ComparedBooks(
            new NamedBook(Hostile, "sha256:a"),
            new NamedBook(Hostile, "sha256:b"),
            new ChangeReport([change], [new Remark(RemarkKind.Scheme, Hostile, Hostile, Hostile, null, Hostile, mark)]),
            new JobReport(1, [new JobChange(Hostile, Hostile, null, outcome)], [Problem.Error("x", mark, Hostile, Hostile)])
        );
    }
}
