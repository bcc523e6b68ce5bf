using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using RuleBook.Site.Charts;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The drawings: what a reader can tell apart, and scales that begin with the data.</summary>
public sealed partial class ChartTests
{
    [Theory]
    [InlineData(3, 6)]
    [InlineData(75, 8)]
    [InlineData(150, 8)]
    [InlineData(4500, 6)]
    [InlineData(123_456, 6)]
    public void A_scale_has_a_few_lines_at_round_figures_whatever_it_measures(double to, int most)
    {
        var lines = Ticks.Of(0, to, most).ToArray();
        lines.Length.ShouldBeInRange(2, most);
        foreach (var line in lines.Skip(1))
            Math.Round(lines[1] / Math.Pow(10, Math.Floor(Math.Log10(lines[1]))), 6).ShouldBeOneOf(1, 2, 5);
        Ticks.End(to, most).ShouldBeGreaterThanOrEqualTo(to);
    }

    /// <summary>WCAG 2.2, 1.4.11: 3:1 between parts of a drawing; relative luminance and contrast as it defines them.</summary>
    [Fact]
    public void Suspension_and_tyre_differ_by_three_to_one_on_light_and_dark_and_the_tyre_is_hatched_too()
    {
        var css = TheBook.Site.Single(file => file.Path == "site.css").Text();
        var (suspension, tyre) = (Luminances(css, "susp"), Luminances(css, "tyre"));
        suspension.Length.ShouldBe(2);
        foreach (var (one, other) in suspension.Zip(tyre))
            ((Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05)).ShouldBeGreaterThanOrEqualTo(3);
        var drawn = Page("topics/ride-height.html");
        drawn.All("rect.tyre-part").ShouldNotBeEmpty();
        drawn.All("rect.tyre-part").ShouldAllBe(box => box.NextElementSibling!.ClassName == "hatch");
    }

    [Fact]
    public void A_legend_tells_what_is_drawn_and_nothing_else()
    {
        foreach (var path in new[] { "index.html", "topics/ride-height.html", "topics/mass-ratings.html", "topics/tyres-and-wheels.html" })
        foreach (var entry in Page(path).All(".legend .swatch"))
            Page(path).All($"svg .{entry.ClassName!.Split(' ')[^1]}").ShouldNotBeEmpty($"{path}: {entry.TextContent}");
    }

    [Fact]
    public void The_years_begin_with_the_first_figure_and_no_row_of_a_measure_stands_twice()
    {
        var first = Page("topics/ride-height.html")
            .All(".multiples tbody tr:first-child th")
            .Min(cell => int.Parse(cell.TextContent.Trim()[^4..], CultureInfo.InvariantCulture));
        Page("topics/ride-height.html")
            .All(".multiples svg text.middle")
            .Min(text => int.Parse(text.TextContent, CultureInfo.InvariantCulture))
            .ShouldBeInRange(first, first + 20);
        foreach (
            var (path, document, _) in Parsed.Of(
                TheBook.Site.Where(file => file.Path.StartsWith("topics/", StringComparison.Ordinal) && file.Path.Split('/').Length == 3)
            )
        )
            document
                .All("tbody tr:has(td)")
                .Select(row =>
                    string.Join('|', row.Children.Prepend(row.ParentElement!.QuerySelector("th")!).Select(cell => cell.TextContent))
                )
                .ShouldBeUnique(path);
    }

    private static IHtmlDocument Page(string path) => Parsed.Of(TheBook.Site.Where(file => file.Path == path)).Single().Document;

    private static double[] Luminances(string css, string name) =>
        [.. Colour().Matches(css).Where(match => match.Groups[1].Value == name).Select(match => Luminance(match.Groups[2].Value))];

    private static double Luminance(string colour)
    {
        double[] parts =
        [
            .. Enumerable
                .Range(0, 3)
                .Select(i => int.Parse(colour.AsSpan(2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
                .Select(part => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4)),
        ];
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    [GeneratedRegex("--([a-z]+): #([0-9a-f]{6})")]
    private static partial Regex Colour();
}
