using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>Which copy of a document was read is data, told in words (invented documents).</summary>
public sealed class SourceWordsTests
{
    [Theory]
    [InlineData("copy: upload", "Read in an upload of the document.")]
    [InlineData("copy: [stored, undated]", "Read in a stored copy of the page. The copy bears no date.")]
    [InlineData("copy: [database, re-hosted]", "Read in a legal database and a re-hosted copy.")]
    [InlineData("copy: [own, whole]", "Read in the authority's own copy.")]
    [InlineData("copy: mirror, note: Two pages.", "Read in a mirror. Two pages.")]
    [InlineData(
        "copy: reproduction, from: 2013-07-01, until: 2021-09",
        "Read in a reproduction of legislation. In force since 2013-07-01. No longer in force since 2021-09."
    )]
    [InlineData("copy: undated, note: Of 4 pages.", "The copy bears no date. Of 4 pages.")]
    [InlineData("note: Of 4 pages.", "Of 4 pages.")]
    public void A_source_tells_its_copy_and_its_days_before_its_note(string keys, string told) =>
        SourceWords.About(Read(keys, [])).ShouldBe(told);

    [Theory]
    [InlineData("copy: own", "whole, as far as the note does not say otherwise")]
    [InlineData("copy: [own, whole], clauses: none", "whole; it has no clause numbers")]
    [InlineData("copy: upload, parts-read: [cover]", "only cover")]
    [InlineData("parts-read: []", "nothing of it; known from what others wrote")]
    public void Only_a_source_that_was_read_whole_is_told_so_without_reserve(string keys, string told) =>
        SourceWords.PartsRead(Read(keys, [])).ShouldBe(told);

    [Fact]
    public void A_word_for_a_copy_that_is_not_among_them_is_refused()
    {
        var problems = new List<Problem>();
        Read("copy: [uploaded, undated]", problems).Copy.ShouldBe(["undated"]);

        problems.Select(problem => problem.Code).ShouldBe(["not-a-word"]);
    }

    private static Source Read(string keys, List<Problem> problems) =>
        SourceReader
            .ReadAll(
                new Fields(
                    YamlText.Read(
                        "{ sources: [ { source: law, title: Law, publisher: Somebody, read-as: primary, checked: 2026-11-25, "
                            + $"recheck-after: 2027-11-25, {keys} }} ] }}",
                        "sources.yaml"
                    ),
                    problems
                ),
                "au"
            )
            .Single();
}
