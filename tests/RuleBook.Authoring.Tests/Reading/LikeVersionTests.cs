using RuleBook.Authoring.Resolved;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>A version that says only what changes is the version stated in full (derived: each pair says the same twice).</summary>
public sealed class LikeVersionTests
{
    private const string First = """
        - from: 2011-01-01
          sources: [ { cite: law, clause: "1", carries: [from, limits, beyond] } ]
          measured: { mass-state: unladen, total: [suspension-lift] }
          tiers:
            - { pathway: no-certificate, within: { suspension-lift: { at-least: -50 mm, at-most: 50 mm } } }
            - { pathway: certificate, when: { stability-control: no }, within: { suspension-lift: 75 mm }, provided: [lane-change-test],
                codes: [LS9] }
          beyond: not-established
        """;

    [Fact]
    public void An_amendment_of_one_figure_is_four_lines_and_means_the_whole_version() =>
        Same(
            """
            - from: 2018-10-26
              sources: [ { cite: law, clause: "2", carries: [from, certificate.suspension-lift] } ]
              like: 2011-01-01
              change: [ { tier: certificate, within: { suspension-lift: 100 mm } } ]
            """,
            """
            - from: 2018-10-26
              sources: [ { cite: law, clause: "2", carries: [from, certificate.suspension-lift] }, { cite: law, clause: "1",
                carries: [limits, beyond] } ]
              measured: { mass-state: unladen, total: [suspension-lift] }
              tiers:
                - { pathway: no-certificate, within: { suspension-lift: { at-least: -50 mm, at-most: 50 mm } } }
                - { pathway: certificate, when: { stability-control: no }, within: { suspension-lift: 100 mm },
                    provided: [lane-change-test], codes: [LS9] }
              beyond: not-established
            """
        );

    [Fact]
    public void A_version_can_change_what_a_tier_gives_when_it_is_open_its_conditions_and_codes_and_what_holds_beyond() =>
        Same(
            """
            - from: 2018-10-26
              sources: [ { cite: law, clause: "2" } ]
              like: 2011-01-01
              change:
                - { tier: certificate, pathway: approval, when: { stability-control: yes }, provided: [], codes: [LS10] }
                - { tier: no-certificate, drop: yes }
                - { add: { pathway: certificate, name: own, within: { suspension-lift: 60 mm } } }
              beyond: prohibited
            """,
            """
            - from: 2018-10-26
              sources: [ { cite: law, clause: "2" }, { cite: law, clause: "1", carries: [limits, beyond] } ]
              measured: { mass-state: unladen, total: [suspension-lift] }
              tiers:
                - { pathway: certificate, name: own, within: { suspension-lift: 60 mm } }
                - { pathway: approval, name: certificate, when: { stability-control: yes }, within: { suspension-lift: 75 mm },
                    codes: [LS10] }
              beyond: prohibited
            """
        );

    [Fact]
    public void What_the_rule_says_once_holds_for_the_versions_named_and_by_itself_for_those_with_tiers() =>
        SameRule(
            """
                measured: { mass-state: unladen }
                sources: [ { cite: law, clause: "9", carries: beyond, of: 2011-01-01 } ]
                versions:
                  - { from: 2011-01-01, sources: [ { cite: law, clause: "1" } ], tiers: [], beyond: prohibited }
                  - { from: 2018-10-26, sources: [ { cite: law, clause: "2" } ], not-regulated: Repealed. }
            """,
            """
                versions:
                  - { from: 2011-01-01, sources: [ { cite: law, clause: "1" }, { cite: law, clause: "9", carries: beyond } ],
                      measured: { mass-state: unladen }, tiers: [], beyond: prohibited }
                  - { from: 2018-10-26, sources: [ { cite: law, clause: "2" } ], not-regulated: Repealed. }
            """
        );

    [Fact]
    public void An_earlier_source_carries_neither_the_new_day_nor_the_new_figure()
    {
        var book = SmallBook.WithVersions(
            First
                + "\n"
                + """
                - from: 2018-10-26
                  sources: [ { cite: law, clause: "2", carries: from } ]
                  like: 2011-01-01
                  change: [ { tier: certificate, within: { suspension-lift: 100 mm } } ]
                """
        );

        var text = ResolvedText.Of(book, book.Jurisdiction("au-qld")!);

        text.ShouldContain("at most 100 mm (no source)");
        text.ShouldNotContain("at most 50 mm (no source)");
        book.Jurisdiction("au-qld")!.Rules.Single().Versions[1].Like.ShouldBeOfType<Likeness>().From.ShouldBe("2011-01-01");
    }

    [Theory]
    [InlineData("", "As first made.")]
    [InlineData("\n  note: As amended.", "As amended.")]
    public void A_note_stays_until_there_is_another(string own, string note) =>
        SmallBook
            .WithVersions($"{First}\n  note: As first made.\n- from: 2018-10-26\n  sources: [ {{ cite: law }} ]\n  like: 2011-01-01{own}")
            .Jurisdiction("au-qld")!
            .Rules.Single()
            .Versions[1]
            .Note.ShouldBe(note);

    private static void Same(string like, string full) =>
        Text(SmallBook.WithVersions($"{First}\n{like}")).ShouldBe(Text(SmallBook.WithVersions($"{First}\n{full}")));

    private static void SameRule(string one, string other) => Text(OfRule(one)).ShouldBe(Text(OfRule(other)));

    private static Book OfRule(string rest) =>
        SmallBook.Of(("au-qld", $"topic: ride-height\nrules:\n  - rule: raise\n    title: Raising\n{rest}"));

    private static string Text(Book book) => ResolvedText.Of(book, book.Jurisdiction("au-qld")!);
}
