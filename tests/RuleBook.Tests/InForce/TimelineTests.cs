using RuleBook.InForce;
using RuleBook.Units;

namespace RuleBook.Tests.InForce;

/// <summary>Partial dates by ISO 8601-2:2019 (EDTF): a month or year stands for one unknown day within it.</summary>
public sealed class TimelineTests
{
    [Theory]
    [InlineData("2016-12", "2016-12-01", "2016-12-31")]
    [InlineData("2013", "2013-01-01", "2013-12-31")]
    [InlineData("2012-02", "2012-02-01", "2012-02-29")] // a leap year
    [InlineData("2018-10-26", "2018-10-26", "2018-10-26")]
    [InlineData("[2018-05-15..2026-11-25]", "2018-05-15", "2026-11-25")]
    public void A_partial_date_spans_the_days_it_can_be(string text, string earliest, string latest)
    {
        PartialDate.TryParse(text, out var date).ShouldBeTrue();
        date.Earliest.ShouldBe(Day(earliest));
        date.Latest.ShouldBe(Day(latest));
    }

    [Theory]
    [InlineData("2018-02-30")]
    [InlineData("2018-13")]
    [InlineData("26/10/2018")]
    [InlineData("[2019..2018]")]
    [InlineData("unknown")]
    public void What_is_not_a_date_is_refused(string text) => PartialDate.TryParse(text, out _).ShouldBeFalse();

    [Theory]
    [InlineData("2016-11-30", new[] { 0 })]
    [InlineData("2016-12-01", new[] { 0, 1 })]
    [InlineData("2016-12-31", new[] { 1 })] // the last day it can have started is the 31st itself
    [InlineData("2017-01-01", new[] { 1 })]
    public void Inside_the_month_of_a_change_both_versions_are_possible(string day, int[] possible) =>
        Timeline.At([Span("2003-11"), Span("2016-12")], Day(day)).ShouldBe(possible);

    [Theory]
    [InlineData("2018-10-25", new[] { 0 })]
    [InlineData("2018-10-26", new[] { 1 })]
    public void The_day_of_a_change_belongs_to_the_new_version(string day, int[] possible) =>
        Timeline.At([Span("2012-11"), Span("2018-10-26")], Day(day)).ShouldBe(possible);

    [Theory]
    [InlineData("2021-07-31", new[] { -1, 0 })]
    [InlineData("2021-08-30", new[] { -1, 0 })]
    [InlineData("2021-08-31", new[] { 0 })]
    public void Before_a_version_of_unknown_start_is_seen_in_force_nothing_may_have_been(string day, int[] possible) =>
        Timeline.At([new(null, Partial("2021-08"), null)], Day(day)).ShouldBe(possible);

    [Fact]
    public void Between_a_stated_end_and_the_next_start_nothing_is_in_force() =>
        Timeline.At([new(Partial("2010"), null, Partial("2015-01-01")), Span("2016-01-01")], Day("2015-06-01")).ShouldBe([-1]);

    [Fact]
    public void Before_any_version_and_after_a_stated_end_nothing_is_in_force()
    {
        Timeline.At([], Day("2015-06-01")).ShouldBe([-1]);
        Timeline.At([Span("2016-01-01")], Day("2015-12-31")).ShouldBe([-1]);
        Timeline.At([new(Partial("2010"), null, Partial("2015-01-01"))], Day("2014-12-31")).ShouldBe([0]);
        Timeline.At([new(Partial("2010"), null, Partial("2015-01-01"))], Day("2015-01-01")).ShouldBe([-1]);
    }

    [Fact]
    public void An_end_that_is_the_start_of_the_next_leaves_no_gap_however_well_it_is_known() =>
        Timeline.At([new(Partial("2010"), null, Partial("2015-06")), Span("2015-06")], Day("2015-06-15")).ShouldBe([0, 1]);

    [Fact]
    public void An_end_within_a_month_leaves_it_open_whether_the_version_still_holds() =>
        Timeline.At([new(Partial("2010"), null, Partial("2015-06")), Span("2016-01-01")], Day("2015-06-15")).ShouldBe([-1, 0]);

    private static Timeline.Span Span(string from) => new(Partial(from), null, null);

    private static PartialDate Partial(string text) => PartialDate.TryParse(text, out var date) ? date : throw new ArgumentException(text);

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
