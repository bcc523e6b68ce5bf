using System.Collections.Immutable;
using RuleBook.Authoring.Cases;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Cases;

/// <summary>
/// All that is told of cases of the invented book: what comes out otherwise than expected, in order, and what is refused, word for word
/// (derived from the figures of <c>tests/invented-book</c>).
/// </summary>
[Trait("Basis", "derived")]
public sealed class ToldCaseTests
{
    private const string NotAChange = "is not a change (the folder gives the jurisdiction; 'on' or 'dates' stand beside 'changes')";

    /// <summary>
    /// In 2016 the north has the nation's limits: no more than 50 mm and 5 mm are free, 65 mm and 5 mm are for the wright to certify; the
    /// swap of springs is not established, which leaves open whether more than that is needed. The wright issues two papers and is asked
    /// before the work.
    /// </summary>
    [Fact]
    public void Everything_that_differs_is_told_rule_by_rule_in_the_order_of_their_names() =>
        Failures(
                "xa-n",
                "four-wheel-drive: yes, ratings: { gvm: 2000 kg }",
                "suspension-lift: 60 mm",
                "2016-04-01",
                "verdict: no-certificate, asks: [vehicle.seats], issued: [], certifier: nobody, before-work: 2, may-certify: yes, "
                    + "findings: { swap: nothing, raise: [no-certificate, approval] }, conditions: [], "
                    + "conditions-of: { swap: [lane-change-test], raise: [no-wheel-spacers] }, codes-of: { swap: [LS1], raise: [LS9] }, "
                    + "warning-only: { swap: open, raise: \"no\" }, decides: body-lift"
            )
            .ShouldBe([
                "expected no-certificate, got certificate to prohibited",
                "expected to be asked for vehicle.seats, got nothing",
                "expected to be issued nothing, got certificate, plate",
                "expected nobody to certify, got wright",
                "expected 2 steps before the work, got 1",
                "expected that the certifier may certify: yes, got: nobody is named (nothing)",
                "expected xa-n/ride-height/raise to give no-certificate to approval, got certificate",
                "expected xa-n/ride-height/swap to give nothing, got no-certificate to prohibited",
                "expected the conditions nothing, got lane-change-test",
                "expected of xa-n/ride-height/raise the conditions no-wheel-spacers, got lane-change-test",
                "expected of xa-n/ride-height/swap the conditions lane-change-test, got nothing",
                "expected of xa-n/ride-height/raise the codes LS9, got LK2, LS9",
                "expected of xa-n/ride-height/swap the codes LS1, got nothing",
                "expected of xa-n/ride-height/raise that a breach brings a warning only: no, got yes",
                "expected of xa-n/ride-height/swap that a breach brings a warning only: open, got no",
                "expected body-lift to decide, got nothing",
            ]);

    /// <summary>
    /// In the south springs and half of the tyres' growth count together: under 60 mm with two conditions, 90 mm where built from 2000 on.
    /// A block may be 22 mm. A wright is the certifier, with no paper and no step; one from elsewhere than the nation and the north is not.
    /// </summary>
    [Theory]
    [InlineData(
        "suspension-lift: 59 mm, body-lift: 10 mm",
        "verdict: no-certificate, decides: total-lift, asks: [], issued: [], certifier: wright, before-work: 0, "
            + "conditions: [no-wheel-spacers, lane-change-test], findings: { raise: no-certificate, block: no-certificate, "
            + "other: nothing }, "
            + "conditions-of: { block: [], raise: [no-wheel-spacers, lane-change-test] }, codes-of: { raise: [] }, "
            + "warning-only: { raise: \"no\", other: \"no\" }"
    )]
    [InlineData(
        "suspension-lift: 59 mm, body-lift: 21 mm",
        "verdict: no-certificate, decides: gvm",
        "expected gvm to decide, got body-lift, total-lift"
    )]
    [InlineData(
        "suspension-lift: 60 mm",
        "between: [no-certificate, certificate], decides: total-lift",
        "expected no-certificate to certificate, got certificate"
    )]
    [InlineData("suspension-lift: 60 mm", "verdict: undecided", "expected undecided, got certificate")]
    [InlineData("suspension-lift: 90 mm", "verdict: certificate, before-work: yes", "expected some steps before the work, got 0")]
    [InlineData("suspension-lift: 90 mm", "verdict: certificate, before-work: no")]
    [InlineData("suspension-lift: 90.1 mm", "verdict: approval, certifier: nobody", "expected nobody to certify, got wright")]
    public void What_comes_out_as_expected_is_not_told(string changes, string expect, params string[] failures) =>
        Failures("xa-s", "category: MC, built: 2010-01-01", changes, "2019-06-01", expect).ShouldBe(failures);

    /// <summary>Of several limits of one tier the nearest decides: 5 mm are left of 50 mm, or 1 mm of 30 mm.</summary>
    [Theory]
    [InlineData("suspension-lift: 45 mm, body-lift: 10 mm", "suspension-lift")]
    [InlineData("suspension-lift: 10 mm, body-lift: 29 mm", "body-lift")]
    [InlineData("suspension-lift: 50.1 mm, body-lift: 10 mm", "suspension-lift")]
    public void Of_the_limits_that_are_kept_the_nearest_decides(string changes, string decides) =>
        Failures(
                SmallBook.WithVersions(
                    "- {from: 2012-01-01, sources: [{cite: law}], beyond: certificate, "
                        + "tiers: [{pathway: no-certificate, within: {suspension-lift: 50 mm, body-lift: 30 mm}}]}"
                ),
                "au-qld",
                "category: MC",
                changes,
                "2019-06-01",
                "findings: {}, decides: gvm"
            )
            .ShouldBe([$"expected gvm to decide, got {decides}"]);

    /// <summary>Each line of the file is wrong in one way, or in two; the places are counted by hand.</summary>
    [Fact]
    public void What_is_wrong_in_a_case_is_told_word_for_word_with_a_tip()
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "xa-s/ride-height.yaml",
            """
            vehicles: { wagon: { category: MC } }
            cases:
              - { id: a, says: S., vehicle: waggon, on: 2019-06-01, expect: { verdict: certificate }, because: { memory: so } }
              - { id: b, says: S., vehicle: wagon, on: 2019-06-01, expect: { decides: total-lift }, because: { memory: so } }
              - { id: c, says: S., vehicle: wagon, on: 2019-06-01, expect: { between: [certificate, certificate] }, because: { memory: so } }
              - { id: d, says: S., vehicle: wagon, on: 2019-06-01, expect: { findings: { rise: nothing } }, because: { memory: so } }
              - { id: e, says: S., vehicle: wagon, on: 2019-06-01, expect: { findings: { raise: noting } }, because: { memory: so } }
              - { id: f, says: S., vehicle: wagon, on: 2019-06-01, expect: { verdict: undecided, conditions: [lane-change] }, because: { } }
              - { id: g, says: S., vehicle: wagon, on: 2019-06-01, expect: { verdict: approval }, because: { source: acts } }
              - { id: h, says: S., vehicle: wagon, on: 2019-06-01, each: { job: [] }, because: { memory: so } }
              - { id: i, says: S., vehicle: wagon, on: 2019-06-01, changes: { on: 2019-06-02 }, expect: { verdict: approval } }
              - { id: j, says: S., vehicle: wagon, changes: { vehicle: { category: NA } }, each: { vehicle.category: [MC] },
                  on: 2019-06-01, expect: { verdict: approval, between: [certificate, approval] }, because: { memory: so } }
              - { id: k, says: S., vehicle: wagon, on: 2019-06-01, expect: { codes-of: { raise: [LS1] }, before-work: 6 }, because: { memory: so } }
            """
        );

        Refused(folder)
            .ShouldBe([
                "3:33: error unknown-vehicle: 'waggon' is not among the vehicles of this file (did you mean 'wagon'?)",
                "4:64: error one-content: a case expects a verdict or a range, or what single rules give (give 'verdict: certificate' or "
                    + "'between: [certificate, prohibited]')",
                "5:64: error wrong-shape: a range goes from the least to the most onerous pathway (write 'between: "
                    + "[certificate, prohibited]')",
                "6:78: error unknown-rule: 'rise' is not a rule of xa-s/ride-height (did you mean 'raise'?)",
                "7:85: error not-a-word: 'noting' is not one of no-certificate, certificate, approval, prohibited",
                "8:98: error not-a-word: 'lane-change' is not in the vocabulary (did you mean 'lane-change-test'?)",
                "8:124: error one-content: a case rests on one thing (give a source with its clause, common-practice or memory)",
                "9:96: error unknown-source: 'acts' is not a source of xa-s (did you mean 'act'?)",
                "10:5: error missing-key: the key 'expect' is missing (add 'expect:')",
                $"10:64: error unknown-key: 'job' {NotAChange}",
                "10:69: error wrong-shape: 'job' has no value (give at least one: a case without a value is never run)",
                "11:5: error missing-key: the key 'because' is missing (add 'because:')",
                $"11:67: error unknown-key: 'on' {NotAChange}",
                "12:72: error contradiction: 'vehicle.category' is changed here and has values under 'each' (keep one of the two)",
                "13:31: error one-content: a case expects a verdict or a range, or what single rules give (give 'verdict: certificate' or "
                    + "'between: [certificate, prohibited]')",
                "14:107: error not-a-word: '6' is not one of yes, no, 0, 1, 2, 3, 4, 5",
            ]);
    }

    [Fact]
    public void A_folder_and_a_file_that_are_not_of_the_book_are_told_and_ids_are_one_over_all_files()
    {
        const string Case =
            "vehicles: { wagon: {} }\ncases:\n  - { id: one, says: S., vehicle: wagon, on: 2019-06-01, expect: { verdict: undecided }, "
            + "because: { memory: so } }\n";
        using var folder = new TemporaryFolder();
        folder.Write("xa-s/ride-height.yaml", Case);
        folder.Write("xa-s/towing.yaml", Case);
        folder.Write("xa-s/ride-hight.yaml", Case);
        folder.Write("xa-x/towing.yaml", Case);
        folder.Write("xa-n/more/towing.yaml", Case);
        folder.Write("xa-n/towing.yaml", "cases: [");

        Told(folder)
            .ShouldBe([
                "tests/cases/xa-n/more/towing.yaml:1:1: error wrong-folder: 'xa-n/more/towing.yaml' does not name a "
                    + "jurisdiction and a topic "
                    + "of the book (name it <jurisdiction>/<topic>.yaml)",
                "tests/cases/xa-n/towing.yaml:1:8: error yaml-syntax: the bracket of line 1 is not closed (close it with ])",
                "tests/cases/xa-s/ride-hight.yaml:1:1: error wrong-folder: 'xa-s/ride-hight.yaml' does not name a jurisdiction and a topic "
                    + "of the book (name it <jurisdiction>/<topic>.yaml)",
                "tests/cases/xa-s/towing.yaml:3:5: error duplicate-id: the id 'one' is already used at "
                    + "tests/cases/xa-s/ride-height.yaml:3:5 "
                    + "(an id names one case for ever)",
                "tests/cases/xa-x/towing.yaml:1:1: error wrong-folder: 'xa-x/towing.yaml' does not name a jurisdiction and a topic of the "
                    + "book (name it <jurisdiction>/<topic>.yaml)",
            ]);
    }

    [Fact]
    public void A_folder_without_a_case_or_that_is_not_there_is_told()
    {
        using var folder = new TemporaryFolder();
        var none =
            $"{folder.Path}/none:1:1: error no-case: there is no case in the folder (a run without a case proves nothing: name the folder "
            + "that has them)";

        Should.Throw<InputException>(() => CaseFolder.Load($"{folder.Path}/none", InventedBook.WithSouth)).Message.ShouldBe(none);
    }

    private static IEnumerable<string> Refused(TemporaryFolder folder) =>
        Told(folder).Select(line => line["tests/cases/xa-s/ride-height.yaml:".Length..]);

    private static IEnumerable<string> Told(TemporaryFolder folder) =>
        Should
            .Throw<InputException>(() => CaseFolder.Load(folder.Path, InventedBook.WithSouth))
            .Problems.Select(problem => problem.ToString());

    private static ImmutableArray<string> Failures(string place, string vehicle, string changes, string day, string expect) =>
        Failures(InventedBook.WithSouth, place, vehicle, changes, day, expect);

    private static ImmutableArray<string> Failures(Book book, string place, string vehicle, string changes, string day, string expect) =>
        CaseRun
            .Run(
                book,
                Read(
                        book,
                        place,
                        $$"""
                        vehicles: { wagon: { {{vehicle}} } }
                        cases:
                          - id: one
                            says: A sentence.
                            vehicle: wagon
                            changes: { modification: { {{changes}} } }
                            on: {{day}}
                            expect: { {{expect}} }
                            because: { memory: so }
                        """
                    )
                    .ShouldHaveSingleItem()
            )
            .Failures;

    private static ImmutableArray<Case> Read(Book book, string place, string text)
    {
        var problems = new List<Problem>();
        var cases = new CaseReader(book, place, "ride-height", problems).Read(YamlText.Read(text, "f"));
        problems.ShouldBeEmpty();
        return cases;
    }
}
