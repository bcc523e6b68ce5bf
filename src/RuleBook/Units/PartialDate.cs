using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using RuleBook.Text;

namespace RuleBook.Units;

/// <summary>
/// A date known to the day, month or year, about a year (<c>2009~</c>), or only between two days (<c>[2018-05-15..2026-11-25]</c>):
/// the notation of ISO 8601-2 (EDTF). It stands for one unknown day from <see cref="Earliest"/> to <see cref="Latest"/>, both included.
/// </summary>
/// <param name="Text">As written.</param>
/// <param name="Earliest">The first day it can be.</param>
/// <param name="Latest">The last day it can be.</param>
public sealed partial record PartialDate(string Text, DateOnly Earliest, DateOnly Latest)
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
        date = null;
        if (Between().Match(text) is { Success: true } between)
        {
            if (
                !TryParse(between.Groups[1].Value, out var first)
                || !TryParse(between.Groups[2].Value, out var last)
                || last.Latest < first.Earliest
            )
                return false;
            date = new PartialDate(text, first.Earliest, last.Latest);
            return true;
        }

        var match = Written().Match(text);
        if (!match.Success)
            return false;
        var year = Number(match, 1);
        var month = match.Groups[2].Success ? Number(match, 2) : 0;
        var day = match.Groups[3].Success ? Number(match, 3) : 0;
        if (year is < CalendarDay.FirstYear or > CalendarDay.LastYear || month > 12 || (match.Groups[2].Success && month < 1))
            return false;
        if (match.Groups[3].Success && (day < 1 || day > DateTime.DaysInMonth(year, month)))
            return false;

        var earliest = new DateOnly(year, Math.Max(month, 1), Math.Max(day, 1));
        var latest =
            day > 0 ? earliest
            : month > 0 ? earliest.AddMonths(1).AddDays(-1)
            : earliest.AddYears(1).AddDays(-1);
        date = match.Groups[4].Success
            ? new PartialDate(text, earliest.AddYears(-1), latest.AddYears(1))
            : new PartialDate(text, earliest, latest);
        return true;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static int Number(Match match, int group) =>
        int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?(~)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();

    [GeneratedRegex(@"^\[([0-9~-]+)\.\.([0-9~-]+)\]$", RegexOptions.CultureInvariant)]
    private static partial Regex Between();
}
