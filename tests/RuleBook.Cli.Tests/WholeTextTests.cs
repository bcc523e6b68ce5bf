using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Records;
using RuleBook.Authoring.Walk;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using Spectre.Console;

namespace RuleBook.Cli.Tests;

/// <summary>
/// Texts of the command read whole, as somebody would write them by hand who knew the facts; places, rules and figures are invented.
/// </summary>
public sealed class WholeTextTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly Mark Line7 = new("jurisdictions/xa/ride-height.yaml", 7, 3);
    private static readonly Outcome Free = new(Pathway.NoCertificate, Pathway.NoCertificate);
    private static readonly Outcome Certified = new(Pathway.Certificate, Pathway.Certificate);

    private static readonly Jurisdiction Isle = new(
        "xa",
        [],
        "The isle",
        null,
        true,
        null,
        null,
        new Authority("The isle's office", null),
        [],
        [],
        [],
        [],
        [],
        Line7
    );

    private static readonly Vocabulary NoWords = new(
        ImmutableDictionary<string, Measure>.Empty,
        ImmutableDictionary<string, FactWord>.Empty,
        ImmutableDictionary<string, Term>.Empty,
        ImmutableDictionary<string, Topic>.Empty,
        ImmutableDictionary<string, Term>.Empty
    );

    private static readonly Book Book = new("sha256:0123456789abcdef", NoWords, [], [Isle]);

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
            .Of(new Rechecked("wagon.json", Kept, Kept, Moved, Moved, null, null), Book, Day)
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
                Book with
                {
                    Editions = [new Edition("2026.11.1", Day, Book.Digest, [], Line7)],
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
                    Book
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
            Told(page => RecordText.Replayed(page, Kept, Book, comparison, "2.0.0"))
                .Split('\n')
                .ShouldBe([
                    first,
                    "Kept: 4 March 2025, book fedcba987654, rulebook 1.2.0.",
                    "Asked again: book 0123456789ab, rulebook 2.0.0.",
                    .. differences,
                    "With the edition that it was made with: --book FILE, the file that 'rulebook pack' wrote.",
                ]);
        else
            Told(page => RecordText.Replayed(page, Kept with { Book = Book.Digest }, Book, comparison, "2.0.0"))
                .ShouldEndWith("\n  - stands in the way: over-gvm: not there -> the GVM is exceeded");
    }

    private static readonly AnswerChange Freed = new(
        "xa",
        "The isle",
        "ride-height",
        "ride height",
        new DateOnly(2020, 7, 1),
        null,
        [new("stability-control", "electronic stability control", ["yes"])],
        Certified,
        Free,
        "xa/ride-height/raise",
        Line7,
        false,
        new ShownJob("registered-in: xa\non: 2020-07-01\n", "suspension lift 41 mm", new DateOnly(2020, 7, 1)),
        new ShownJob("", "suspension lift 50 mm", new DateOnly(2020, 7, 1))
    );

    [Fact]
    public void What_changes_between_two_books_is_told_with_a_job_for_each_answer() =>
        Told(console =>
                ChangesText.Write(
                    console,
                    new ComparedBooks(
                        new("old", "sha256:1"),
                        new("new", "sha256:2"),
                        new(
                            [Freed, Freed with { Removed = true, Vehicles = [], From = null, Furthest = null }],
                            [new(RemarkKind.Other, "xa", "The isle", "xa/ride-height/raise", null, "codes named", Line7)]
                        ),
                        new(
                            3,
                            [new("a.yaml", "W-1", Certified, Free), new("b.yaml", null, null, Free)],
                            [Problem.Error("not-a-date", new Mark("c.yaml", 2, 5), "no day", "")]
                        )
                    )
                )
            )
            .ShouldBe(
                """
                2 answers change, 1 other thing changes, 2 of 3 saved jobs change.

                The isle (xa), ride height
                  - electronic stability control yes, from 1 July 2020: allowed with a certificate -> allowed without a certificate
                    xa/ride-height/raise, jurisdictions/xa/ride-height.yaml:7
                    as well as suspension lift 50 mm
                    for example suspension lift 41 mm:
                      registered-in: xa
                      on: 2020-07-01
                  - every vehicle, on every day: allowed with a certificate -> allowed without a certificate
                    xa/ride-height/raise (removed), jurisdictions/xa/ride-height.yaml:7
                    for example suspension lift 41 mm:
                      registered-in: xa
                      on: 2020-07-01

                Beside the pathways
                  - xa/ride-height/raise: codes named (jurisdictions/xa/ride-height.yaml:7:3)

                Saved jobs: 3 answered, 2 changed
                  - a.yaml (W-1): allowed with a certificate -> allowed without a certificate
                  - b.yaml: could not be read -> allowed without a certificate
                  ! c.yaml:2:5: error not-a-date: no day
                """
            );

    [Fact]
    public void Cases_that_fail_come_first_then_a_line_a_file_and_how_many_are_derived_or_open() =>
        Told(console =>
                CasesText.Write(
                    console,
                    [
                        Result("lift-50"),
                        Result("lift-51", isEdge: true, failures: "the verdict is another"),
                        Result("tow", topic: "towing", open: true),
                    ]
                )
            )
            .ShouldBe(
                """

                tests/cases/xa/ride-height.yaml:3:5: lift-51
                What lift-51 shows.
                  - the verdict is another
                    act, 4: as printed
                  - xa/ride-height: 1 of 2 as expected
                  - xa/towing: 1 of 1 as expected
                3 cases, 1 not as expected
                2 with a reason of their own, 1 edges derived from the figure beside them; in 1 the sources leave the pathway open.
                """
            );

    [Fact]
    public void Documents_nobody_has_read_are_told_with_what_each_settles_and_where_to_edit()
    {
        string[] seven = ["1", "2", "3", "4", "5", "6", "7"];
        ImmutableArray<OpenDocument> found =
        [
            new(Isle, "The act", "The isle's office", [.. seven], [.. seven.Select(_ => Line7)], 9, 4),
            new(Isle, null, "The port", ["8"], [Line7], 2, 0),
        ];
        const string head = """
            What would settle most, as on 25 November 2026
            Counted over a fixed sample of jobs in each jurisdiction: how many answers are undecided for want of this, and for want of nothing else.

            """;
        const string first = """

            The isle (xa): The act
              - undecided for want of it: 9, of these for want of nothing else: 4
              - ask: The isle's office
              - settles: 1
              - settles: 2
              - settles: 3
              - settles: 4
              - settles: 5
              - settles: 6
              - and 1 more

            """;
        const string at = "jurisdictions/xa/ride-height.yaml:7";
        var edit = $"  - then edit: {string.Join(", ", Enumerable.Repeat(at, 6))}\n";
        Told(page => GapsText.Write(page, Day, found, whole: false)).ShouldBe($"{head}{first}{edit}  1 more: rulebook gaps xa");
        Told(page => GapsText.Write(page, Day, found, whole: true))
            .ShouldBe(
                $"""
                {head}{first}{edit}
                The isle (xa): no document is named, somebody has to ask
                  - undecided for want of it: 2, of these for want of nothing else: 0
                  - ask: The port
                  - settles: 8
                  - then edit: {at}
                """
            );
        Told(page => GapsText.Write(page, Day, [found[0] with { LookFor = [.. seven[..6]] }], whole: true))
            .ShouldBe(head + first.Replace("  - and 1 more\n", "", StringComparison.Ordinal) + edit.TrimEnd('\n'));
        Told(page => GapsText.Write(page, Day, [], whole: true)).ShouldBe($"{head}None of them is undecided for want of a document.");
    }

    [Fact]
    public void What_no_case_pins_and_what_a_walk_found_is_told_with_a_job_and_counted()
    {
        var witness = new Witness("xa", Day, ImmutableDictionary<string, string>.Empty, [], []);
        Unpinned To(string becomes) => new("xa/ride-height/raise", Line7, "50 mm", becomes, witness, "no-certificate", "certificate");
        Told(console => PinText.Write(console, Book, new(3, 2, 9, 4, [To("49 mm"), To("none")])))
            .ShouldBe(
                """

                jurisdictions/xa/ride-height.yaml:7:3: xa/ride-height/raise
                50 mm: 49 mm would go unnoticed
                    no-certificate -> certificate
                    registered-in: xa
                    on: 2026-11-25
                    vehicle: {}
                50 mm: none would go unnoticed
                    no-certificate -> certificate
                    registered-in: xa
                    on: 2026-11-25
                    vehicle: {}
                2 of 3 pinned (66 %); 9 changes tried, 4 of them change nothing that a rule gives
                """
            );
        Told(console =>
                WalkText.Write(
                    console,
                    Book,
                    new(2, 3, 40, 5, 60, [new(FaultKind.Hole, "xa/ride-height/raise", Line7, "A hole.", witness)])
                )
            )
            .ShouldBe(
                """

                jurisdictions/xa/ride-height.yaml:7:3: xa/ride-height/raise
                A hole.
                    registered-in: xa
                    on: 2026-11-25
                    vehicle: {}
                2 rules on 3 stretches of days: 40 cells tried, 5 tiers reached, 60 comparisons of partial with full knowledge; 1 faults
                """
            );
    }

    private static CaseResult Result(
        string id,
        string topic = "ride-height",
        bool isEdge = false,
        bool open = false,
        params ImmutableArray<string> failures
    ) =>
        new(
            new Authoring.Cases.Case(
                id,
                $"What {id} shows.",
                "xa",
                topic,
                null!,
                new Mapping([], Line7),
                new Expectation(null, open, null, null, null, null, null, null, null, null, null, null, null, Line7),
                new Because(ReadAs.Primary, "act", "4", "as printed", Line7),
                isEdge,
                new Mark("tests/cases/xa/ride-height.yaml", 3, 5)
            ),
            failures
        );

    private static string Told(Action<Page> write) =>
        Told(console =>
        {
            write(new Page(console));
            return null;
        });

    private static string Told(Func<IAnsiConsole, string?> write)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Out = new AnsiConsoleOutput(output),
            }
        );
        console.Profile.Width = 400;
        write(console);
        return string.Join('\n', output.ToString().TrimEnd('\n').Split('\n').Select(line => line.TrimEnd()));
    }
}
