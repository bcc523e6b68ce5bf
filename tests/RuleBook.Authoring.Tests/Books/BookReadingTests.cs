using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Tests.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Opening a book to answer from it (derived from its documentation).</summary>
public sealed class BookReadingTests
{
    [Fact]
    public void A_sound_book_opens_with_its_digest()
    {
        using var book = BadBook.Open("sound");

        BookReading.Open(book.Folder).Digest.ShouldBe(BookFolder.Load(book.Folder).Digest);
    }

    [Fact]
    public void Two_files_that_cannot_be_read_are_both_reported()
    {
        using var book = BadBook.Open("sound");
        File.WriteAllText(Path.Combine(book.Folder, "jurisdictions/xa/sources.yaml"), "sources: [");
        File.WriteAllText(Path.Combine(book.Folder, "jurisdictions/xa-n/sources.yaml"), "a: *b");

        Should
            .Throw<InputException>(() => BookReading.Open(book.Folder))
            .Problems.Select(problem => $"{problem.Mark.File} {problem.Code}")
            .ShouldBe(["jurisdictions/xa-n/sources.yaml anchor-or-alias", "jurisdictions/xa/sources.yaml yaml-syntax"]);
    }

    [Fact]
    public void A_warning_does_not_keep_a_book_from_opening()
    {
        using var book = BadBook.Open("source-overdue");

        BookReading.Open(book.Folder).Jurisdictions.Length.ShouldBe(2);
    }
}
