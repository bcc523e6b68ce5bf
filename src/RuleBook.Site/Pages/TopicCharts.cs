using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Site.Charts;
using RuleBook.Site.Limits;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>The drawings of a topic's page.</summary>
internal static class TopicCharts
{
    private static readonly KeyView[] Key =
    [
        new("suspension", "suspension"),
        new("block", "body"),
        new("tyre-part", "tyres (half of their growth)"),
        new("undivided", "not divided by the rule"),
    ];

    public static StacksView Stacks(SiteBook site, ImmutableArray<SampleVehicle> vehicles)
    {
        var all = vehicles
            .SelectMany(vehicle =>
                new[] { Pathway.NoCertificate, Pathway.Certificate }.Select(pathway =>
                    (Title: $"{SiteBook.Heading(vehicle.Title)}, {Say.Short(pathway)}", Rows: Parts(site, vehicle, pathway))
                )
            )
            .Where(each => each.Rows.Length > 0)
            .ToArray();
        var most = StackChart.Scale(all.SelectMany(each => each.Rows));
        return new StacksView(
            [.. Key.Where(part => StackChart.Styles(all.SelectMany(each => each.Rows)).Contains(part.Style))],
            [
                .. all.Select(each => new StackView(
                    each.Title,
                    StackChart.Draw(each.Rows, most, $"{each.Title}: how high, by jurisdiction"),
                    [.. each.Rows.Select(Row)]
                )),
            ]
        );
    }

    public static StepsView[] Steps(SiteBook site, Topic topic)
    {
        var measure =
            topic.Name == KnownWords.RideHeight
                ? FactSet.TotalLift
                : site.Words.Naming(topic.Name).FirstOrDefault(measure => !measure.IsDate)?.Name;
        if (measure is null)
            return [];
        var steps = Steps(site, topic, measure, measure == FactSet.TotalLift ? "height gained in all" : site.MeasureTitle(measure));
        return steps.Places.Length > 0 ? [steps] : [];
    }

    private static ImmutableArray<LiftParts> Parts(SiteBook site, SampleVehicle vehicle, Pathway pathway) =>
        [
            .. Counting(site)
                .Select(place => LiftParts.Of(site.Book, place, vehicle.Facts, site.Day).First(parts => parts.Pathway == pathway))
                .Where(parts => parts.State != "no-rule"),
        ];

    /// <summary>The jurisdictions of nations in which several count the parts of a lift; others go by absolute heights.</summary>
    private static IEnumerable<Jurisdiction> Counting(SiteBook site) =>
        site
            .Places.GroupBy(place => place.Within ?? place.Id)
            .Where(nation => nation.Count(place => place.Rules.Any(CountsLift)) > 1)
            .SelectMany(nation => nation);

    private static bool CountsLift(Rule rule) =>
        rule.Topic == KnownWords.RideHeight
        && rule.Versions.Any(version =>
            version.Content is Stated stated && stated.Tiers.Any(tier => tier.Limits.Any(limit => limit.Measure == FactSet.TotalLift))
        );

    private static StackRow Row(LiftParts parts)
    {
        if (parts.State != "stated")
            return new(parts.Place.Name, State(parts.State), "", "", "");
        return new(parts.Place.Name, Text(parts.Suspension), Text(parts.Body), Text(parts.Tyre), Text(parts.Highest));
    }

    private static string State(string state) =>
        state switch
        {
            "none-such" => "no such way",
            "not-regulated" => "not regulated",
            _ => "not established",
        };

    private static string Text(Fraction? value) =>
        value is { } known ? Say.Amount(known, Units.Unit.Base(Units.Dimension.Length)) : "no figure of its own";

    private static StepsView Steps(SiteBook site, Topic topic, string measure, string title)
    {
        var vehicle = SampleVehicle.All[0];
        var unit = site.Words.Measures[measure].Unit;
        FigureSteps Figure(Jurisdiction place, Pathway pathway) => FigureSteps.Of(site, place, topic, measure, vehicle.Facts, pathway);
        var all = site
            .Places.Select(place => (place, free: Figure(place, Pathway.NoCertificate), certified: Figure(place, Pathway.Certificate)))
            .Where(each => each.free.IsKnown || each.certified.IsKnown)
            .ToArray();
        var most = all.SelectMany(each => each.free.Steps.Concat(each.certified.Steps))
            .Select(step => (double)(step.Value ?? 0).ToDecimal())
            .DefaultIfEmpty(100)
            .Max();
        most = Ticks.End(Math.Max(most, 1), StepChart.Lines);
        var known = all.SelectMany(each => each.free.Steps.Concat(each.certified.Steps))
            .Where(step => step.Value is not null)
            .Select(step => step.From)
            .ToArray();
        var first = known.Length == 0 ? site.Day : new DateOnly(known.Min().Year, 1, 1);
        return new StepsView(
            SiteBook.Heading($"{title} over the years in {unit.Symbol}, {vehicle.Title}"),
            site.MeasureTitle(measure),
            all.Any(each => each.free.IsKnown),
            all.Any(each => each.certified.IsKnown),
            [
                .. all.Select(each => new PlaceSteps(
                    each.place.Name,
                    StepChart.Draw(
                        [("certified", Points(each.certified)), ("free", Points(each.free))],
                        first,
                        site.Day.AddDays(1),
                        most,
                        $"{each.place.Name}: {title} over the years"
                    ),
                    Rows(each.free, each.certified, unit)
                )),
            ]
        );
    }

    private static ImmutableArray<(DateOnly, double?)> Points(FigureSteps steps) =>
        [.. steps.Steps.Select(step => (step.From, step.Value is { } value ? (double?)(double)value.ToDecimal() : null))];

    private static StepRow[] Rows(FigureSteps free, FigureSteps certified, Units.Unit unit) =>
        [
            .. free
                .Steps.Concat(certified.Steps)
                .Select(step => step.From)
                .Distinct()
                .Order()
                .Select(day => new StepRow(Phrases.Day(day), At(free, day, unit), At(certified, day, unit)))
                .SkipWhile(row => row is { Free: "no figure", Certified: "no figure" }),
        ];

    private static string At(FigureSteps steps, DateOnly day, Units.Unit unit) =>
        steps.Steps.LastOrDefault(step => step.From <= day).Value is { } value ? Say.Amount(value, unit) : "no figure";
}
