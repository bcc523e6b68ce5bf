using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Fractions;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>
/// How high each jurisdiction lets a vehicle be raised: suspension, body and tyre stacked, with the total as a dimension line.
/// </summary>
internal static class StackChart
{
    private const double Left = 215;
    private const double Right = 700;
    private const double Bar = 14;
    private const double Step = 30;
    private const double Top = 28;
    private const int Lines = 8;

    /// <summary>The parts in the order in which they are stacked, each with its style.</summary>
    private static IEnumerable<(Fraction? Length, string Style)> Stacked(LiftParts row) =>
        [(row.Suspension, "suspension"), (row.Body, "block"), (row.Tyre, "tyre-part")];

    /// <summary>The styles that some row is drawn in: what a legend has to tell.</summary>
    public static IEnumerable<string> Styles(IEnumerable<LiftParts> rows) =>
        rows.Where(row => row.State == "stated")
            .SelectMany(row =>
                Stacked(row)
                    .Where(part => part.Length is { IsZero: false })
                    .Select(part => part.Style)
                    .DefaultIfEmpty(row.Highest is { IsZero: false } ? "undivided" : "")
            )
            .Distinct();

    /// <summary>The end of a scale on which every row fits: drawings that are looked at together share it.</summary>
    public static double Scale(IEnumerable<LiftParts> rows) => Ticks.End((double)rows.Select(Sum).Append(100).Max(), Lines);

    public static Html Draw(ImmutableArray<LiftParts> rows, double most, string label)
    {
        var height = Top + rows.Length * Step + 12;
        return Html.Of(
            Svg.Drawing(760, height, label, [.. Grid(most, height), .. rows.SelectMany((row, i) => Row(row, Top + i * Step, most))])
        );
    }

    private static decimal Sum(LiftParts row) =>
        Math.Max((row.Total ?? 0).ToDecimal(), ((row.Suspension ?? 0) + (row.Body ?? 0) + (row.Tyre ?? 0)).ToDecimal());

    private static IEnumerable<XElement> Grid(double most, double height)
    {
        foreach (var at in Ticks.Of(0, most, Lines))
        {
            yield return Svg.Line(X(at, most), Top - 6, X(at, most), height - 8, at == 0 ? "axis" : "grid");
            yield return Svg.Text(X(at, most), Top - 12, $"{at.ToString(CultureInfo.InvariantCulture)} mm", "label middle");
        }
    }

    private static IEnumerable<XElement> Row(LiftParts row, double y, double most)
    {
        yield return Svg.Text(Left - 10, y + 12, row.Place.Name, "label end");
        if (row.State != "stated")
        {
            yield return Svg.Text(
                Left + 8,
                y + 12,
                row.State switch
                {
                    "not-regulated" => "not regulated",
                    "none-such" => "no such way",
                    _ => "not established",
                },
                "label quiet"
            );
            yield break;
        }

        var at = 0.0;
        foreach (var (part, style) in Stacked(row))
        {
            if (part is not { } length || length.IsZero)
                continue;
            var end = at + (double)length.ToDecimal();
            yield return Svg.Box(X(at, most), y, X(end, most) - X(at, most), Bar, style);
            if (style == "tyre-part")
                yield return Svg.Hatch(X(at, most), y, X(end, most) - X(at, most), Bar);
            at = end;
        }

        if (row.Highest is not { } highest)
        {
            yield return Svg.Text(
                X(at, most) + 8,
                y + 12,
                at > 0 ? "the rest is not limited apart" : "no figure for the total",
                "label quiet"
            );
            yield break;
        }

        var total = (double)highest.ToDecimal();
        if (at == 0)
            yield return Svg.Box(X(0, most), y, X(total, most) - X(0, most), Bar, "undivided");
        foreach (var part in Svg.Dimension(X(0, most), y + Bar + 5, X(total, most), y + Bar + 5))
            yield return part;
        yield return Svg.Text(
            X(Math.Max(total, at), most) + 8,
            y + 13,
            Say.Amount(highest, Units.Unit.Base(Units.Dimension.Length)),
            "label strong"
        );
    }

    private static double X(double millimetres, double most) => Left + millimetres / most * (Right - Left);
}
