using System.Globalization;

namespace RuleBook.Text;

/// <summary>A day as it is written in a job, a book and an option: <c>2018-10-26</c>.</summary>
internal static class CalendarDay
{
    /// <summary>The first year of which a day is read.</summary>
    public const int FirstYear = 1900;

    /// <summary>
    /// The last year of which a day is read; beyond it no law is known, and reckoning with days would run off the calendar.
    /// </summary>
    public const int LastYear = 2999;

    /// <summary>Reads a day of the years above.</summary>
    public static bool TryParse(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)
        && day.Year is >= FirstYear and <= LastYear;
}
