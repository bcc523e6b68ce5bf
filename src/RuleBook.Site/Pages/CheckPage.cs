using RuleBook.Rules;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>The form for a job; its fields come from the vocabulary, its answer from the evaluator compiled for the browser.</summary>
internal static class CheckPage
{
    private static readonly (string Path, string Label, string Unit)[] Plan =
    [
        ("vehicle.seats", "seats, the driver's counted", ""),
        ("vehicle.wheelbase", "wheelbase", "mm"),
        ("vehicle.tare-axles.front", "tare on the front axle", "kg"),
        ("vehicle.tare-axles.rear", "tare on the rear axle", "kg"),
        ("vehicle.ratings.front-axle", "front axle rating", "kg"),
        ("vehicle.ratings.rear-axle", "rear axle rating", "kg"),
        ("vehicle.ratings.ball", "ball load rating", "kg"),
        ("vehicle.ball-behind-rear-axle", "tow ball behind the rear axle", "mm"),
        ("modification.ratings.front-axle", "front axle rating asked for", "kg"),
        ("modification.ratings.rear-axle", "rear axle rating asked for", "kg"),
    ];

    public static Page Of(SiteBook site)
    {
        var words = site.Words;
        var measures = words.Measures.Values.Where(measure => !measure.IsDate && !measure.IsDerived).OrderBy(measure => measure.Mark).ToArray();
        var body = Templates.Render(
            "check",
            ("root", ""),
            ("places", Places(site)),
            ("facts", words.Facts.Values.Where(fact => fact.Job.StartsWith("vehicle.", StringComparison.Ordinal) && fact.Job != "vehicle.first-registered").OrderBy(fact => fact.Mark)
                .Select(fact => new ChoiceField(fact.Job, fact.Title, [.. fact.Values], Links.Word("fact", fact.Name))).ToArray()),
            ("fitted", Fields(measures, "modification.", "modification.ratings.")),
            ("measured", Fields(measures, "measured.", null)),
            ("masses", Fields(measures, "vehicle.", null).Concat(Fields(measures, "modification.ratings.", null)).Concat(Fields(measures, "trailer.", null))
                .Concat(Plan.Select(field => new AmountField(field.Path, field.Label, field.Unit, "", ""))).DistinctBy(field => field.Path).ToArray()),
            ("conditions", words.Conditions.Values.OrderBy(term => term.Title, StringComparer.Ordinal)
                .Select(term => new ChoiceField($"shown.{term.Name}", term.Title, ["yes", "no"], Links.Word("condition", term.Name))).ToArray()));
        return new Page("check.html", "Check a job", "check", body, ["check.js"]);
    }

    private static PlaceGroup[] Places(SiteBook site) =>
    [
        .. site.Places
            .Where(place => place.Registers)
            .GroupBy(place => place.Within ?? place.Id)
            .OrderBy(nation => nation.Key, StringComparer.Ordinal)
            .Select(nation => new PlaceGroup(site.PlaceName(nation.Key), [.. nation.Select(place => new Link(place.Name, place.Id))])),
    ];

    private static AmountField[] Fields(Measure[] measures, string under, string? not) =>
    [
        .. measures
            .Where(measure => measure.Job.StartsWith(under, StringComparison.Ordinal) && (not is null || !measure.Job.StartsWith(not, StringComparison.Ordinal)))
            .Select(measure => new AmountField(measure.Job, measure.Title, measure.Unit.Symbol, Links.Word("measure", measure.Name), measure.Definition.Trim()))
            .DistinctBy(field => field.Path),
    ];
}

/// <summary>A nation's jurisdictions in the form; a link's address is the id.</summary>
internal sealed record PlaceGroup(string Name, Link[] Places);

/// <summary>A field with some words to choose from.</summary>
internal sealed record ChoiceField(string Path, string Title, string[] Values, string Url);

/// <summary>A field for an amount with its unit.</summary>
internal sealed record AmountField(string Path, string Title, string Unit, string Url, string Definition);
