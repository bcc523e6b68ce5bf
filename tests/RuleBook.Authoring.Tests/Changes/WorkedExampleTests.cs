using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Editions;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using RuleBook.Tables;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// A maintainer's usual edits, made on the book of this repository as DEVELOPERS.md tells them. The new figures are invented.
/// </summary>
public sealed class WorkedExampleTests
{
    private const string National = "jurisdictions/au/ride-height.yaml";
    private const string Queensland = "jurisdictions/au-qld/ride-height.yaml";

    private const string Source =
        "sources:\n  - { source: vsb14-ls-2027, title: Invented, publisher: Invented, read-as: primary, checked: 2026-11-28, "
        + "recheck-after: 2027-11-28 }\n";

    [Fact]
    public void One_figure_of_the_national_rule_is_amended_in_six_lines_and_Victoria_which_adopts_it_as_amended_follows_on_the_day()
    {
        var lines = Block("**A version says only what changes.**");
        var amended = WeakenedBook.With(
            ("jurisdictions/au/sources.yaml", "sources:\n", Source),
            (National, "\n  - rule: raise-other-vehicle\n", $"\n{lines}  - rule: raise-other-vehicle\n")
        );

        lines.Count(letter => letter == '\n').ShouldBeLessThanOrEqualTo(6);
        Victorian(amended, "2027-06-30", "130 mm").ShouldBe(Victorian(TestBook.Book, "2027-06-30", "130 mm"));
        // The figure amended is 125 mm.
        Victorian(amended, "2027-07-01", "125 mm").ShouldBe(Victorian(TestBook.Book, "2027-07-01", "125 mm"));
        Victorian(amended, "2027-07-01", "130 mm").ShouldNotBe(Victorian(TestBook.Book, "2027-07-01", "130 mm"));
        var report = WeakenedBook.Changes(amended, "jurisdictions/au-vic/ride-height.yaml");
        report.Answers.ShouldNotBeEmpty();
        report.Answers.ShouldAllBe(change => change.From == new DateOnly(2027, 7, 1));
        report.ShouldBeConfirmed(TestBook.Book, amended);
    }

    [Fact]
    public void A_past_figure_corrected_in_its_place_tells_that_answers_were_wrong_and_since_when()
    {
        const string Figure = "within: { suspension-lift: 75 mm, tyre-lift: 25 mm, body-lift: 50 mm, total-lift: 150 mm }";
        const string End = "        beyond: not-established\n        disputed:\n          - about: who may be certified up to 150 mm\n";
        var corrected = WeakenedBook.With(
            (Queensland, Figure, Figure.Replace("75 mm", "65 mm", StringComparison.Ordinal)),
            (Queensland, End, Block("**A figure was wrong.**") + End)
        );

        var report = WeakenedBook.Changes(corrected, Queensland);

        var told = report.Remarks.Where(remark => remark.Kind == RemarkKind.Corrected).ShouldHaveSingleItem();
        told.Text.ShouldStartWith("past answers were wrong");
        told.From.ShouldBe(new DateOnly(2018, 10, 26)); // standards-notifications-2018
        report.Answers.ShouldAllBe(change => change.From == new DateOnly(2018, 10, 26));
        EditionDraft
            .News(report, new DateOnly(2026, 11, 27))
            .ShouldContain(news => news.Kind == NewsKind.Corrected && news.Text.Contains("past answers were wrong"));
    }

    /// <summary>A place that does not exist, with an invented table of two classes.</summary>
    [Theory]
    [InlineData("4500 lb", "24 in", Pathway.NoCertificate)]
    [InlineData("4500 lb", "24.1 in", Pathway.Prohibited)]
    [InlineData("4501 lb", "24.1 in", Pathway.NoCertificate)]
    [InlineData("4501 lb", "27.1 in", Pathway.Prohibited)]
    public void A_province_with_a_table_by_classes_is_three_files_and_judges_each_class_by_its_own_row(
        string gvm,
        string front,
        Pathway pathway
    )
    {
        var report = Province.Value;

        report.Problems.Where(problem => problem.Mark.File.Contains("/ca-zz/", StringComparison.Ordinal)).ShouldBeEmpty();
        Answer(
                report.Book!,
                $$"""
                registered-in: ca-zz
                on: 2026-11-28
                vehicle: { category: MC, ratings: { gvm: {{gvm}} } }
                modification: { suspension-lift: 1 in }
                measured: { front-bumper-height: {{front}}, rear-bumper-height: 25 in }
                shown: { bumper-at-least-4-5-in-high: yes }
                """
            )
            .ShouldBe(Only(pathway));
    }

    private static readonly Lazy<InspectionReport> Province = new(() =>
        WeakenedBook.And(
            (
                "jurisdictions/ca-zz/jurisdiction.yaml",
                """
                jurisdiction: ca-zz
                name: Invented province
                registers: yes
                ask: { authority: The province's department }
                coverage:
                  - { topic: ride-height, state: partial, lacks: Everything; it is invented. }
                  - { topic: other, state: none, lacks: Nothing collected. }
                """
            ),
            (
                "jurisdictions/ca-zz/sources.yaml",
                """
                jurisdiction: ca-zz
                sources:
                  - { source: act, title: Invented act, publisher: The province, read-as: primary, checked: 2026-11-28,
                      recheck-after: 2027-11-28 }
                """
            ),
            (
                "jurisdictions/ca-zz/ride-height.yaml",
                $$"""
                jurisdiction: ca-zz
                topic: ride-height
                rules:
                  - rule: bumper-height
                    title: Bumper height
                    versions:
                      - from: 2020-01-01
                        sources: [ { cite: act, clause: "1" } ]
                {{Block("**A table by classes**").TrimEnd()}}
                        beyond: prohibited
                """
            )
        )
    );

    /// <summary>The first block of YAML after a heading of DEVELOPERS.md.</summary>
    private static string Block(string after)
    {
        var developers = File.ReadAllText(Path.Combine(TestBook.Folder, "DEVELOPERS.md"));
        return developers[developers.IndexOf(after, StringComparison.Ordinal)..].Split("```yaml\n")[1].Split("```")[0];
    }

    private static Outcome Victorian(Book book, string on, string lift) =>
        Answer(
            book,
            $$"""
            registered-in: au-vic
            on: {{on}}
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: no }
            modification: { suspension-lift: {{lift}} }
            """
        );
}
