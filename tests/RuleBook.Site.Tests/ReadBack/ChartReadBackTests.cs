using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// The drawings of every page read back by their coordinates in the scale that they draw themselves, against the limits of the book in
/// force; for the vehicle of <c>site-templates/charts.json</c>: a four-wheel drive (MC) of 3 t, with or without stability
/// control.
/// </summary>
public sealed class ChartReadBackTests
{
    private static readonly Book Book = TheBook.Input.Book;

    /// <summary>A drawing has tenths of a point; at its scale that is less than half a millimetre.</summary>
    private const decimal Drawn = 0.5m;

    private const string HowHigh = ": how high, by jurisdiction";

    private const string OverTheYears = " over the years";

    private const string TheDiagram =
        "A wheel in its arch, from the side. A: wheel centre to guard edge. B: body block. C: suspension. D: tyre.";

    private static readonly Lazy<Dictionary<string, IElement[]>> Drawings = new(() =>
        Parsed
            .Of(
                TheBook.Site.Where(file =>
                    file.Path is "index.html" || Years().Any(topic => file.Path == $"topics/{topic.Data.Item1}.html")
                )
            )
            .ToDictionary(page => page.Path, page => page.Document.All("svg.drawing").ToArray())
    );

    public static TheoryData<string, Pathway, bool> Stacks() =>
        new()
        {
            { "with stability control, without a certificate", Pathway.NoCertificate, true },
            { "with stability control, with a certificate", Pathway.Certificate, true },
            { "without stability control, without a certificate", Pathway.NoCertificate, false },
            { "without stability control, with a certificate", Pathway.Certificate, false },
        };

    [Theory]
    [MemberData(nameof(Stacks))]
    public void Each_bar_is_as_long_as_the_highest_lift_that_the_book_opens_and_each_part_as_long_as_its_limit(
        string title,
        Pathway pathway,
        bool stability
    )
    {
        var drawings = Drawings
            .Value.Values.SelectMany(each => each)
            .Where(each => Label(each) == $"Four-wheel drive {title}{HowHigh}")
            .ToArray();
        drawings.ShouldNotBeEmpty();
        foreach (var drawing in drawings)
            Each_bar_is_as_long_as_the_book_has_it(drawing, title, pathway, stability);
    }

    private static void Each_bar_is_as_long_as_the_book_has_it(IElement drawing, string title, Pathway pathway, bool stability)
    {
        var scale = Scale.Level(drawing);
        var rows = drawing.QuerySelectorAll("text.end").ToArray();
        rows.Length.ShouldBeGreaterThan(7);
        foreach (var row in rows)
        {
            var place = Book.Jurisdictions.Single(each => each.Name == row.TextContent);
            var at = Number(row, "y");
            IElement[] own = [.. drawing.Children.Where(part => part.LocalName != "line" && Math.Abs(Top(part) - at) < 14)];
            var drawn = own.Where(part => part.LocalName == "rect")
                .ToDictionary(
                    part => part.ClassName!,
                    part => scale.At(Number(part, "x") + Number(part, "width")) - scale.At(Number(part, "x"))
                );
            var figure = own.Single(part => part.LocalName == "text" && part != row).TextContent;
            var ways = Lifts(place, pathway, stability, TheBook.Input.Day);
            var told = $"{title}, {place.Name}: {figure}";
            if (ways is null || ways.Length == 0)
            {
                drawn.ShouldBeEmpty(told);
                figure.ShouldBeOneOf("not established", "not regulated", "no such way");
                continue;
            }

            var most = ways.MaxBy(way => way.Highest ?? -1)!;
            if (most.Highest is { } highest)
            {
                ReadRange.Of(figure)!.High!.Value.ShouldBe(highest, told);
                var ends = drawing.QuerySelectorAll("line.dim").Where(line => Number(line, "y1") == Number(line, "y2"));
                var dimension = ends.Single(line => Math.Abs(Number(line, "y1") - at) < 14);
                scale.At(Number(dimension, "x2")).ShouldBe(highest, Drawn, told);
            }

            var parts = new[] { ("suspension", most.Suspension), ("block", most.Body), ("tyre-part", most.Tyre) };
            foreach (var (style, length) in parts)
                drawn.GetValueOrDefault(style).ShouldBe(length ?? 0, Drawn, $"{told}, {style}");
            if (parts.All(part => part.Item2 is null or 0))
                drawn.GetValueOrDefault("undivided").ShouldBe(most.Highest ?? 0, Drawn, told);
            else
                drawn.Keys.ShouldNotContain("undivided", told);
        }
    }

    public static TheoryData<string, string> Years() =>
        new()
        {
            { "ride-height", "total-lift" },
            { "tyres-and-wheels", "tyre-diameter-growth" },
            { "towing", "trailer-mass" },
        };

    /// <summary>On a day of each fortnight, so that neither a step nor a gap between two can be drawn beside its place.</summary>
    [Theory]
    [MemberData(nameof(Years))]
    public void Over_the_years_each_step_and_gap_is_where_the_book_has_it_and_each_row_begins_on_its_day(string topic, string measure)
    {
        var day = TheBook.Input.Day;
        foreach (var place in Book.Jurisdictions)
        {
            var drawing = On($"topics/{topic}.html")
                .SingleOrDefault(each =>
                    Label(each).StartsWith($"{place.Name}: ", StringComparison.Ordinal)
                    && Label(each).EndsWith(OverTheYears, StringComparison.Ordinal)
                );
            foreach (var pathway in new[] { Pathway.NoCertificate, Pathway.Certificate })
            {
                decimal? Figure(DateOnly on) => Highest(place, topic, measure, pathway, on);
                if (drawing is null)
                {
                    for (var on = new DateOnly(1990, 1, 1); on <= day; on = on.AddDays(100))
                        Figure(on).ShouldBeNull($"{place.Name}, {pathway}, {on}: not drawn");
                    continue;
                }

                var (figures, years) = (Scale.Upright(drawing), Scale.Years(drawing));
                Match[] steps =
                [
                    .. drawing
                        .QuerySelectorAll($"path.step.{(pathway == Pathway.NoCertificate ? "free" : "certified")}")
                        .SelectMany(path => Regex.Matches(path.GetAttribute("d")!, "[ML](?<x>[0-9.]+) (?<y>[0-9.]+)H(?<end>[0-9.]+)")),
                ];
                var lowest = new DateOnly((int)years.At(Number(drawing.QuerySelector("line.axis")!, "x1")) + 1, 1, 1);
                for (var on = lowest; on < day.AddDays(-14); on = on.AddDays(14))
                {
                    var at = Year(on);
                    bool IsNear(Match step, string end) => Math.Abs(years.At(Number(step, end)) - at) < 0.03m;
                    if (steps.Any(step => IsNear(step, "x") || IsNear(step, "end")))
                        continue;
                    var step = steps.SingleOrDefault(step => years.At(Number(step, "x")) <= at && at <= years.At(Number(step, "end")));
                    var told = $"{place.Name}, {pathway}, {on}";
                    if (Figure(on) is { } figure)
                        figures.At(Number(step.ShouldNotBeNull(told), "y")).ShouldBe(figure, figure / 100, told);
                    else
                        step.ShouldBeNull(told);
                }

                foreach (var row in drawing.ParentElement!.QuerySelectorAll("tbody tr"))
                {
                    var from = DateOnly.Parse(row.QuerySelector("th")!.TextContent, CultureInfo.InvariantCulture);
                    var cell = row.Children[pathway == Pathway.NoCertificate ? 1 : 2].TextContent;
                    ReadRange.Of(cell)?.High!.Value.ShouldBe(Figure(from)!.Value, $"{place.Name}, {pathway}, {from}");
                    (cell == "no figure").ShouldBe(Figure(from) is null, $"{place.Name}, {pathway}, {from}");
                }
            }
        }
    }

    [Fact]
    public void Every_drawing_of_the_site_is_one_that_is_read_back()
    {
        foreach (var page in TheBook.Site.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)))
        foreach (Match drawing in Regex.Matches(page.Text(), "<svg class=\"drawing\"[^>]* aria-label=\"(?<label>[^\"]*)\""))
        {
            var label = drawing.Groups["label"].Value;
            var known =
                label == TheDiagram
                || (
                    On(page.Path).Any(each => Label(each) == label)
                    && (label.EndsWith(HowHigh, StringComparison.Ordinal) || label.EndsWith(OverTheYears, StringComparison.Ordinal))
                );
            known.ShouldBeTrue($"{page.Path}: {label}");
        }

        On("index.html").Count(each => Label(each).EndsWith(HowHigh, StringComparison.Ordinal)).ShouldBe(2);
        On("topics/ride-height.html").Count(each => Label(each).EndsWith(HowHigh, StringComparison.Ordinal)).ShouldBe(4);
        On("topics/ride-height.html").Count(each => Label(each).EndsWith(OverTheYears, StringComparison.Ordinal)).ShouldBeGreaterThan(5);
        On("topics/tyres-and-wheels.html").Length.ShouldBeGreaterThan(5);
    }

    /// <summary>The four heights as the label tells them; a tyre lifts by its radius, so that D ends at the centre of the wheel.</summary>
    [Fact]
    public void Each_letter_of_the_diagram_stands_at_a_line_as_long_as_the_part_that_it_names()
    {
        var drawing = On("index.html").Single(each => Label(each) == TheDiagram);
        IElement Only(string part) => drawing.QuerySelector(part)!;
        (decimal Top, decimal Bottom) At(string letter)
        {
            var text = drawing.QuerySelectorAll("text").Single(each => each.TextContent == letter);
            return drawing
                .QuerySelectorAll("line.dim")
                .Where(line => Number(line, "x1") == Number(line, "x2"))
                .OrderBy(line =>
                    Math.Abs(Number(line, "x1") - Number(text, "x"))
                    + Math.Abs(Number(line, "y1") + Number(line, "y2") - (2 * Number(text, "y")))
                )
                .Select(line => (Number(line, "y1"), Number(line, "y2")))
                .First();
        }

        var centre = Number(Only("circle.tyre"), "cy");
        var ground = Number(Only("line.ground"), "y1");
        (centre + Number(Only("circle.tyre"), "r")).ShouldBe(ground);
        var arch = Regex.Match(Only("path.body").GetAttribute("d")!, "H[0-9.]+ A(?<radius>[0-9]+) ");
        var spring = Regex
            .Matches(Only("path.spring").GetAttribute("d")!, " (?<y>[0-9]+)(?= [A-Z]|$)")
            .Select(each => Number(each, "y"))
            .ToArray();
        At("A").ShouldBe((centre - Number(arch, "radius"), centre));
        At("B").ShouldBe((Number(Only("rect.block"), "y"), Number(Only("rect.block"), "y") + Number(Only("rect.block"), "height")));
        At("C").ShouldBe((spring.Min(), spring.Max()));
        At("D").ShouldBe((centre, ground));
    }

    private static string Label(IElement drawing) => drawing.GetAttribute("aria-label")!;

    private static IElement[] On(string page) => Drawings.Value.GetValueOrDefault(page, []);

    /// <summary>The year with how much of it has passed.</summary>
    private static decimal Year(DateOnly day) => day.Year + ((day.DayOfYear - 1) / 365.25m);

    /// <summary>
    /// The highest of a measure by the tables of the book. Null where it is not known which version holds, and where an open way has no
    /// figure for the measure: it may reach further.
    /// </summary>
    private static decimal? Highest(Jurisdiction place, string topic, string measure, Pathway pathway, DateOnly day)
    {
        if (topic == "ride-height")
            return Lifts(place, pathway, true, day)?.Max(way => way.Highest);
        var vehicle = Vehicle(true);
        decimal? lowest = null;
        foreach (
            var rule in place.Rules.Where(rule => rule.Topic == topic && !rule.GovernedByTravel && rule.For.AnyOf.Any(vehicle.DoesPass))
        )
        {
            if (Resolver.Resolve(Book, rule, day) is not [{ Content: Stated stated }])
                continue;
            decimal?[] ways =
            [
                .. stated
                    .Tiers.Where(tier => tier.Pathway == pathway && vehicle.MayPass(tier.When))
                    .Select(tier => tier.Limits.FirstOrDefault(limit => limit.Measure == measure)?.Bounds?.Upper?.Value.ToDecimal()),
            ];
            if (ways.Length > 0 && ways.All(way => way is not null))
                lowest = Math.Min(lowest ?? decimal.MaxValue, ways.Max()!.Value);
        }

        return lowest;
    }

    /// <summary>
    /// What each open way allows, by the tables of the book; null where it is not known what holds.
    /// </summary>
    private static Lift[]? Lifts(Jurisdiction place, Pathway pathway, bool stability, DateOnly day)
    {
        var vehicle = Vehicle(stability);
        ResolvedVersion[] versions =
        [
            .. place
                .Rules.Where(rule => rule is { Topic: "ride-height", GovernedByTravel: false } && rule.For.AnyOf.Any(vehicle.DoesPass))
                .SelectMany(rule => Resolver.Resolve(Book, rule, day)),
        ];
        if (versions.Length == 0 || versions.Any(version => version.Content is NotEstablished))
            return null;
        Lift[] Of(ResolvedVersion version) =>
            version.Content is not Stated stated
                ? []
                :
                [
                    .. stated
                        .Tiers.Where(tier =>
                            tier.Pathway == pathway
                            && vehicle.MayPass(new Predicate([.. tier.When.Tests.Where(test => test.Bounds is null)]))
                        )
                        .Select(Lift.Of),
                ];
        var isUncertain = versions.GroupBy(version => version.Rule).Any(candidates => candidates.Skip(1).Any());
        if (isUncertain && versions.Select(version => Of(version).Max(way => way.Highest)).Distinct().Skip(1).Any())
            return null;
        Lift[] ways = [.. versions.SelectMany(Of)];
        return ways.Length > 0 && ways.All(way => way.IsOpen) ? null : ways;
    }

    private static ReadVehicle Vehicle(bool stability) =>
        new(
            "",
            new()
            {
                ["category"] = "MC",
                ["four-wheel-drive"] = "yes",
                ["registered"] = "yes",
                ["stability-control"] = stability ? "yes" : "no",
            },
            new() { ["gvm"] = 3000, ["suspension-lift"] = 1 }
        );

    private static decimal Top(IElement part) =>
        part.LocalName == "rect" ? Number(part, "y") + 12
        : part.HasAttribute("y") ? Number(part, "y")
        : 0;

    private static decimal Number(IElement part, string name) => decimal.Parse(part.GetAttribute(name)!, CultureInfo.InvariantCulture);

    private static decimal Number(Match match, string name) => decimal.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);

    /// <summary>The upper ends of a way's limits in mm; of the growth of a tyre half counts (it lifts the axle by its radius).</summary>
    private sealed record Lift(decimal? Suspension, decimal? Body, decimal? Tyre, decimal? Total, bool IsOpen)
    {
        public decimal? Highest => Suspension + Body + Tyre is { } sum ? Math.Min(sum, Total ?? sum) : Total;

        public static Lift Of(Tier tier)
        {
            decimal? Upper(string measure) =>
                tier.Limits.FirstOrDefault(limit => limit.Measure == measure)?.Bounds?.Upper?.Value.ToDecimal();
            var lift = new Lift(
                Upper("suspension-lift"),
                Upper("body-lift"),
                Upper("tyre-lift") ?? Upper("tyre-diameter-growth") / 2,
                Upper("total-lift"),
                false
            );
            return lift with { IsOpen = lift.Highest is null && tier.Limits.Any(limit => limit.Kind == LimitKind.NotEstablished) };
        }
    }

    /// <summary>A straight scale by two of the lines that a drawing labels.</summary>
    private sealed record Scale(decimal One, decimal OneIs, decimal Other, decimal OtherIs)
    {
        public decimal At(decimal point) => OneIs + ((point - One) * (OtherIs - OneIs) / (Other - One));

        public static Scale Level(IElement drawing) =>
            Of(drawing.QuerySelectorAll("text.middle").Where(text => text.TextContent.EndsWith(" mm", StringComparison.Ordinal)), "x", 0);

        public static Scale Upright(IElement drawing) => Of(drawing.QuerySelectorAll("text.end"), "y", 4);

        public static Scale Years(IElement drawing) => Of(drawing.QuerySelectorAll("text.middle"), "x", 0);

        private static Scale Of(IEnumerable<IElement> labels, string along, decimal below)
        {
            var ends = labels
                .Select(label => (At: Number(label, along) - below, Is: Value(label.TextContent)))
                .OrderBy(end => end.Is)
                .ToArray();
            ends.Length.ShouldBeGreaterThan(1);
            return new(ends[0].At, ends[0].Is, ends[^1].At, ends[^1].Is);
        }

        private static decimal Value(string text) =>
            decimal.Parse(text.Replace(" mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
    }
}
