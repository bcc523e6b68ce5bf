using System.Text.Json;
using RuleBook.Site.Comparison;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>What the quick check offers; the vehicles stand in <c>site-templates/quick.json</c>, everything else in the book.</summary>
internal sealed record QuickCheck(QuickPlace[] Places, QuickVehicle[] Vehicles, FactChoice[] Facts, string[] Sizes)
{
    public static QuickCheck Of(SiteBook site)
    {
        using var description = JsonDocument.Parse(Templates.File("quick.json"));
        var vehicles = description.RootElement.GetProperty("vehicles").EnumerateArray().ToArray();
        var facts = vehicles.SelectMany(vehicle => vehicle.GetProperty("facts").EnumerateObject().Select(fact => fact.Name)).Distinct();
        return new QuickCheck(
            [
                .. CompareGroup
                    .Of(site)[0]
                    .Places.Where(place => place.Registers)
                    .Select(place => new QuickPlace(
                        place.Id,
                        place.Name,
                        place.Id[(place.Id.IndexOf('-', StringComparison.Ordinal) + 1)..].ToUpperInvariant()
                    )),
            ],
            [
                .. vehicles.Select(vehicle => new QuickVehicle(
                    vehicle.GetProperty("title").GetString()!,
                    vehicle.GetProperty("facts").GetRawText()
                )),
            ],
            [
                .. facts
                    .Where(site.Words.Facts.ContainsKey)
                    .Select(name => site.Words.Facts[name])
                    .Select(fact => new FactChoice(fact.Name, fact.Title, [.. fact.Values])),
            ],
            [.. site.Book.Reference.TyreSizes.Select(size => size.Designation).Distinct()]
        );
    }
}

/// <summary>A state to choose; <paramref name="Short"/> is its id without the nation.</summary>
internal sealed record QuickPlace(string Id, string Name, string Short);

/// <summary>A kind of vehicle, and the facts that it sets, as JSON.</summary>
internal sealed record QuickVehicle(string Title, string Facts);

/// <summary>A fact that can be chosen.</summary>
internal sealed record FactChoice(string Name, string Title, string[] Values);
