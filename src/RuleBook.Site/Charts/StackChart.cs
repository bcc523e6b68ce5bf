using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Fractions;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>How high each jurisdiction lets a vehicle be raised: suspension, body and tyre stacked, with the total as a dimension line.</summary>
internal static class StackChart
{
    private const double Left = 215;
    private const double Right = 700;
    private const double Bar = 14;
    private const double Step = 30;
    private const double Top = 28;

    /// <summary>The end of a scale on which every row fits: drawings that are looked at together share it.</summary>
    public static double Scale(IEnumerable<LiftParts> rows) => Math.Ceiling((double)rows.Select(Sum).Append(100).Max() / 25) * 25;

    public static Html Draw(ImmutableArray<LiftParts> rows, double most, string label)
    {
        var height = Top + rows.Length * Step + 12;
        return Html.Of(Svg.Drawing(760, height, label, [.. Grid(most, height), .. rows.SelectMany((row, i) => Row(row, Top + i * Step, most))]));
    }

    private static decimal Sum(LiftParts row) =>
        Math.Max((row.Total ?? 0).ToDecimal(), ((row.Suspension ?? 0) + (row.Body ?? 0) + (row.Tyre ?? 0)).ToDecimal());

    private static IEnumerable<XElement> Grid(double most, double height)
    {
        foreach (var at in Ticks.Of(most, 25))
        {
            yield return Svg.Line(X(at, most), Top - 6, X(at, most), height - 8, at == 0 ? "axis" : "grid");
            if (at % (2 * Ticks.Step(most, 25)) == 0) yield return Svg.Text(X(at, most), Top - 12, $"{at.ToString(CultureInfo.InvariantCulture)} mm", "label middle");
        }
    }

    private static IEnumerable<XElement> Row(LiftParts row, double y, double most)
    {
        yield return Svg.Text(Left - 10, y + 12, row.Place.Name, "label end");
        if (row.State != "stated")
        {
            yield return Svg.Text(Left + 8, y + 12, row.State switch
            {
                "not-regulated" => "not regulated",
                "none-such" => "no tier of this pathway",
                _ => "not established",
            }, "label quiet");
            yield break;
        }

        var at = 0.0;
        foreach (var (part, style) in ((Fraction?, string)[])[(row.Suspension, "suspension"), (row.Body, "block"), (row.Tyre, "tyre-part")])
        {
            if (part is not { } length || length.IsZero) continue;
            var end = at + (double)length.ToDecimal();
            yield return Svg.Box(X(at, most), y, X(end, most) - X(at, most), Bar, style);
            at = end;
        }

        if (row.Highest is not { } highest)
        {
            yield return Svg.Text(X(at, most) + 8, y + 12, at > 0 ? "the rest is not limited apart" : "no figure for the total", "label quiet");
            yield break;
        }

        var total = (double)highest.ToDecimal();
        if (at == 0 && total > 0) yield return Svg.Box(X(0, most), y, X(total, most) - X(0, most), Bar, "undivided");
        foreach (var part in Svg.Dimension(X(0, most), y + Bar + 5, X(total, most), y + Bar + 5)) yield return part;
        yield return Svg.Text(X(Math.Max(total, at), most) + 8, y + 13, Say.Amount(highest, Units.Unit.Base(Units.Dimension.Length)), "label strong");
    }

    private static double X(double millimetres, double most) => Left + millimetres / most * (Right - Left);
}
