using System.Collections.Immutable;
using System.Text.Json;
using RuleBook.Facts;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>
/// The vehicle for which the drawings are made, <c>site-templates/charts.json</c>: raised a little, so that rules on raising bind it.
/// </summary>
/// <param name="Title">What a reader calls it: <c>four-wheel drive with stability control</c>.</param>
/// <param name="Facts">What is known of it.</param>
internal sealed record SampleVehicle(string Title, FactSet Facts)
{
    private static readonly Lazy<ImmutableArray<SampleVehicle>> Kinds = new(Read);

    /// <summary>Every kind that is drawn; the first one stands for all where only one is.</summary>
    public static ImmutableArray<SampleVehicle> All => Kinds.Value;

    private static ImmutableArray<SampleVehicle> Read()
    {
        using var description = JsonDocument.Parse(Templates.File("charts.json"));
        var sample = description.RootElement;
        var words = sample
            .GetProperty("facts")
            .EnumerateObject()
            .Aggregate(FactSet.Nothing, (known, fact) => known.With(fact.Name, fact.Value.GetString()!));
        var facts = sample
            .GetProperty("measures")
            .EnumerateObject()
            .Aggregate(words, (known, measure) => known.With(measure.Name, measure.Value.GetInt32(), "stated"))
            .With(sample.GetProperty("raised").GetString()!, 1, "raised");
        return
        [
            .. sample
                .GetProperty("kinds")
                .EnumerateArray()
                .Select(kind => new SampleVehicle(
                    $"{sample.GetProperty("title").GetString()} {kind.GetProperty("title").GetString()}",
                    facts.With(sample.GetProperty("told-apart-by").GetString()!, kind.GetProperty("value").GetString()!)
                )),
        ];
    }
}
