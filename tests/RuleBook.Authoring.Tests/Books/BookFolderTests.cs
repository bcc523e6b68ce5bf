using System.Security.Cryptography;
using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Which files are a book's, and the digest against SHA-256 worked out here over the documented form (derived).</summary>
public sealed class BookFolderTests
{
    [Fact]
    public void Files_come_in_ordinal_order_with_forward_slashes()
    {
        using var folder = new TemporaryFolder();
        folder.Write("jurisdictions/nz/b.yaml", "b");
        folder.Write("jurisdictions/au-sa/a.yaml", "a");
        folder.Write("jurisdictions/au/a.yaml", "a");
        folder.Write("schema/vocabulary/topics.yaml", "t");
        folder.Write("schema/reference/rims.yaml", "r");
        folder.Write("schema/rules.schema.json", "{}");

        BookFolder
            .Load(folder.Path)
            .Files.Select(file => file.Path)
            .ShouldBe([
                "jurisdictions/au-sa/a.yaml",
                "jurisdictions/au/a.yaml",
                "jurisdictions/nz/b.yaml",
                "schema/reference/rims.yaml",
                "schema/vocabulary/topics.yaml",
            ]);
    }

    [Fact]
    public void The_digest_is_the_same_with_either_line_end_and_with_a_byte_order_mark()
    {
        using var unix = new TemporaryFolder();
        using var windows = new TemporaryFolder();
        unix.Write("jurisdictions/au/a.yaml", "a: 1\nb: 2\n");
        windows.Write("jurisdictions/au/a.yaml", "\uFEFFa: 1\r\nb: 2\r\n");
        var expected = SHA256.HashData(Encoding.UTF8.GetBytes("jurisdictions/au/a.yaml\0a: 1\nb: 2\n\0"));

        BookFolder.Load(unix.Path).Digest.ShouldBe("sha256:" + Convert.ToHexStringLower(expected));
        BookFolder.Load(windows.Path).Digest.ShouldBe(BookFolder.Load(unix.Path).Digest);
    }

    [Fact]
    public void Another_name_for_the_same_text_is_another_digest()
    {
        using var one = new TemporaryFolder();
        using var other = new TemporaryFolder();
        one.Write("jurisdictions/au/a.yaml", "a");
        other.Write("jurisdictions/au/b.yaml", "a");

        BookFolder.Load(one.Path).Digest.ShouldNotBe(BookFolder.Load(other.Path).Digest);
    }

    [Fact]
    public void A_book_has_5000_files_at_most()
    {
        static BookFolder Files(int count) =>
            BookFolder.Of(Enumerable.Range(0, count).Select(at => new BookBytes($"jurisdictions/xa/t{at}.yaml", "a: b"u8.ToArray())));

        Files(5000).Files.Length.ShouldBe(5000);
        Should
            .Throw<InputException>(() => Files(5001))
            .Message.ShouldBe(
                "jurisdictions:1:1: error too-large: the book has more than 5000 files or 64 MiB (check that this is the folder you meant)"
            );
    }

    [Fact]
    public void Files_that_lie_in_no_folder_are_taken_where_a_book_has_such_and_others_passed_over()
    {
        static BookFolder Of(params string[] paths) => BookFolder.Of(paths.Select(path => new BookBytes(path, "a: b"u8.ToArray())));

        Of(
            "schema/vocabulary/facts.yaml",
            "jurisdictions/xa/towing.yaml",
            "jurisdictions/editions.yaml",
            "schema/reference/tables.yaml",
            "schema/cases.yaml",
            "jurisdictions/xa/towing.yml",
            "jurisdictions/xa/more/towing.yaml",
            "jurisdictions/readme.yaml",
            "schema/other/facts.yaml"
        )
            .Files.Select(file => file.Path)
            .ShouldBe([
                "jurisdictions/editions.yaml",
                "jurisdictions/xa/towing.yaml",
                "schema/reference/tables.yaml",
                "schema/vocabulary/facts.yaml",
            ]);
        Should
            .Throw<InputException>(() => Of("readme.md"))
            .Message.ShouldBe(
                ":1:1: error not-a-book: the folder has no folder 'jurisdictions' in it (name the folder of a book: the one that has "
                    + "jurisdictions/ and schema/)"
            );
    }

    [Fact]
    public void A_folder_without_jurisdictions_is_not_a_book()
    {
        using var folder = new TemporaryFolder();

        Should.Throw<InputException>(() => BookFolder.Load(folder.Path)).Problems.ShouldHaveSingleItem().Code.ShouldBe("not-a-book");
        Should.Throw<InputException>(() => BookFolder.Load("/no/such/folder")).Problems.ShouldHaveSingleItem().Code.ShouldBe("not-a-book");
    }

    [Fact]
    public void A_file_of_another_kind_is_reported_and_a_hidden_one_is_not()
    {
        using var folder = new TemporaryFolder();
        folder.Write("jurisdictions/au/ride-height.yml", "");
        folder.Write("jurisdictions/au/.a.yaml.swp", "");
        folder.Write("jurisdictions/readme.txt", "");

        BookFolder
            .Load(folder.Path)
            .Problems.Select(problem => $"{problem.Mark.File} {problem.Code}")
            .Order(StringComparer.Ordinal)
            .ShouldBe(["jurisdictions/au/ride-height.yml stray-file", "jurisdictions/readme.txt stray-file"]);
    }

    [Fact]
    public void A_file_that_cannot_be_read_does_not_hide_the_others()
    {
        using var folder = new TemporaryFolder();
        folder.Write("jurisdictions/au/a.yaml", new string('x', 1024 * 1024 + 1));
        folder.Write("jurisdictions/au/b.yaml", "b");

        var book = BookFolder.Load(folder.Path);

        book.Files.ShouldHaveSingleItem().Path.ShouldBe("jurisdictions/au/b.yaml");
        book.Problems.ShouldHaveSingleItem().Code.ShouldBe("too-large");
    }
}
