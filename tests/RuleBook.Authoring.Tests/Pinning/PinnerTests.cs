using System.Collections.Immutable;
using System.Text.Json.Nodes;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Pinning;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>Small books whose limits are held by some cases and not by others (derived).</summary>
public sealed class PinnerTests
{
    private const string Law = "sources: [{cite: law}]";

    private static readonly Book FiftyFree = SmallBook.WithVersions(
        $"- {{from: 2012-01-01, {Law}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: 50 mm}}}}], beyond: prohibited}}"
    );

    [Theory]
    [InlineData(1000, 999, 99)]
    [InlineData(1000, 1000, 100)]
    [InlineData(3, 2, 66)]
    public void A_share_of_100_per_cent_means_all(int points, int pinned, int told) =>
        new PinReport(points, pinned, points, 0, []).Percent.ShouldBe(told);

    [Fact]
    public void A_limit_is_held_by_a_case_on_it_and_one_a_tenth_of_a_millimetre_past_it()
    {
        var report = Pin(
            FiftyFree,
            ("50 mm", "2012-01-01", "no-certificate"),
            ("50.1 mm", "2012-01-01", "prohibited"),
            ("50 mm", "2011-12-31", "undecided")
        );

        report.ShouldSatisfyAllConditions(() => report.Unnoticed.ShouldBeEmpty(), () => report.Percent.ShouldBe(100));
    }

    [Fact]
    public void A_limit_that_could_be_a_tenth_higher_is_told_with_its_place_and_a_job_that_shows_it()
    {
        var report = Pin(
            FiftyFree,
            ("50 mm", "2012-01-01", "no-certificate"),
            ("51 mm", "2012-01-01", "prohibited"),
            ("50 mm", "2011-12-31", "undecided")
        );

        report
            .Unnoticed.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                one => one.Mark.File.ShouldBe("jurisdictions/au-qld/ride-height.yaml"),
                one => one.What.ShouldBe("suspension-lift at most 50 mm"),
                one => one.To.ShouldBe("at most 50.1 mm"),
                one => one.Witness.Yaml(FiftyFree.Vocabulary).ShouldContain("suspension-lift: 50.1 mm"),
                one => one.Before.ShouldBe("prohibited"),
                one => one.After.ShouldBe("no-certificate")
            );
        report.Percent.ShouldBeLessThan(100);
        var mark = report.Unnoticed[0].Mark;
        JsonNode
            .DeepEquals(
                JsonNode.Parse(PinJson.Write(FiftyFree, report)),
                new JsonObject
                {
                    ["points"] = 5, // the day, the limit, the tier, its pathway, and what holds beyond
                    ["pinned"] = 4,
                    ["changes"] = 9, // 2 of the day, 3 of the limit, the tier, 1 of its pathway, 2 of what holds beyond
                    ["without-effect"] = 0,
                    ["unnoticed"] = new JsonArray(
                        new JsonObject
                        {
                            ["at"] = mark.ToString(),
                            ["subject"] = "au-qld/ride-height/raise",
                            ["what"] = "suspension-lift at most 50 mm",
                            ["to"] = "at most 50.1 mm",
                            ["before"] = "prohibited",
                            ["after"] = "no-certificate",
                            ["job"] = report.Unnoticed[0].Witness.Yaml(FiftyFree.Vocabulary),
                        }
                    ),
                }
            )
            .ShouldBeTrue(PinJson.Write(FiftyFree, report));
    }

    [Fact]
    public void A_first_day_that_could_be_a_day_later_is_told()
    {
        var report = Pin(
            FiftyFree,
            ("50 mm", "2012-01-02", "no-certificate"),
            ("50.1 mm", "2012-01-02", "prohibited"),
            ("50 mm", "2011-12-31", "undecided")
        );

        report
            .Unnoticed.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                one => one.What.ShouldBe("from 2012-01-01"),
                one => one.To.ShouldBe("2012-01-02"),
                one => one.Witness.Day.ShouldBe(new DateOnly(2012, 1, 1))
            );
    }

    [Fact]
    public void A_condition_that_no_case_leaves_unmet_or_lists_is_told()
    {
        var book = SmallBook.WithVersions(
            $"- {{from: 2012-01-01, {Law}, tiers: [{{pathway: certificate, within: {{suspension-lift: 50 mm}}, provided: "
                + $"[lane-change-test]}}], beyond: prohibited}}"
        );

        var report = Pin(
            book,
            ("50 mm", "2012-01-01", "certificate"),
            ("50.1 mm", "2012-01-01", "prohibited"),
            ("50 mm", "2011-12-31", "undecided")
        );

        report.Unnoticed.Select(one => one.What).ShouldContain("condition lane-change-test of tier 'certificate'");
    }

    [Fact]
    public void A_figure_that_the_rest_implies_needs_no_case()
    {
        var book = SmallBook.WithVersions(
            $"- {{from: 2012-01-01, {Law}, measured: {{total: [suspension-lift, body-lift]}}, tiers: [{{pathway: no-certificate, "
                + $"within: {{suspension-lift: 50 mm, body-lift: 0 mm, total-lift: 80 mm}}}}], beyond: prohibited}}"
        );

        var report = Pin(book);

        report.Unnoticed.ShouldNotContain(one => one.What == "total-lift at most 80 mm");
        report.WithoutEffect.ShouldBeGreaterThanOrEqualTo(3);
    }

    [Fact]
    public void A_figure_of_a_national_rule_may_be_held_by_a_case_of_a_state_that_adopts_it()
    {
        var book = SmallBook.Of(
            (
                "au",
                Raise(
                    $"{{from: 2012-01-01, {Law}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: 50 mm}}}}], beyond: "
                        + $"prohibited}}"
                )
            ),
            ("au-qld", Raise($"{{from: 2012-01-01, {Law}, adopts: {{rule: au/ride-height/raise, as-of: amended}}}}"))
        );

        var report = Pin(
            book,
            (place, _) => place == "au",
            ("50 mm", "2012-01-01", "no-certificate"),
            ("50.1 mm", "2012-01-01", "prohibited")
        );

        report.Unnoticed.ShouldNotContain(one => one.What == "suspension-lift at most 50 mm");
    }

    /// <summary>The nation changes from 50 mm to 75 mm in 2018, and the state goes along; as of its own first day it would not.</summary>
    [Fact]
    public void That_a_rule_is_adopted_as_amended_is_held_by_a_case_after_the_amendment_or_told()
    {
        static string Free(string from, int mm) =>
            $"{{from: {from}, {Law}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: {mm} mm}}}}], beyond: prohibited}}";
        var book = SmallBook.Of(
            ("au", SmallBook.Raise($"- {Free("2012-01-01", 50)}\n- {Free("2018-07-01", 75)}")),
            ("au-qld", Raise($"{{from: 2014-01-01, {Law}, adopts: {{rule: au/ride-height/raise, as-of: amended}}}}"))
        );
        IEnumerable<string> Told(params (string Lift, string On, string Verdict)[] cases) =>
            Pin(book, (place, _) => place == "au-qld", cases)
                .Unnoticed.Where(one => one.What == "adopted as amended")
                .Select(one => $"{one.To}: {one.Before} -> {one.After} on {one.Witness.Day:yyyy-MM-dd}");

        Told().ShouldBe(["as of 2014-01-01: no-certificate -> prohibited on 2018-07-01"]);
        Told(("50.1 mm", "2018-06-30", "prohibited")).ShouldNotBeEmpty();
        Told(("50.1 mm", "2018-07-01", "no-certificate")).ShouldBeEmpty();
    }

    /// <summary>The first amendment says the same in other words; what a state misses that stays with 2014 shows by the second.</summary>
    [Fact]
    public void An_amendment_that_changes_nothing_hides_none_that_comes_after_it()
    {
        static string Free(string from, string limits) =>
            $"{{from: {from}, {Law}, tiers: [{{pathway: no-certificate, within: {{{limits}}}}}], beyond: prohibited}}";
        var amended =
            $"- {Free("2012-01-01", "suspension-lift: 50 mm")}\n- {Free("2018-07-01", "suspension-lift: 5 cm")}\n"
            + $"- {Free("2020-07-01", "suspension-lift: 75 mm")}";
        var book = SmallBook.Of(
            ("au", SmallBook.Raise(amended)),
            ("au-qld", Raise($"{{from: 2014-01-01, {Law}, adopts: {{rule: au/ride-height/raise, as-of: amended}}}}"))
        );

        Pin(book, (place, _) => place == "au-qld")
            .Unnoticed.Single(one => one.What == "adopted as amended")
            .Witness.Day.ShouldBe(new DateOnly(2020, 7, 1));
    }

    [Fact]
    public void What_counts_in_a_total_by_which_a_rule_tells_its_vehicles_is_told_by_a_vehicle_that_it_then_leaves()
    {
        var book = SmallBook.Of(
            (
                "au-qld",
                SmallBook
                    .Raise(
                        $"- {{from: 2012-01-01, {Law}, measured: {{total: [suspension-lift, body-lift]}}, "
                            + "tiers: [{pathway: certificate, within: {suspension-lift: 200 mm}}], beyond: prohibited}"
                    )
                    .Replace("versions:", "for: {total-lift: {over: 50 mm}}\n    versions:", StringComparison.Ordinal)
            )
        );

        Pin(book)
            .Unnoticed.Single(one => one.What == "body-lift counts in the total")
            .ShouldSatisfyAllConditions(
                one => one.Witness.Yaml(book.Vocabulary).ShouldContain("body-lift: 50.1 mm"),
                one => (one.Before, one.After).ShouldBe(("certificate", "the rule does not bind"))
            );
    }

    [Fact]
    public void Where_another_rule_forbids_any_lift_later_a_case_of_that_time_does_not_hold_the_figure()
    {
        static string Lift(string from, int mm) =>
            $"{{from: {from}, {Law}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: {mm} mm}}}}], beyond: prohibited}}";
        var book = SmallBook.WithVersions(
            $"- {Lift("2012-01-01", 50)}",
            more: $"- {{rule: strict, title: Strict, versions: [{Lift("2012-01-01", 900)}, {Lift("2015-01-01", 0)}]}}"
        );

        Pin(book, ("50 mm", "2012-01-01", "no-certificate"), ("50.1 mm", "2015-01-01", "prohibited"))
            .Unnoticed.ShouldContain(one => one.What == "suspension-lift at most 50 mm" && one.To == "at most 50.1 mm");
    }

    private static string Raise(string version) => SmallBook.Raise($"- {version}");

    private static PinReport Pin(Book book, params (string Lift, string On, string Verdict)[] cases) => Pin(book, (_, _) => true, cases);

    private static PinReport Pin(Book book, Func<string, string, bool> chosen, params (string Lift, string On, string Verdict)[] cases) =>
        new Pinner(book, cases.Length == 0 ? ImmutableArray<Case>.Empty : Read(book, cases)).Run(chosen);

    private static ImmutableArray<Case> Read(Book book, (string Lift, string On, string Verdict)[] cases)
    {
        var problems = new List<Problem>();
        var text =
            "vehicles: {wagon: {category: MC}}\ncases:\n"
            + string.Concat(
                cases.Select(one =>
                    $"  - {{id: on-{one.On}-{one.Lift.Replace(' ', '-').Replace('.', '-')}, says: So., vehicle: wagon, changes: "
                    + $"{{modification: {{suspension-lift: {one.Lift}}}}}, on: {one.On}, expect: {{verdict: {one.Verdict}}}, "
                    + $"because: {{source: law}}}}\n"
                )
            );
        var read = new CaseReader(book, "au-qld", "ride-height", problems).Read(YamlText.Read(text, "cases"));
        problems.ShouldBeEmpty();
        read.ShouldAllBe(one => CaseRun.Run(book, one).Passed);
        return read;
    }
}
