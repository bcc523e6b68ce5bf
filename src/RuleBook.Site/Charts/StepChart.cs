using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>A figure over the years: level while a version is in force, with a gap where nothing is known.</summary>
internal static class StepChart
{
    private const double Left = 44;
    private const double Right = 330;
    private const double Top = 14;
    private const double Bottom = 116;

    /// <summary>More lines than these cannot be read at this size.</summary>
    public const int Lines = 6;

    /// <param name="steps">From which day which figure holds; null where none is known.</param>
    /// <param name="first">Left edge, the first day of a year.</param>
    /// <param name="last">Right edge.</param>
    /// <param name="most">Top edge, in mm.</param>
    /// <param name="label">For a screen reader.</param>
    public static Html Draw(
        ImmutableArray<(string Style, ImmutableArray<(DateOnly From, double? Value)> Steps)> steps,
        DateOnly first,
        DateOnly last,
        double most,
        string label
    )
    {
        double X(DateOnly day) => Left + (double)(day.DayNumber - first.DayNumber) / (last.DayNumber - first.DayNumber) * (Right - Left);
        double Y(double value) => Bottom - value / most * (Bottom - Top);
        return Html.Of(
            Svg.Drawing(
                350,
                140,
                label,
                [.. Grid(first, last, most, X, Y), .. steps.SelectMany(series => Series(series.Style, series.Steps, last, X, Y))]
            )
        );
    }

    private static IEnumerable<XElement> Grid(DateOnly first, DateOnly last, double most, Func<DateOnly, double> x, Func<double, double> y)
    {
        foreach (var value in Ticks.Of(0, most, Lines))
        {
            yield return Svg.Line(Left, y(value), Right, y(value), value == 0 ? "axis" : "grid");
            yield return Svg.Text(Left - 6, y(value) + 4, value.ToString(CultureInfo.InvariantCulture), "label end");
        }

        foreach (var year in Ticks.Of(first.Year, last.Year, Lines).Where(year => year % 1 == 0))
        {
            var at = x(new DateOnly((int)year, 1, 1));
            yield return Svg.Line(at, Bottom, at, Bottom + 4, "axis");
            yield return Svg.Text(at, Bottom + 18, year.ToString(CultureInfo.InvariantCulture), "label middle");
        }
    }

    private static IEnumerable<XElement> Series(
        string style,
        ImmutableArray<(DateOnly From, double? Value)> steps,
        DateOnly last,
        Func<DateOnly, double> x,
        Func<double, double> y
    )
    {
        var path = new System.Text.StringBuilder();
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Value is not { } value)
                continue;
            var end = i + 1 < steps.Length ? steps[i + 1].From : last;
            var joined = i > 0 && steps[i - 1].Value is not null;
            path.Append(
                CultureInfo.InvariantCulture,
                $"{(joined ? 'L' : 'M')}{Svg.Number(x(steps[i].From))} {Svg.Number(y(value))}H{Svg.Number(x(end))}"
            );
        }

        if (path.Length > 0)
            yield return Svg.Path(path.ToString(), $"step {style}");
    }
}
