using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// The drawings of the topic of ride height read back by their coordinates in the scale that they draw themselves, against the limits of
/// the book in force; for the vehicle of <c>site-templates/charts.json</c>: a four-wheel drive (MC) of 3 t, with or without stability
/// control.
/// </summary>
public sealed class ChartReadBackTests
{
    private static readonly Book Book = TheBook.Input.Book;

    /// <summary>A drawing has tenths of a point; at its scale that is less than half a millimetre.</summary>
    private const decimal Drawn = 0.5m;

    private static readonly Lazy<IElement[]> Drawings = new(() =>
        [.. Parsed.Of(TheBook.Site.Where(file => file.Path == "topics/ride-height.html")).Single().Document.All("svg.drawing")]
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
        var drawing = Drawings.Value.Single(each =>
            each.GetAttribute("aria-label") == $"Four-wheel drive {title}: how high, by jurisdiction"
        );
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

    [Fact]
    public void Each_step_over_the_years_begins_on_a_day_of_the_book_at_the_height_that_holds_from_then_on()
    {
        var drawings = Drawings
            .Value.Where(each => each.GetAttribute("aria-label")!.EndsWith("over the years", StringComparison.Ordinal))
            .ToArray();
        drawings.Length.ShouldBeGreaterThan(5);
        foreach (var drawing in drawings)
        {
            var place = Book.Jurisdictions.Single(each =>
                drawing.GetAttribute("aria-label")!.StartsWith($"{each.Name}: ", StringComparison.Ordinal)
            );
            var (heights, years) = (Scale.Upright(drawing), Scale.Years(drawing));
            foreach (var path in drawing.QuerySelectorAll("path.step"))
            {
                var pathway = path.ClassList.Contains("free") ? Pathway.NoCertificate : Pathway.Certificate;
                foreach (Match step in Regex.Matches(path.GetAttribute("d")!, "[ML](?<x>[0-9.]+) (?<y>[0-9.]+)H(?<end>[0-9.]+)"))
                {
                    var (from, until) = (years.At(Number(step, "x")), years.At(Number(step, "end")));
                    var middle = new DateOnly(1, 1, 1).AddDays((int)((((from + until) / 2) - 1) * 365.2425m));
                    var ways = Lifts(place, pathway, true, middle);
                    ways.ShouldNotBeNull($"{place.Name} on {middle}");
                    ways.Max(way => way.Highest)!.Value.ShouldBe(heights.At(Number(step, "y")), 1m, $"{place.Name}, {pathway}, {middle}");
                }
            }
        }
    }

    /// <summary>
    /// What each open way allows, by the tables of the book; null where it is not known which version holds, or what it says.
    /// </summary>
    private static Lift[]? Lifts(Jurisdiction place, Pathway pathway, bool stability, DateOnly day)
    {
        var vehicle = new ReadVehicle(
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
        ResolvedVersion[] versions =
        [
            .. place
                .Rules.Where(rule => rule is { Topic: "ride-height", GovernedByTravel: false } && vehicle.DoesPass(rule.For))
                .SelectMany(rule => Resolver.Resolve(Book, rule, day)),
        ];
        if (versions.Length == 0 || versions.Any(version => version.Content is NotEstablished))
            return null;
        Lift[] ways =
        [
            .. versions
                .Select(version => version.Content)
                .OfType<Stated>()
                .SelectMany(stated => stated.Tiers)
                .Where(tier =>
                    tier.Pathway == pathway && vehicle.MayPass(new Predicate([.. tier.When.Tests.Where(test => test.Bounds is null)]))
                )
                .Select(Lift.Of),
        ];
        return ways.Length > 0 && ways.All(way => way.IsOpen) ? null : ways;
    }

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
