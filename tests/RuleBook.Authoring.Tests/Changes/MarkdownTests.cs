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
