using System.Globalization;
using System.Xml.Linq;

namespace RuleBook.Site.Charts;

/// <summary>Parts of a drawing as a tree, so that every text in it is escaped; colours come from the style sheet by class.</summary>
internal static class Svg
{
    /// <summary>Between two lines of a hatch.</summary>
    private const double Spacing = 6;

    private static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    /// <summary>A drawing that a screen reader announces by its label.</summary>
    public static XElement Drawing(double width, double height, string label, params IEnumerable<XElement> parts) =>
        new(
            Space + "svg",
            new XAttribute("class", "drawing"),
            new XAttribute("viewBox", $"0 0 {Number(width)} {Number(height)}"),
            new XAttribute("role", "img"),
            new XAttribute("aria-label", label),
            parts
        );

    public static XElement Line(double x1, double y1, double x2, double y2, string style) =>
        Shape("line", style, ("x1", Number(x1)), ("y1", Number(y1)), ("x2", Number(x2)), ("y2", Number(y2)));

    public static XElement Box(double x, double y, double width, double height, string style) =>
        Shape("rect", style, ("x", Number(x)), ("y", Number(y)), ("width", Number(Math.Max(0, width))), ("height", Number(height)));

    public static XElement Circle(double x, double y, double radius, string style) =>
        Shape("circle", style, ("cx", Number(x)), ("cy", Number(y)), ("r", Number(radius)));

    public static XElement Path(string data, string style) => Shape("path", style, ("d", data));

    public static XElement Text(double x, double y, string text, string style) =>
        new(Space + "text", new XAttribute("class", style), new XAttribute("x", Number(x)), new XAttribute("y", Number(y)), text);

    /// <summary>Lines across a box at 45 degrees, by which it is told from others without colour.</summary>
    public static XElement Hatch(double x, double y, double width, double height)
    {
        var lines = new System.Text.StringBuilder();
        for (var at = Spacing - height; at < width; at += Spacing)
        {
            var (from, to) = (Math.Max(at, 0), Math.Min(at + height, width));
            lines.Append(
                CultureInfo.InvariantCulture,
                $"M{Number(x + from)} {Number(y + height - (from - at))}L{Number(x + to)} {Number(y + height - (to - at))}"
            );
        }

        return Path(lines.ToString(), "hatch");
    }

    /// <summary>A dimension line: a line between two points, upright or level, with a tick across each end.</summary>
    public static IEnumerable<XElement> Dimension(double x1, double y1, double x2, double y2)
    {
        yield return Line(x1, y1, x2, y2, "dim");
        foreach (var (x, y) in ((double, double)[])[(x1, y1), (x2, y2)])
            yield return Line(x - 4, y + 4, x + 4, y - 4, "dim");
    }

    public static string Number(double value) => Math.Round(value, 1).ToString(CultureInfo.InvariantCulture);

    private static XElement Shape(string name, string style, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        var shape = new XElement(Space + name, new XAttribute("class", style));
        foreach (var (key, value) in attributes)
            shape.SetAttributeValue(key, value);
        return shape;
    }
}
