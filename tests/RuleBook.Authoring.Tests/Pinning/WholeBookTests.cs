using RuleBook.Authoring.Pinning;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>The case files hold the book of this repository. What each expects, and from which source, stands in the files.</summary>
public sealed class WholeBookTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_limit_day_word_condition_and_paper_of_the_whole_book_is_held_by_a_case()
    {
        var report = new Pinner(TestBook.Book, TestBook.Cases).Run((_, _) => true);

        output.WriteLine(
            $"{report.Pinned} of {report.Points} pinned; {report.Changes} changes tried, {report.WithoutEffect} of them change nothing"
        );
        report.Unnoticed.Select(one => $"{one.Mark}: {one.Subject}: {one.What} -> {one.To}").ShouldBeEmpty();
        report.Points.ShouldBeGreaterThan(2250); // what stands once for several versions of a rule is one point
    }
}
