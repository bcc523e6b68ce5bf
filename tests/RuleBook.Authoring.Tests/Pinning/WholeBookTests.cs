using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Tests.Changes;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>The case files hold the book of this repository. What each expects, and from which source, stands in the files.</summary>
public sealed class WholeBookTests(ITestOutputHelper output)
{
    /// <summary>
    /// Three limits, a date and a bound weakened in a copy, and the case whose source says otherwise: 75 mm of suspension with a certificate
    /// (Queensland, local news of 11 October 2019), 50 mm of tyre diameter (national code, LS), 4500 kg of GVM (scope of Victoria's sheet of June
    /// 2021), the notice of 26 October 2018, and the height from which it is raising.
    /// </summary>
    public static TheoryData<string, string, string, string> Weakened => new()
    {
        { "au-qld/ride-height.yaml", "within: { suspension-lift: 75 mm, tyre-lift: 25 mm, body-lift: 50 mm, total-lift: 150 mm }", "within: { suspension-lift: 80 mm, tyre-lift: 25 mm, body-lift: 50 mm, total-lift: 150 mm }", "qld-" },
        { "au/tyres-and-wheels.yaml", "{ at-least: 0 mm, at-most: 50 mm }", "{ at-least: 0 mm, at-most: 50.1 mm }", "au-" },
        { "au-vic/mass-ratings.yaml", "within: { new-gvm: 4500 kg }", "within: { new-gvm: 4501 kg }", "vic-gvm" },
        { "au-qld/ride-height.yaml", "2018-10-26", "2018-10-25", "qld-" },
        { "au-qld/ride-height.yaml", "suspension-lift: { at-least: 0 mm }", "suspension-lift: { over: 0 mm }", "qld-" },
    };

    [Theory]
    [MemberData(nameof(Weakened))]
    public void A_figure_weakened_in_a_copy_is_caught_by_a_case_that_names_its_source(string file, string from, string to, string cases)
    {
        var weakened = EditedBook.Of(path => path == $"jurisdictions/{file}", text => text.Replace(from, to, StringComparison.Ordinal));

        var failed = CaseFolder.Load(CaseFolder.Within(TestBook.Folder), weakened).Select(one => CaseRun.Run(weakened, one)).Where(result => !result.Passed).ToArray();

        foreach (var result in failed) output.WriteLine($"{result.Case.Mark}: {result.Case.Id}: {string.Join("; ", result.Failures)} ({result.Case.Because})");
        failed.ShouldContain(result => result.Case.Id.StartsWith(cases, StringComparison.Ordinal) && result.Case.Because.Source != null);
    }

    [Fact]
    public void Every_limit_day_word_condition_and_paper_of_the_whole_book_is_held_by_a_case()
    {
        var report = new Pinner(TestBook.Book, CaseFolder.Load(CaseFolder.Within(TestBook.Folder), TestBook.Book)).Run((_, _) => true);

        output.WriteLine($"{report.Pinned} of {report.Points} pinned; {report.Changes} changes tried, {report.WithoutEffect} of them change nothing");
        report.Unnoticed.Select(one => $"{one.Mark}: {one.Subject}: {one.What} -> {one.To}").ShouldBeEmpty();
        report.Points.ShouldBeGreaterThan(2250); // what stands once for several versions of a rule is one point
    }
}
