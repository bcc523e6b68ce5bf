using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Tests.Answers;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.InForce;

/// <summary>How a rule came about, and what a book holds. Derived, on rules of a scenario of our own.</summary>
public sealed class HistoryTests
{
    private const string Moving = """ "adopts": { "rule": "au/ride-height/raise", "as-of": "amended" } """;
    private const string Fixed =
        """ "adopts": { "rule": "au/ride-height/raise", "as-of": "2015-01-01" }, """
        + """ "except": [ { "tier": "certificate", "within": { "total-lift": "125 mm" } } ] """;

    private static readonly (string Path, string Text) National = (
        "jurisdictions/au/ride-height",
        Topic("ride-height", Rule("raise", Since("2012-01-01", Tiers)))
    );

    [Fact]
    [Trait("Basis", "derived")]
    public void Every_change_stands_in_the_order_of_its_day_with_what_it_was()
    {
        var book = Book(
            Rule(
                "raise",
                $$"""
                {{Since(
                    "2010",
                    """ "not-regulated": "no rule" """
                )}}, { "from": "2013-06-01", "until": "2014-01-01", {{Cited}}, {{Tiers}} }, {{Since("2015-07-01", Fixed)}},
                { "announced": "2030-01-01", {{Cited}}, {{Moving}} }, { "proposed": "yes", {{Cited}},
                  "not-established": { "ask": "Office A" } }
                """
            ),
            National
        );
        var changes = History.Of(book, "ride-height");
        changes
            .Select(change => (change.Rule.Jurisdiction, change.Kind, change.Since?.Text))
            .ShouldBe([
                ("au-a", ChangeKind.NotRegulated, "2010"),
                ("au", ChangeKind.Stated, "2012-01-01"),
                ("au-a", ChangeKind.Stated, "2013-06-01"),
                ("au-a", ChangeKind.Ended, "2014-01-01"),
                ("au-a", ChangeKind.Adopted, "2015-07-01"),
                ("au-a", ChangeKind.Announced, "2030-01-01"),
                ("au-a", ChangeKind.Proposed, null),
            ]);
        (changes[4].Adopts, changes[4].AsOf, changes[4].Exceptions).ShouldBe(("au/ride-height/raise", Made.Day("2015-01-01"), 1));
        (changes[5].Adopts, changes[5].AsOf, changes[5].Exceptions).ShouldBe(("au/ride-height/raise", null, 0));
        FurthestLimits
            .Of(book, changes[1].Version)
            .ShouldBe("no-certificate total-lift at most 75 mm; certificate total-lift at most 150 mm");
        History.Of(book, "wheels").ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_end_that_is_the_start_of_the_next_version_is_no_change_of_its_own() =>
        History
            .Of(
                Book(
                    Rule("raise", $$"""{ "from": "2013", "until": "2014-01-01", {{Cited}}, {{Tiers}} }, {{Since("2014-01-01", Tiers)}}""")
                ),
                "ride-height"
            )
            .Select(change => change.Kind)
            .ShouldBe([ChangeKind.Stated, ChangeKind.Stated]);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_version_of_unknown_start_stands_where_it_was_seen() =>
        History
            .Of(
                Book(
                    Rule("raise", $$"""{ "from": "unknown", "in-force-by": "2021", {{Cited}}, "not-established": { "ask": "Office A" } }""")
                ),
                "ride-height"
            )
            .ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                change => change.Since.ShouldBeNull(),
                change => change.SeenBy.ShouldBe(Made.Date("2021")),
                change => change.Kind.ShouldBe(ChangeKind.NotEstablished)
            );

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(Moving, "2015-07-01", "in force since 2015-07-01")]
    [InlineData(Fixed, "2015-07-01", "in force with exceptions since 2015-07-01")]
    [InlineData(Moving, "2027-07-01", "not")]
    public void A_state_is_in_with_a_nations_rule_from_the_day_of_its_adoption(string adoption, string from, string position) =>
        Position(Rule("raise", Since(from, adoption))).ShouldBe(position);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_state_may_have_announced_or_proposed_it_or_not_have_settled_it_or_go_its_own_way()
    {
        Position(Rule("raise", $$"""{ "announced": "2030-01-01", {{Cited}}, {{Moving}} }""")).ShouldBe("announced for 2030-01-01");
        Position(Rule("raise", $$"""{ "proposed": "yes", {{Cited}}, {{Moving}} }""")).ShouldBe("proposed");
        Position(Rule("raise", Since("2012", """ "not-established": { "ask": "Office A", "indication": "au/ride-height/raise" } """)))
            .ShouldBe("not-established");
        Position(Rule("raise", Since("2012", """ "not-established": { "ask": "Office A" } """))).ShouldBe("not");
        Position(Rule("raise", Since("2012", Tiers))).ShouldBe("not");
        Position(Rule("raise", $$"""{ "from": "unknown", "in-force-by": "2021-05", {{Cited}}, {{Moving}} }"""))
            .ShouldBe("in force since an unknown day, seen 2021-05");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_a_book_holds_is_counted_by_how_it_is_known_and_what_is_not_established_apart()
    {
        var holdings = Holdings
            .Of(
                Book(
                    string.Join(
                        ", ",
                        Rule(
                            "raise",
                            $$"""{{Since("2012-01-01", Tiers, "account")}}, {{Since("2015-07-01", Fixed)}}, """
                                + $$"""{ "announced": "2030-01-01", {{Cited}}, {{Tiers}} }"""
                        ),
                        Rule(
                            "other",
                            Since(
                                "2012",
                                """
                                "tiers": [ {
                                  "pathway": "certificate", "within": { "body-lift": "not-established", "suspension-lift": "none" },
                                  "sources": [ { "cite": "recalled" } ]
                                } ],
                                "beyond": "prohibited"
                                """,
                                "practice"
                            )
                        ),
                        Rule("third", Since("2012", """ "not-established": { "ask": "Office A" } """))
                    ),
                    National
                )
            )
            .ToArray();
        holdings
            .Select(each => $"{each.Place.Id} {each.Topic.Name}")
            .Take(5)
            .ShouldBe(["au certification", "au ride-height", "au road-use", "au wheels", "au-a certification"]);
        var own = holdings.Single(each => each is { Place.Id: "au-a", Topic.Name: "ride-height" });
        own.Rules.ShouldBe(3);
        own.State.ShouldBe("none");
        own.Values.Select(pair => (pair.Key, pair.Value))
            .ShouldBe([(ReadAs.Primary, 1), (ReadAs.Secondary, 4), (ReadAs.CommonPractice, 1)]);
        own.NotEstablished.ShouldBe(2);
        holdings.Single(each => each is { Place.Id: "au-b", Topic.Name: "wheels" }).Rules.ShouldBe(0);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_certification_the_schemes_are_counted_and_what_they_leave_open()
    {
        var book = Book(
            null,
            (
                "jurisdictions/au-a/certification",
                """
                { "topic": "certification", "schemes": [ { "scheme": "a", "title": "a", "versions": [ { "from": "2013",
                "not-established": [ "x", "y" ] } ] }, { "scheme": "b", "title": "b" } ] }
                """
            )
        );
        var holding = Holdings.Of(book).Single(each => each is { Place.Id: "au-a", Topic.Name: "certification" });
        (holding.Rules, holding.NotEstablished, holding.Values.Count).ShouldBe((2, 2, 0));
    }

    private static string Position(string rule)
    {
        var book = Book(rule, National);
        return History.Position(book, book.Rule("au/ride-height/raise")!, book.Jurisdiction("au-a")!, Made.Day("2026-11-25"));
    }
}
