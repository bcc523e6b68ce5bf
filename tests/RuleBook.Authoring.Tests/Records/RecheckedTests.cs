using RuleBook.Authoring.Records;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Records;

/// <summary>A kept answer asked again of a book that was corrected, or in which the law went on (derived from invented limits).</summary>
[Trait("Basis", "derived")]
public sealed class RecheckedTests
{
    private const string Since = "- {from: 2012-01-01, sources: [{cite: law}], beyond: prohibited, ";
    private const string Later = "\n- {from: 2025-01-01, sources: [{cite: law}], beyond: prohibited, ";
    private static readonly DateOnly Today = new(2026, 11, 28);
    private static readonly Mapping Job = (Mapping)
        YamlText.Read(
            "{ registered-in: au-qld, on: 2020-01-01, vehicle: { category: MC }, modification: { suspension-lift: 45 mm } }",
            "job"
        );

    /// <summary>50 mm were free when the answer was made.</summary>
    [Theory]
    [InlineData("50 mm", null, true, false, false, false)]
    [InlineData("40 mm", null, false, false, true, false)] // it was wrong
    [InlineData("48 mm", null, false, false, true, false)] // a figure that decides was wrong, with the same decision
    [InlineData("50 mm", "40 mm", false, true, false, true)] // the law went on: the answer says until when it held
    [InlineData("50 mm", "48 mm", false, true, false, false)] // and the same work may still be done
    [InlineData("40 mm", "50 mm", false, false, true, true)]
    public void An_answer_changed_where_its_own_day_is_answered_otherwise_and_moved_on_where_today_is(
        string limit,
        string? later,
        bool same,
        bool onlyWords,
        bool changed,
        bool movedOn
    )
    {
        var kept = Made(SmallBook.WithVersions(Since + Tiers("50 mm")));
        var book = SmallBook.WithVersions(Since + Tiers(limit) + (later is null ? "" : Later + Tiers(later)));

        var again = Rechecked.Of("kept.json", kept, book, "2.0.0", Today);

        (again.OwnDay!.Same, again.OwnDay.OnlyWords, again.Changed, again.MovedOn).ShouldBe((same, onlyWords, changed, movedOn));
        (again.File, again.Kept, again.Problem).ShouldBe(("kept.json", kept, null));
        (again.Now!.Tool, again.Now.Made, again.Now.Job, again.Now.Place).ShouldBe(("2.0.0", Today, Job, null));
    }

    [Fact]
    public void A_record_that_cannot_be_asked_again_says_why_and_has_no_answer()
    {
        var problem = Problem.Error("not-a-record", new Mark("kept.json", 1, 1), "it is damaged", "");
        var refused = Rechecked.Refused("kept.json", problem);
        refused.ShouldBe(new Rechecked("kept.json", null, null, null, null, null, problem));
        (refused.Changed, refused.MovedOn).ShouldBe((false, false));
    }

    [Fact]
    public void A_place_that_the_book_has_no_more_is_named_with_what_to_do() =>
        Should
            .Throw<InputException>(() =>
                (Made(SmallBook.WithVersions(Since + Tiers("50 mm"))) with { Place = "au-gone" }).Ask(
                    SmallBook.WithVersions(Since + Tiers("50 mm"))
                )
            )
            .Message.ShouldBe(
                "in:1:1: error unknown-jurisdiction: the book has no jurisdiction 'au-gone' (name the edition that the record "
                    + "was made with: "
                    + "--book FILE)"
            );

    [Fact]
    public void A_job_as_on_another_day_loses_all_days_that_it_gives() =>
        SavedRecord
            .AsOn((Mapping)YamlText.Read("{ registered-in: xa, dates: { work: 2019-01-01 }, vehicle: {} }", "job"), Today)
            .Entries.Select(entry => $"{entry.Key.Text}: {(entry.Value as Scalar)?.Text}")
            .ShouldBe(["registered-in: xa", "vehicle: ", "on: 2026-11-28"]);

    private static string Tiers(string limit) => $"tiers: [{{pathway: no-certificate, within: {{suspension-lift: {limit}}}}}]}}";

    private static SavedRecord Made(Book book) =>
        SavedRecord.Of(
            book,
            Job,
            null,
            new SavedRecord("1.0.0", null, book.Digest, Today, null, Job, "{}", []).Ask(book),
            "1.0.0",
            new DateOnly(2020, 1, 1)
        );
}
