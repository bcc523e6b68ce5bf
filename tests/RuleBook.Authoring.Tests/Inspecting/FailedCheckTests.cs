using RuleBook.Authoring.Checks;
using RuleBook.Authoring.Inspecting;

namespace RuleBook.Authoring.Tests.Inspecting;

/// <summary>A check that fails itself (derived).</summary>
public sealed class FailedCheckTests
{
    [Fact]
    public void A_check_that_fails_is_an_error_of_its_own_that_names_it_and_no_end_of_the_inspection() =>
        Meanings
            .Found(new Check(NoSource.Info, _ => throw new InvalidOperationException("no such place")), null!)
            .ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                "jurisdictions:1:1: error check-failed: the check 'no-source' failed on this book (InvalidOperationException: "
                    + "no such place) "
                    + "(mend the other problems first; if it stays, report it with the book)"
            );

    [Fact]
    public void A_folder_without_a_book_is_a_report_of_nothing_but_that()
    {
        using var folder = new TemporaryFolder();
        var report = Inspection.Run(folder.Path, new DateOnly(2026, 11, 25));
        report.Problems.ShouldHaveSingleItem();
        (report.Files, report.Digest, report.Book).ShouldBe((0, "", null));
    }
}
