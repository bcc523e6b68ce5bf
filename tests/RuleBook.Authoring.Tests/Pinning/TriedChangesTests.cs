using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Pinning;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>
/// What pinning tries of an invented book that has no case, each change with the job by which it shows, against lines held by hand:
/// <c>tests/invented-book/held/tried-changes.txt</c>.
/// </summary>
public sealed class TriedChangesTests
{
    private static readonly Book Book = InventedBook.WithSouth;

    private static readonly string[] Held = InventedBook.Held("tried-changes.txt").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>
    /// Without effect: which of two first days not known begins what differs in nothing (xa-n, 2), a day as on which the same was in force
    /// (xa-n 2, xa-s 1), what is not limited beside what is not established (xa, 1), the first day of what is not established (xa-n 2, xa
    /// 2), a day by which a scheme of unknown start is seen (xa-s, 2), and 22 mm or a little less or more to the nearest 4 mm (xa-s, 3).
    /// </summary>
    [Fact]
    public void Every_figure_day_word_condition_tier_and_paper_is_moved_counted_once_and_told_with_a_job_that_shows_it()
    {
        var report = new Pinner(Book, []).Run((_, _) => true);
        string.Join('\n', report.Unnoticed.Select(Told)).ShouldBe(string.Join('\n', Held));
        (report.Changes, report.WithoutEffect, report.Pinned, report.Percent).ShouldBe((Held.Length + 15, 15, 0, 0));
        report.Points.ShouldBe(Held.Select(Point).Distinct().Count());
    }

    /// <summary>
    /// Each line is held where a case fails on the book so changed; a point is pinned where every line of it is, or only changes beside it
    /// that show nowhere.
    /// </summary>
    [Fact]
    public void With_cases_what_none_of_them_fails_on_is_left_and_a_point_of_which_nothing_is_left_is_pinned()
    {
        var cases = InventedBook.Cases;
        var failing = BookEdit
            .Of(Book, (_, _) => true)
            .Where(edit => cases.Any(one => !CaseRun.Run(edit.Book, one).Passed))
            .Select(edit => $"{Place(edit.Mark, edit.Subject)}: {edit.What} -> {edit.Becomes} | ")
            .ToArray();
        string[] left = [.. Held.Where(line => !failing.Any(line.StartsWith))];
        var points = Held.Select(Point).Distinct().Except(left.Select(Point)).ToArray();

        var report = new Pinner(Book, cases).Run((_, _) => true);

        report.Unnoticed.Select(Told).ShouldBe(left);
        (report.Changes, report.WithoutEffect, report.Pinned).ShouldBe((Held.Length + 15, 15, points.Length));
    }

    [Fact]
    public void Progress_is_told_for_each_change_of_all()
    {
        var told = new HashSet<int>();
        new Pinner(Book, []).Run(
            (place, topic) => (place, topic) == ("xa-s", "certification"),
            (done, all) =>
            {
                all.ShouldBe(17);
                lock (told)
                    told.Add(done);
            }
        );

        told.Order().ShouldBe(Enumerable.Range(1, 17));
    }

    /// <summary>Place and line, what becomes what; the job's leaves; what is answered before and after.</summary>
    private static string Told(Unpinned one) =>
        $"{Place(one.Mark, one.Subject)}: {one.What} -> {one.To} | "
        + string.Join(", ", one.Witness.Yaml(Book.Vocabulary).Split('\n').Where(IsLeaf).Select(line => line.Trim()))
        + $" | {one.Before} -> {one.After}";

    private static string Place(Mark mark, string subject) =>
        $"{mark.File["jurisdictions/".Length..]}:{mark.Line} {subject.Split('/')[^1]}";

    private static string Point(string line) => line.Split(" -> ")[0];

    private static bool IsLeaf(string line) => line.Length > 0 && !line.EndsWith(':') && !line.EndsWith("{}", StringComparison.Ordinal);
}
