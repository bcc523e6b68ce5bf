using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Tests.Inspecting;

namespace RuleBook.Authoring.Tests.Checks;

/// <summary>What looks like a fault and is none, and the boundary between the two (derived from the grammar of the data).</summary>
public sealed class PrecisionTests
{
    private const string National = "jurisdictions/xa/ride-height.yaml";
    private const string Northern = "jurisdictions/xa-n/ride-height.yaml";
    private const string Second = "          - pathway: certificate\n            within: { suspension-lift: 75 mm }";

    [Fact]
    public void A_less_onerous_tier_may_follow_when_it_is_for_other_vehicles() =>
        Codes(
                National,
                "          - pathway: no-certificate\n            within: { suspension-lift: 50 mm }\n" + Second,
                "          - pathway: certificate\n            when: { four-wheel-drive: no }\n            within: { "
                    + "suspension-lift: 50 mm }\n"
                    + "          - pathway: no-certificate\n            when: { four-wheel-drive: yes }\n            within: { "
                    + "suspension-lift: 75 mm }"
            )
            .ShouldNotContain("tiers-out-of-order");

    /// <summary>At a figure that both ends have, a vehicle of just that figure is bound by both.</summary>
    [Theory]
    [InlineData("wheelbase: { at-most: 2500 mm }", "wheelbase: { over: 2500 mm }", true)]
    [InlineData("wheelbase: { under: 2500 mm }", "wheelbase: { at-least: 2500 mm }", true)]
    [InlineData("wheelbase: { at-most: 2500 mm }", "wheelbase: { at-least: 2500 mm }", false)]
    [InlineData("wheelbase: { at-most: 2500 mm }", "wheelbase: { over: 2499 mm }", false)]
    [InlineData("wheelbase: { at-most: 2500 mm }", "wheelbase: { over: 3000 mm }", true)]
    [InlineData("wheelbase: { over: 3000 mm }", "wheelbase: { at-most: 2500 mm }", true)]
    [InlineData("wheelbase: { at-most: 2500 mm }", "wheelbase: { at-most: 2000 mm }", false)]
    [InlineData("four-wheel-drive: [yes, no]", "four-wheel-drive: no", false)]
    [InlineData("four-wheel-drive: no", "wheelbase: { over: 2500 mm }", false)]
    public void Two_ranges_are_of_other_vehicles_where_no_vehicle_is_in_both(string one, string other, bool apart)
    {
        Codes(
                National,
                "          - pathway: no-certificate\n            within: { suspension-lift: 50 mm }\n" + Second,
                $"          - pathway: certificate\n            when: {{ {one} }}\n            within: {{ suspension-lift: 50 mm }}\n"
                    + $"          - pathway: no-certificate\n            when: {{ {other} }}\n            within: {{ "
                    + "suspension-lift: 75 mm }"
            )
            .Contains("tiers-out-of-order")
            .ShouldBe(!apart);

        using var book = BadBook.Open("adopts-other-vehicles");
        Edit(book, National, "for: { four-wheel-drive: yes }", $"for: {{ {one} }}");
        Edit(book, Northern, "for: { four-wheel-drive: no }", $"for: {{ {other} }}");
        Inspection
            .Run(book.Folder, new DateOnly(2026, 11, 25))
            .Problems.Any(problem => problem.Code == "adopts-other-vehicles")
            .ShouldBe(apart);
    }

    [Theory]
    [InlineData("suspension-lift: { at-most: 50 mm }", true)]
    [InlineData("suspension-lift: { under: 50 mm }", true)]
    [InlineData("suspension-lift: { at-least: 0 mm, at-most: 50 mm }", true)]
    [InlineData("suspension-lift: 50.1 mm", false)]
    [InlineData("suspension-lift: none", false)]
    [InlineData("suspension-lift: not-established", false)]
    [InlineData("total-lift: 10 mm", false)]
    public void A_tier_is_unreachable_when_all_it_allows_is_allowed_before(string limit, bool unreachable) =>
        Codes(National, "within: { suspension-lift: 75 mm }", $"within: {{ {limit} }}").Contains("tier-unreachable").ShouldBe(unreachable);

    /// <summary>At a figure that both have, one that is open there does not take in one that is closed.</summary>
    [Theory]
    [InlineData("{ under: 75 mm }", "{ at-most: 75 mm }", false)]
    [InlineData("{ under: 75 mm }", "{ under: 75 mm }", true)]
    [InlineData("{ at-most: 75 mm }", "{ under: 75 mm }", true)]
    [InlineData("{ over: 10 mm }", "{ at-least: 10 mm }", false)]
    [InlineData("{ over: 10 mm }", "{ over: 10 mm }", true)]
    [InlineData("{ at-least: 10 mm }", "{ over: 10 mm }", true)]
    [InlineData("{ over: 10 mm }", "{ at-least: 10.1 mm }", true)]
    [InlineData("{ over: 10 mm }", "{ at-least: 9.9 mm }", false)]
    [InlineData("{ over: 10 mm }", "{ at-most: 9 mm }", false)]
    public void A_range_lies_within_another_as_far_as_its_ends_do(string earlier, string later, bool within)
    {
        using var book = BadBook.Open("sound");
        Edit(book, National, "suspension-lift: 50 mm", $"suspension-lift: {earlier}");
        Edit(book, National, "suspension-lift: 75 mm", $"suspension-lift: {later}");

        Inspection
            .Run(book.Folder, new DateOnly(2026, 11, 25))
            .Problems.Any(problem => problem.Code == "tier-unreachable")
            .ShouldBe(within);
    }

    [Theory]
    [InlineData("provided: [lane-change-test]")]
    [InlineData("when: { four-wheel-drive: yes }")]
    public void A_tier_with_the_same_limits_is_reached_when_the_earlier_one_asks_for_more(string more) =>
        Codes(
                National,
                "            within: { suspension-lift: 50 mm }\n" + Second + "\n            provided: [lane-change-test]",
                $"            within: {{ suspension-lift: 75 mm }}\n            {more}\n{Second}"
            )
            .ShouldNotContain("tier-unreachable");

    [Theory]
    [InlineData("2011-01-01", "2011-01-02", null)]
    [InlineData("2011-01-01", "2011-01-01", "versions-out-of-order")]
    [InlineData("2011-01-01", "2010-12-31", "versions-out-of-order")]
    [InlineData("2011", "2011-12-31", null)]
    [InlineData("2011", "2011-12-30", "partial-dates-overlap")]
    [InlineData("2011", "2012", null)]
    [InlineData("2011", "2010", "versions-out-of-order")]
    public void The_order_of_two_starts_must_be_known(string first, string second, string? code)
    {
        string[] dates = ["versions-out-of-order", "partial-dates-overlap", "versions-gap", "versions-overlap", "dates-out-of-order"];
        using var book = BadBook.Open("sound");
        Edit(book, National, "from: 2011-01-01", $"from: {first}");
        Edit(book, National, "from: 2018-01", $"from: {second}");

        Inspection
            .Run(book.Folder, new DateOnly(2026, 11, 25))
            .Problems.Select(problem => problem.Code)
            .Intersect(dates)
            .ShouldBe(code is null ? [] : [code]);
    }

    [Theory]
    [InlineData("2018-01", null)] // the same words: it ends when the next begins
    [InlineData("2017-12-31", "versions-gap")]
    [InlineData("2018-02-01", "versions-overlap")]
    [InlineData("2018-01-15", "partial-dates-overlap")]
    public void A_stated_end_must_be_the_start_of_the_next_version(string until, string? code) =>
        Codes(National, "      - from: 2011-01-01", $"      - from: 2011-01-01\n        until: {until}")
            .ShouldBe(code is null ? [] : [code]);

    [Theory]
    [InlineData("{ at-least: 50 mm, at-most: 50 mm }", false)]
    [InlineData("{ over: 50 mm, at-most: 50 mm }", true)]
    [InlineData("{ at-least: 50 mm, under: 50 mm }", true)]
    [InlineData("{ at-least: 2 in, at-most: 50 mm }", true)] // 50.8 mm by the International Yard and Pound Agreement, 1959
    public void A_range_of_one_figure_needs_both_ends_closed(string range, bool contradicts) =>
        Codes(National, "suspension-lift: 75 mm", $"suspension-lift: {range}").Contains("bounds-contradict").ShouldBe(contradicts);

    [Theory]
    [InlineData("a code of practice", true)]
    [InlineData("A page without clause numbers.", false)]
    [InlineData("A release without date or clause numbers.", false)]
    [InlineData("Read in full; it has no sections.", false)]
    [InlineData("Known from a list of documents; the requirements were not read.", false)]
    [InlineData("The amendment record was read, not the requirements.", false)]
    [InlineData("Read in full.", true)]
    public void A_clause_may_lack_only_where_the_note_says_that_there_is_none(string note, bool reported)
    {
        using var book = BadBook.Open("no-clause");
        Edit(book, "jurisdictions/xa-n/sources.yaml", "read-as: primary", $"read-as: primary\n    note: {note}");

        Inspection.Run(book.Folder, new DateOnly(2026, 11, 25)).Problems.Any(problem => problem.Code == "no-clause").ShouldBe(reported);
    }

    [Fact]
    public void Common_practice_needs_no_clause()
    {
        using var book = BadBook.Open("no-clause");
        Edit(book, "jurisdictions/xa-n/sources.yaml", "read-as: primary", "read-as: common-practice");

        Inspection.Run(book.Folder, new DateOnly(2026, 11, 25)).Problems.ShouldBeEmpty();
    }

    [Fact]
    public void A_rule_that_differs_in_one_limit_is_no_hand_copy()
    {
        using var book = BadBook.Open("hand-copy");
        Edit(book, Northern, "suspension-lift: 75 mm", "suspension-lift: 76 mm");

        Inspection.Run(book.Folder, new DateOnly(2026, 11, 25)).Problems.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("2026-11-25", false)]
    [InlineData("2026-11-24", true)]
    public void A_source_is_overdue_from_the_day_after_the_one_named(string recheck, bool overdue)
    {
        using var book = BadBook.Open("source-overdue");
        Edit(book, "jurisdictions/xa-n/sources.yaml", "recheck-after: 2026-10-01", $"recheck-after: {recheck}");

        Inspection.Run(book.Folder, new DateOnly(2026, 11, 25)).Problems.Any(problem => problem.Code == "source-overdue").ShouldBe(overdue);
    }

    private static string[] Codes(string path, string from, string to)
    {
        using var book = BadBook.Open("sound");
        Edit(book, path, from, to);
        return [.. Inspection.Run(book.Folder, new DateOnly(2026, 11, 25)).Problems.Select(problem => problem.Code)];
    }

    private static void Edit(BadBook book, string path, string from, string to)
    {
        var full = Path.Combine(book.Folder, path);
        var text = File.ReadAllText(full);
        text.ShouldContain(from);
        File.WriteAllText(full, text.Replace(from, to, StringComparison.Ordinal));
    }
}
