using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Units;

/// <summary>
/// A date known to the day, month or year, about a year (<c>2009~</c>), or only between two days (<c>[2018-05-15..2026-11-25]</c>):
/// the notation of ISO 8601-2 (EDTF). It stands for one unknown day from <see cref="Earliest"/> to <see cref="Latest"/>, both included.
/// </summary>
/// <param name="Text">As written.</param>
/// <param name="Earliest">The first day it can be.</param>
/// <param name="Latest">The last day it can be.</param>
public sealed record PartialDate(string Text, DateOnly Earliest, DateOnly Latest)
{
    /// <summary>Known to the day.</summary>
    public bool IsExact => Earliest == Latest;

    /// <summary>For a reader: as written, or "about 2009", or "a day between two others".</summary>
    public string Words =>
        Text.EndsWith('~') ? $"about {Text[..^1]}"
        : Text.StartsWith('[') ? $"a day between {Text[1..^1].Replace("..", " and ", StringComparison.Ordinal)}"
        : Text;

    /// <summary>A date known to the day.</summary>
    public static PartialDate Of(DateOnly day) => new(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), day, day);

    /// <summary>Reads a partial date; an approximate one (<c>~</c>) is taken to reach a year further on both sides.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out PartialDate? date)
    {
        // A block of YAML ends with a line feed.
        var written = text.EndsWith('\n') ? text[..^1] : text;
        date = (written is ['[', .. var between, ']'] ? Between(between) : Days(written)) is var (earliest, latest)
            ? new PartialDate(text, earliest, latest)
            : null;
        return date is not null;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static (DateOnly Earliest, DateOnly Latest)? Between(string days) =>
        days.Split("..") is [var one, var other] && Days(one) is var (earliest, _) && Days(other) is var (_, latest) && earliest <= latest
            ? (earliest, latest)
            : null;

    private static (DateOnly Earliest, DateOnly Latest)? Days(string written)
    {
        var isAbout = written.EndsWith('~');
        var days = isAbout ? written[..^1] : written;
        var first = days.Length switch
        {
            4 => $"{days}-01-01",
            7 => $"{days}-01",
            _ => days,
        };
        if (!CalendarDay.TryParse(first, out var earliest))
            return null;
        var latest = days.Length switch
        {
            4 => earliest.AddYears(1).AddDays(-1),
            7 => earliest.AddMonths(1).AddDays(-1),
            _ => earliest,
        };
        return isAbout ? (earliest.AddYears(-1), latest.AddYears(1)) : (earliest, latest);
    }
}
