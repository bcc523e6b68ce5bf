using RuleBook.Authoring.Records;
using RuleBook.Authoring.Tests.Changes;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Records;

/// <summary>
/// A kept answer is made again from what was kept, and what differs is told by its kind. Derived: the book is edited by hand here.
/// </summary>
public sealed class RecordTests
{
    private const string Rule = "au-qld/ride-height/raise-four-wheel-drive";
    private const string Job = """
        job: W-0117
        registered-in: au-qld
        on: 2026-11-20
        vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes }
        modification: { suspension-lift: 45 mm }
        """;

    private static readonly Mapping Node = (Mapping)YamlText.Read(Job, "job");
    private static readonly SavedRecord Kept = Made(TestBook.Book);

    [Fact]
    public void The_same_edition_gives_the_same_answer_to_the_byte()
    {
        var read = SavedRecord.Read(Kept.ToJson(), "record");
        AnswerComparison.Of(read.Answer, Again(read, TestBook.Book)).Same.ShouldBeTrue();
        read.ToJson().ShouldBe(Kept.ToJson());
    }

    [Fact]
    public void Other_words_in_the_book_are_told_as_words_only()
    {
        var comparison = Against(text => text.Replace("No later change was found.", "Nothing later was found.", StringComparison.Ordinal));
        (comparison.Same, comparison.OnlyWords).ShouldBe((false, true));
    }

    [Fact]
    public void A_corrected_figure_is_told_with_its_rule_and_both_values()
    {
        var comparison = Against(text =>
            InForce(
                text,
                "within: { suspension-lift: 50 mm, tyre-lift: 25 mm, body-lift: 0 mm, total-lift: 75 mm }",
                "within: { suspension-lift: 40 mm, tyre-lift: 25 mm, body-lift: 0 mm, total-lift: 75 mm }"
            )
        );
        comparison.Decision.ShouldBe(("allowed without a certificate", "allowed with a certificate"));
        var corrected = comparison
            .Differences.Where(each => each.Kind == DifferenceKind.FigureCorrected && each.What == "suspension-lift (no-certificate)")
            .ShouldHaveSingleItem();
        (corrected.Rule, corrected.Before, corrected.Now).ShouldBe((Rule, "at-most 50 mm", "at-most 40 mm"));
        comparison.Differences.ShouldNotContain(each => each.Kind == DifferenceKind.RuleChanged);
    }

    [Fact]
    public void Another_version_in_force_is_told_as_a_changed_rule_with_its_day()
    {
        var comparison = Against(text => text.Replace("2018-10-26", "2018-10-27", StringComparison.Ordinal));
        var moved = comparison.Differences.ShouldHaveSingleItem();
        (moved.Kind, moved.Rule, moved.Since).ShouldBe((DifferenceKind.RuleChanged, Rule, "2018-10-27"));
        comparison.Decision.ShouldBeNull();
    }

    [Fact]
    public void An_answer_that_takes_the_place_of_another_keeps_every_byte_of_it()
    {
        var book = Edited(text => text.Replace("2018-10-26", "2018-10-27", StringComparison.Ordinal));
        var followed = SavedRecord.Read(Kept.Followed(Made(book)).ToJson(), "record");
        SavedRecord.Read(followed.Earlier.ShouldHaveSingleItem(), "earlier").Answer.ShouldBe(Kept.Answer);
        followed.Answer.ShouldBe(Made(book).Answer);
    }

    [Theory]
    [InlineData("{", "it is damaged")]
    [InlineData("[]", "it is no record of an answer")]
    [InlineData("""{ "job": {} }""", "it is no record of an answer")]
    [InlineData("""{ "record": 2, "tool": "9" }""", "its format is 2; this version reads format 1")]
    [InlineData("""{ "record": 1, "tool": "1" }""", "it is damaged")]
    public void What_is_no_record_or_of_a_newer_format_is_refused_by_name(string text, string says)
    {
        var problem = Should.Throw<InputException>(() => SavedRecord.Read(text, "kept.json")).Problems.ShouldHaveSingleItem();
        problem.Mark.File.ShouldBe("kept.json");
        problem.Text.ShouldStartWith(says);
    }

    private static SavedRecord Made(Book book)
    {
        var asked = new SavedRecord("1.0.0", null, book.Digest, new DateOnly(2026, 11, 20), null, Node, "{}", []).Ask(book);
        return SavedRecord.Of(book, Node, null, asked, "1.0.0", new DateOnly(2026, 11, 20));
    }

    private static AnswerComparison Against(Func<string, string> edit) => AnswerComparison.Of(Kept.Answer, Again(Kept, Edited(edit)));

    private static string Again(SavedRecord record, Book book) => AssessmentJson.Write(record.Ask(book)).TrimEnd('\n');

    private static Book Edited(Func<string, string> edit) => EditedBook.Of(path => path == "jurisdictions/au-qld/ride-height.yaml", edit);

    /// <summary>Only in the version in force since 2018-10-26.</summary>
    private static string InForce(string text, string before, string after)
    {
        var at = text.IndexOf("- from: 2018-10-26", StringComparison.Ordinal);
        var found = text.IndexOf(before, at, StringComparison.Ordinal);
        return string.Concat(text.AsSpan(0, found), after, text.AsSpan(found + before.Length));
    }
}
