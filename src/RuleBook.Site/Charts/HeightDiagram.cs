using System.Xml.Linq;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>Where a lift is measured: a wheel in its arch, with the parts that raise the body lettered A to D.</summary>
internal static class HeightDiagram
{
    private static readonly Html Drawn = Html.Of(
        Svg.Drawing(
            640,
            330,
            "A wheel in its arch, from the side. A: wheel centre to guard edge. B: body block. C: suspension. D: tyre.",
            [.. Vehicle(), .. Dimensions()]
        )
    );

    public static Html Draw() => Drawn;

    private static IEnumerable<XElement> Vehicle() =>
        [
            Svg.Line(20, 310, 620, 310, "ground"),
            Svg.Path("M90 190 H107.3 A118 118 0 0 1 332.7 190 H610 V58 H400 L372 40 H150 Q96 52 90 120 Z", "body"),
            Svg.Circle(220, 225, 85, "tyre"),
            Svg.Circle(220, 225, 52, "rim"),
            Svg.Line(220, 216, 220, 234, "centre"),
            Svg.Line(211, 225, 229, 225, "centre"),
            Svg.Box(372, 190, 44, 26, "block"),
            Svg.Box(540, 190, 44, 26, "block"),
            Svg.Box(346, 216, 264, 22, "rail"),
            Svg.Path("M452 238 L430 246 L474 255 L430 264 L474 273 L430 282 L452 290", "spring"),
            Svg.Box(416, 290, 72, 8, "rail"),
        ];

    private static IEnumerable<XElement> Dimensions() =>
        [
            Svg.Line(40, 225, 211, 225, "extension"),
            Svg.Line(40, 107, 220, 107, "extension"),
            .. Svg.Dimension(52, 107, 52, 225),
            .. Letter(52, 166, "A"),
            .. Svg.Dimension(360, 190, 360, 216),
            Svg.Line(346, 190, 372, 190, "extension"),
            .. Letter(344, 172, "B"),
            .. Svg.Dimension(508, 238, 508, 290),
            Svg.Line(488, 290, 516, 290, "extension"),
            .. Letter(530, 264, "C"),
            .. Svg.Dimension(325, 225, 325, 310),
            Svg.Line(229, 225, 333, 225, "extension"),
            .. Letter(347, 282, "D"),
        ];

    private static IEnumerable<XElement> Letter(double x, double y, string letter) =>
        [Svg.Circle(x, y, 12, "letter"), Svg.Text(x, y + 5, letter, "lettering middle")];
}
