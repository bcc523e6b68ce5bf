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
    public static bool TryParse(string text, out DateOnly day)
    {
        var cursor = new Cursor(text);
        var isOne =
            cursor.TakeDigits(4, out var year)
                & cursor.Take("-")
                & cursor.TakeDigits(2, out var month)
                & cursor.Take("-")
                & cursor.TakeDigits(2, out var number)
            && cursor.Rest.IsEmpty
            && year is >= FirstYear and <= LastYear
            && month is >= 1 and <= 12
            && number >= 1
            && number <= DateTime.DaysInMonth(year, month);
        day = isOne ? new DateOnly(year, month, number) : default;
        return isOne;
    }

    /// <summary>
    /// What would be right in place of a text that is no day: the day meant, where the parts of it stand in another order.
    /// </summary>
    public static string Tip(string text)
    {
        string[] meant = [.. TurnedAbout(text).Where(day => TryParse(day, out _)).Distinct()];
        return meant is [var first, .. var other]
            ? $"write the year first: {first}{string.Concat(other.Select(day => $", or {day} where the month stood first"))}"
            : $"write year-month-day, such as 2018-10-26, of the years {FirstYear} to {LastYear}";
    }

    /// <summary>The days that <c>5/11/2026</c> can be: with the day first, and with the month first.</summary>
    private static IEnumerable<string> TurnedAbout(string text) =>
        text.Split('/', '.', '-') is [{ Length: 1 or 2 } first, { Length: 1 or 2 } second, { Length: 4 } year]
            ? [$"{year}-{second.PadLeft(2, '0')}-{first.PadLeft(2, '0')}", $"{year}-{first.PadLeft(2, '0')}-{second.PadLeft(2, '0')}"]
            : [];
}
