using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Site.Limits;

namespace RuleBook.Site.Comparison;

/// <summary>The jurisdictions of one comparison: a nation with its states, and beside them each nation that has none.</summary>
internal sealed record CompareGroup(
    string Id,
    string Name,
    ImmutableArray<Jurisdiction> Places,
    ImmutableArray<ComparedVehicle> Vehicles,
    ImmutableArray<DateOnly> Days,
    bool IsFirst
)
{
    /// <summary>The page of the site's day.</summary>
    public string Path => IsFirst ? "compare.html" : $"compare/{Links.Slug(Id)}.html";

    public static ImmutableArray<CompareGroup> Of(SiteBook site)
    {
        var nations = site.Places.Where(place => place.Within is null).ToArray();
        var alone = nations.Where(nation => site.Places.All(place => place.Within != nation.Id)).ToArray();
        Jurisdiction[] States(Jurisdiction nation) => [.. site.Places.Where(place => place.Within == nation.Id)];
        var groups = nations.Except(alone).OrderByDescending(nation => States(nation).Sum(place => place.Rules.Length)).ToArray();
        return groups.Length == 0
            ? [Of("all", "all jurisdictions", site.Places, true)]
            : [.. groups.Select((nation, i) => Of(nation.Id, nation.Name, [nation, .. States(nation), .. alone], i == 0))];
    }

    private static CompareGroup Of(string id, string name, ImmutableArray<Jurisdiction> places, bool isFirst) =>
        new(id, name, places, ComparedVehicle.Of(id), ChangeDays.Of(places), isFirst);
}
