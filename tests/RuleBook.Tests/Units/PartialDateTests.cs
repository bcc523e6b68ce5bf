using RuleBook.Units;

namespace RuleBook.Tests.Units;

/// <summary>ISO 8601-2 (EDTF): reduced precision stands for the whole span; the calendar is the Gregorian one.</summary>
public sealed class PartialDateTests
{
    [Theory]
    [Trait("Basis", "published")]
    [InlineData("2016-12", "2016-12-01", "2016-12-31")]
    [InlineData("2016-02", "2016-02-01", "2016-02-29")] // a leap year
    [InlineData("1900-02", "1900-02-01", "1900-02-28")] // not a leap year: a century not divisible by 400
    [InlineData("2013", "2013-01-01", "2013-12-31")]
    [InlineData("2016-12-31", "2016-12-31", "2016-12-31")]
    [InlineData("2016-02-29", "2016-02-29", "2016-02-29")]
    [InlineData("[2018-05-15..2026-11-25]", "2018-05-15", "2026-11-25")]
    [InlineData("[2018..2020-06]", "2018-01-01", "2020-06-30")]
    [InlineData("[2018-05-15..2018-05-15]", "2018-05-15", "2018-05-15")]
    public void A_date_known_in_part_stands_for_every_day_that_it_can_be(string text, string earliest, string latest)
    {
        var date = Read(text);
        date.Earliest.ShouldBe(Day(earliest));
        date.Latest.ShouldBe(Day(latest));
        date.IsExact.ShouldBe(earliest == latest);
        date.ToString().ShouldBe(text);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void About_a_year_reaches_a_year_further_on_both_sides() // what '~' spans is this project's own reading: EDTF leaves it open
    {
        var date = Read("2009~");
        date.Earliest.ShouldBe(new DateOnly(2008, 1, 1));
        date.Latest.ShouldBe(new DateOnly(2010, 12, 31));
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("2015-02-29")] // no leap year
    [InlineData("2016-04-31")]
    [InlineData("2016-13")]
    [InlineData("2016-00")]
    [InlineData("2016-01-00")]
    [InlineData("[2020..2018]")] // ends before it begins
    [InlineData("[2018..soon]")]
    [InlineData("16-12-01")]
    [InlineData("1 July 2027")]
    public void What_is_no_date_of_the_calendar_is_refused(string text) => PartialDate.TryParse(text, out _).ShouldBeFalse();

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("1899", false)] // no motor-vehicle rule is older
    [InlineData("1900", true)]
    [InlineData("2999", true)] // a year about it still fits the calendar
    [InlineData("3000", false)]
    [InlineData("9999", false)]
    public void A_year_far_from_any_rule_is_taken_for_a_slip(string text, bool read) => PartialDate.TryParse(text, out _).ShouldBe(read);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2009~", "about 2009")]
    [InlineData("[2018-05-15..2026-11-25]", "a day between 2018-05-15 and 2026-11-25")]
    [InlineData("2016-12", "2016-12")]
    public void A_reader_is_told_how_well_a_date_is_known(string text, string words) => Read(text).Words.ShouldBe(words);

    [Fact]
    [Trait("Basis", "published")]
    public void A_day_is_written_year_month_day() => PartialDate.Of(new DateOnly(2026, 7, 1)).ShouldBe(Read("2026-07-01"));

    private static PartialDate Read(string text) => PartialDate.TryParse(text, out var date) ? date : throw new FormatException(text);

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");
}
