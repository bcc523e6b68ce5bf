using System.Globalization;
using RuleBook.Authoring.Walk;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Walk;

/// <summary>
/// The points at which small rules are looked at, worked out by hand: on each limit, a step past it, and once between two of them.
/// </summary>
public sealed class WalkedPointsTests
{
    private const string Sources = "sources: [{cite: law}]";

    private const string TwoTiers =
        "{pathway: no-certificate, within: {suspension-lift: 50 mm}}, {pathway: certificate, within: {suspension-lift: 75 mm}}";

    [Theory]
    [InlineData(TwoTiers, "-0.1", "0", "0.1", "50", "50.1", "75", "75.1")]
    [InlineData("{pathway: no-certificate, within: {body-lift: {under: 20 mm}}}", "0", "0.1", "20", "20.1")]
    [InlineData("{pathway: no-certificate, within: {gvm: {over: 2 kg, at-most: 3 kg}}}", "0", "1", "2", "2.5", "3", "4")]
    [InlineData("{pathway: no-certificate, within: {gvm: 700 kg}}", "600", "601", "700", "701")] // less than 600 kg is not plausible
    [InlineData("{pathway: no-certificate, within: {gvm: {at-least: 600 kg}}}", "0", "1", "600", "601")] // it is judged all the same
    [InlineData("{pathway: no-certificate, within: {suspension-lift: {at-least: -50 mm}}}", "-50.1", "-50", "-0.1", "0", "0.1")]
    [InlineData("{pathway: no-certificate, within: {tyre-section-width-ratio: 130 %}}", "99", "100", "101", "130", "131")]
    public void A_limit_is_tried_on_it_a_step_past_it_and_between(string tiers, params string[] points) => Points(tiers).ShouldBe(points);

    [Fact]
    public void A_day_is_tried_with_the_day_before_and_the_day_after() =>
        Points("{pathway: no-certificate, when: {built: {from: 2000-01-01}}, within: {body-lift: none}}")
            .Select(day => DateOnly.FromDayNumber(int.Parse(day, CultureInfo.InvariantCulture)))
            .ShouldBe([new(1999, 12, 31), new(2000, 1, 1), new(2000, 1, 2)]);

    [Fact]
    public void Days_that_follow_one_another_have_none_between() =>
        Points("{pathway: no-certificate, when: {built: {from: 2000-01-01, to: 2000-01-02}}, within: {body-lift: none}}")
            .Count()
            .ShouldBe(4);

    /// <summary>
    /// A total of springs and half the growth of the tyres, at most 60 mm: where the springs take s, the tyres may take 2 (60 - s).
    /// </summary>
    [Fact]
    public void A_total_is_tried_where_what_is_left_of_it_is_used_up() =>
        Points("{pathway: no-certificate, within: {total-lift: 60 mm}}", "measured: {total: [suspension-lift, tyre-lift]}, ")
            .ShouldBe([
                .. Each("-0.1", "-0.1", "0", "0.1", "120.2", "120.3"),
                .. Each("0", "-0.1", "0", "0.1", "120", "120.1"),
                .. Each("0.1", "-0.1", "0", "0.1", "119.8", "119.9"),
                .. Each("60", "-0.1", "0", "0.1"),
                .. Each("60.1", "-0.3", "-0.2", "-0.1", "0", "0.1"),
            ]);

    /// <summary>
    /// Over the largest size of the placard and under the smallest: one is at most the other turned round, and both limits are reached.
    /// </summary>
    [Fact]
    public void A_tyre_that_grows_is_tried_as_far_under_the_smallest_size_as_it_is_over_the_largest_or_further() =>
        Points("{pathway: no-certificate, within: {tyre-diameter-growth: 15 mm, tyre-diameter-reduction: 20 mm}}")
            .ShouldBe([
                .. Each("-15.1", "-0.1", "0", "0.1", "15", "15.05", "15.1"),
                .. Each("-15", "-0.1", "0", "0.1", "15"),
                .. Each("-0.1", "-0.1", "0", "0.05", "0.1"),
                .. Each("0", "-0.1", "0"),
                .. Each("0.1", "-0.2", "-0.1"),
                .. Each("20", "-20.1", "-20"),
                .. Each("20.1", "-20.2", "-20.1"),
            ]);

    /// <summary>The share and the figure are of the same size: both grow, or neither.</summary>
    [Fact]
    public void A_tyre_grows_in_per_cent_where_it_grows_in_millimetres() =>
        Points("{pathway: no-certificate, within: {tyre-diameter-growth: 15 mm, tyre-diameter-growth-percent: 7 %}}")
            .ShouldBe([
                .. Each("-0.1", "-0.1"),
                .. Each("0", "0"),
                .. Each("0.1", "0.1", "15", "15.1"),
                .. Each("7", "0.1", "15", "15.1"),
                .. Each("7.1", "0.1", "15", "15.1"),
            ]);

    [Fact]
    public void A_share_of_growth_is_the_share_of_reduction_turned_round() =>
        Points("{pathway: no-certificate, within: {tyre-diameter-growth-percent: 7 %, tyre-diameter-reduction-percent: 7 %}}")
            .ShouldBe([.. Each("-0.1", "0.1", "7", "7.1"), "0 0", "0.1 -0.1", "7 -0.1", "7.1 -0.1"], ignoreOrder: true);

    /// <summary>
    /// Before the first day nothing is recorded: a stretch and a point more. Each of the seven points is tried with all conditions to show
    /// and once without the one there is, and is compared with what is answered where the lift is not known.
    /// </summary>
    [Fact]
    public void What_is_walked_is_counted()
    {
        var report = BookWalk.Walk(Book(TwoTiers.Replace("75 mm}", "75 mm}, provided: [lane-change-test]", StringComparison.Ordinal)));
        (report.Rules, report.Spans, report.Cells, report.Tiers, report.Partial).ShouldBe((1, 2, 1 + (7 * 2), 2, 7));
        report.Faults.ShouldBeEmpty();
    }

    /// <summary>For each kind of vehicle the seven points, and a comparison more: where the word is not known.</summary>
    [Fact]
    public void A_word_that_opens_a_tier_is_walked_with_and_without()
    {
        var report = BookWalk.Walk(
            Book(
                TwoTiers.Replace(
                    "certificate, within: {suspension-lift: 75",
                    "certificate, when: {four-wheel-drive: yes}, within: {suspension-lift: 75",
                    StringComparison.Ordinal
                )
            )
        );
        (report.Rules, report.Spans, report.Cells, report.Tiers, report.Partial).ShouldBe((1, 2, 1 + (7 * 2), 2, 7 * 2 * 2));
    }

    private static IEnumerable<string> Each(string first, params string[] second) => second.Select(other => $"{first} {other}");

    private static IEnumerable<string> Points(string tiers, string measured = "")
    {
        var (book, day) = (Book(tiers, measured), new DateOnly(2012, 1, 1));
        return new Space(book.Vocabulary, "au-qld", day, Resolver.Resolve(book, book.Rule("au-qld/ride-height/raise")!, day)).Points.Select(
            point => string.Join(' ', point.Select(value => value.ToDecimal().ToString("0.##", CultureInfo.InvariantCulture)))
        );
    }

    private static Book Book(string tiers, string measured = "") =>
        SmallBook.WithVersions($"- {{from: 2012-01-01, {Sources}, {measured}tiers: [{tiers}], beyond: prohibited}}");
}
