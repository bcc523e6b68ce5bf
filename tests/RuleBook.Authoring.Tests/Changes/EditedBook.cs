using RuleBook.Answers;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Changes;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>Books that differ in something, and jobs put to both.</summary>
internal static class EditedBook
{
    /// <summary>The book of this repository with the text of some files changed.</summary>
    public static Book Of(Func<string, bool> chosen, Func<string, string> edit)
    {
        var folder = BookFolder.Load(TestBook.Folder);
        var edited = folder with
        {
            Files = [.. folder.Files.Select(file => chosen(file.Path) ? file with { Text = edit(file.Text) } : file)],
        };
        var problems = new List<Problem>();
        var book = BookReader.Read(BookNodes.Read(edited, problems), BookDigest.Of(edited.Files), problems);
        problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
        book.Digest.ShouldNotBe(TestBook.Book.Digest, "the edit changes nothing");
        return book;
    }

    /// <summary>What changes from one small book to another.</summary>
    public static ChangeReport Between(Book before, Book after) => BookChanges.Between(before, after with { Digest = "sha256:other" });

    public static Outcome Answer(Book book, string job) => Assessor.Assess(book, JobReader.Read(YamlText.Read(job, "job"), book)).Between;

    /// <summary>A full assessment of every witness in both books gives what the report says of it.</summary>
    public static void ShouldBeConfirmed(this ChangeReport report, Book before, Book after)
    {
        foreach (var change in report.Answers)
        {
            Answer(before, change.Witness.Yaml).ShouldBe(change.Before, change.Witness.Yaml);
            Answer(after, change.Witness.Yaml).ShouldBe(change.After, change.Witness.Yaml);
            if (change.Furthest is not { } furthest)
                continue;
            Answer(before, furthest.Yaml).ShouldBe(change.Before, furthest.Yaml);
            Answer(after, furthest.Yaml).ShouldBe(change.After, furthest.Yaml);
        }
    }

    public static Outcome Only(Pathway pathway) => new(pathway, pathway);
}
