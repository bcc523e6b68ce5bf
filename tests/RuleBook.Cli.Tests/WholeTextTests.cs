using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Walk;
using RuleBook.Cli.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;
using Spectre.Console;
using static RuleBook.Cli.Tests.TextByHand;

namespace RuleBook.Cli.Tests;

/// <summary>
/// Texts of the command read whole, as somebody would write them by hand who knew the facts; places, rules and figures are invented.
/// </summary>
public sealed class WholeTextTests
{
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

    [Theory]
    [InlineData(0, null, "adopts xa/ride-height/raise as amended")]
    [InlineData(1, null, "adopts xa/ride-height/raise as amended, with 1 exception")]
    [InlineData(2, "2013-05-06", "adopts xa/ride-height/raise as it stood on 6 May 2013, with 2 exceptions")]
    public void An_adoption_is_told_with_its_day_and_how_many_exceptions_it_makes(int exceptions, string? day, string told)
    {
        DateOnly? asOf = day is null ? null : DateOnly.Parse(day, CultureInfo.InvariantCulture);
        var adoption = new Adoption("xa/ride-height/raise", asOf, [], Line7);
        var version = new RuleVersion(null, null, null, null, false, [], null, adoption, [], null, Line7);
        TimelineText
            .What(IsleBook, new Change(null!, ChangeKind.Adopted, null, null, adoption.Rule, asOf, exceptions, version))
            .ShouldBe(told);
    }

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
        // one document of a place leaves none to be asked for
        Told(page => GapsText.Write(page, Day, found[..1], whole: false)).ShouldBe($"{head}{first}{edit}".TrimEnd('\n'));
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
        Told(console => PinText.Write(console, IsleBook, new(3, 2, 9, 4, [To("49 mm"), To("none")])))
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
                    IsleBook,
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

    internal static CaseResult Result(
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
}
