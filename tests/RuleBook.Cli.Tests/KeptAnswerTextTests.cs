using RuleBook.Authoring.Records;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Text;
using static RuleBook.Cli.Tests.TextByHand;

namespace RuleBook.Cli.Tests;

/// <summary>Letters and kept answers read whole, as somebody would write them by hand who knew the facts.</summary>
public sealed class KeptAnswerTextTests
{
    private static readonly SavedRecord Kept = new(
        "1.2.0",
        null,
        "sha256:fedcba9876543210",
        new DateOnly(2025, 3, 4),
        null,
        new Mapping([], Line7),
        """{"job":"W-1","jurisdiction":"xa"}""",
        []
    );

    private static readonly AnswerComparison Moved = new(
        false,
        ("allowed without a certificate", "allowed with a certificate"),
        [
            new(DifferenceKind.RuleChanged, "xa/ride-height/raise", "version in force", "since 2012", "since 2025-07-01", "2025-07-01"),
            new(DifferenceKind.FigureCorrected, "xa/ride-height/raise", "suspension-lift (free)", "at-most 50 mm", "at-most 40 mm", ""),
            new(DifferenceKind.Condition, "xa/ride-height/raise", "lane-change-test", null, "to-show", null),
            new(DifferenceKind.Reckoned, "", "total-lift", "60 mm", null, null),
            new(DifferenceKind.Blocker, "", "over-gvm", null, "the GVM is exceeded", null),
        ]
    );

    private static readonly AnswerComparison RestsOnOther = new(false, null, [Moved.Differences[3]]);
    private static readonly AnswerComparison Same = new(true, null, []);
    private static readonly AnswerComparison OtherWords = new(false, null, []);

    [Fact]
    public void A_letter_says_what_was_said_what_holds_and_why() =>
        Letter
            .Of(new Rechecked("wagon.json", Kept, Kept, Moved, Moved, null, null), IsleBook, Day)
            .ShouldBe(
                """
                25 November 2026

                About your vehicle modification, job W-1

                On 4 March 2025 we gave you an answer by the rules of The isle. It no longer stands.

                  What we said:  allowed without a certificate
                  What holds:    allowed with a certificate

                Why:
                  - rule changed: xa/ride-height/raise, version in force: since 2012 -> since 2025-07-01 (since 2025-07-01)
                  - figure corrected: xa/ride-height/raise, suspension-lift (free): at-most 50 mm -> at-most 40 mm
                  - condition: xa/ride-height/raise, lane-change-test: not there -> to-show
                  - reckoned differently: total-lift: 60 mm -> not there
                  - stands in the way: over-gvm: not there -> the GVM is exceeded

                If the work were done today: allowed with a certificate.

                Please do not rely on the earlier answer, and speak to us before the vehicle is used, modified further or presented for inspection.
                This is not legal advice: the authority of the state of registration and the licensed certifier decide.

                Earlier answer: book fedcba987654. This one: book 0123456789ab.

                Name, signature: ______________________________

                """
            );

    [Fact]
    public void A_letter_about_the_same_decision_says_that_it_is_the_same_and_names_an_unknown_place_by_its_id() =>
        Letter
            .Of(
                new Rechecked("w.json", Kept with { Answer = """{"job":7,"jurisdiction":"xz"}""" }, Kept, RestsOnOther, Same, null, null),
                IsleBook with
                {
                    Editions = [new Edition("2026.11.1", Day, IsleBook.Digest, Line7)],
                },
                Day
            )
            .ShouldBe(
                """
                25 November 2026

                About your vehicle modification

                On 4 March 2025 we gave you an answer by the rules of xz. It no longer stands.

                The decision is the same; what it rests on is not.

                Why:
                  - reckoned differently: total-lift: 60 mm -> not there

                Please do not rely on the earlier answer, and speak to us before the vehicle is used, modified further or presented for inspection.
                This is not legal advice: the authority of the state of registration and the licensed certifier decide.

                Earlier answer: book fedcba987654. This one: edition 2026.11.1.

                Name, signature: ______________________________

                """
            );

    [Fact]
    public void Kept_answers_are_counted_and_each_is_told_with_what_differs() =>
        Told(page =>
                RecordText.Rechecked(
                    page,
                    [
                        Rechecked.Refused("kept/a.json", Problem.Error("not-a-record", Line7, "it is damaged", "")),
                        new("kept/b.json", Kept, Kept, Moved, Same, null, null),
                        new("kept/c.json", Kept, Kept, RestsOnOther, Same, null, null),
                        new("kept/d.json", Kept, Kept, Same, Moved with { Differences = [Moved.Differences[0]] }, null, null),
                        new("kept/e.json", Kept, Kept, OtherWords, OtherWords, null, null),
                        new("kept/f.json", Kept, Kept, Same, Same, null, null),
                    ],
                    IsleBook
                )
            )
            .ShouldBe(
                """
                6 kept answers by book 0123456789ab: 2 no longer stand, 1 would be others today, 1 not asked.
                  ? a.json: it is damaged
                  x b.json: NO LONGER STANDS: allowed without a certificate -> allowed with a certificate
                    rule changed: xa/ride-height/raise, version in force: since 2012 -> since 2025-07-01
                    figure corrected: xa/ride-height/raise, suspension-lift (free): at-most 50 mm -> at-most 40 mm
                    condition: xa/ride-height/raise, lane-change-test: not there -> to-show
                    reckoned differently: total-lift: 60 mm -> not there
                    stands in the way: over-gvm: not there -> the GVM is exceeded
                  x c.json: the same decision; what it rests on differs
                    reckoned differently: total-lift: 60 mm -> not there
                  ! d.json: stands for its day; today: allowed with a certificate
                    rule changed: xa/ride-height/raise, version in force: since 2012 -> since 2025-07-01
                  ok e.json: stands, in other words
                  ok f.json: stands
                """
            );

    public static TheoryData<string, string> Comparisons() =>
        new()
        {
            { nameof(Same), "The same answer, to the byte." },
            { nameof(OtherWords), "The same answer in other words: nothing that decides differs." },
            { nameof(Moved), "ANOTHER ANSWER: allowed without a certificate -> allowed with a certificate." },
            { nameof(RestsOnOther), "The same decision; what it rests on differs." },
        };

    [Theory]
    [MemberData(nameof(Comparisons))]
    public void A_kept_answer_asked_again_says_first_whether_it_is_the_same(string compared, string first)
    {
        var comparison = compared switch
        {
            nameof(Same) => Same,
            nameof(OtherWords) => OtherWords,
            nameof(Moved) => Moved,
            _ => RestsOnOther,
        };
        string[] differences = compared is nameof(RestsOnOther) ? ["  - reckoned differently: total-lift: 60 mm -> not there"] : [];
        if (compared is not nameof(Moved))
            Told(page => RecordText.Replayed(page, Kept, IsleBook, comparison, "2.0.0"))
                .Split('\n')
                .ShouldBe([
                    first,
                    "Kept: 4 March 2025, book fedcba987654, rulebook 1.2.0.",
                    "Asked again: book 0123456789ab, rulebook 2.0.0.",
                    .. differences,
                    "With the edition that it was made with: --book FILE, the file that 'rulebook pack' wrote.",
                ]);
        else
            Told(page => RecordText.Replayed(page, Kept with { Book = IsleBook.Digest }, IsleBook, comparison, "2.0.0"))
                .ShouldEndWith("\n  - stands in the way: over-gvm: not there -> the GVM is exceeded");
    }
}
