using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Site.Comparison;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>The comparison: a page for the site's day and one for every day on which something changed.</summary>
internal static class ComparePages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site)
    {
        var groups = CompareGroup.Of(site);
        var known = new KnownRows(site);
        foreach (var group in groups)
        {
            yield return () => Of(site, groups, known, group, site.Day, group.Path);
            foreach (var day in group.Days)
                yield return () => Of(site, groups, known, group, day, Path(group, day));
        }
    }

    private static string Path(CompareGroup group, DateOnly day) => $"compare/{Links.Slug(group.Id)}/{Written(day)}.html";

    private static Page Of(
        SiteBook site,
        ImmutableArray<CompareGroup> groups,
        KnownRows known,
        CompareGroup group,
        DateOnly day,
        string path
    )
    {
        var change = ChangeDays.At(group.Days, day);
        var matrices = new Matrices(site, group, known, day, path == group.Path);
        var topics = matrices.All();
        var body = Templates.Render(
            "compare",
            ("root", Page.Root(path)),
            ("day", Phrases.Day(day)),
            ("since", Phrases.Day(change)),
            ("on", Written(day)),
            ("fresh", group.Path),
            ("folder", $"compare/{Links.Slug(group.Id)}/"),
            ("near", path == group.Path ? $"{Page.Root(path)}compare/{Links.Slug(group.Id)}/" : ""),
            ("others", groups.Where(other => other != group).Select(other => Other(other, group)).ToArray()),
            ("places", group.Places.Select(place => new ComparedPlace(place.Id, place.Name)).ToArray()),
            ("vehicles", group.Vehicles.ToArray()),
            ("topics", topics),
            ("wheres", matrices.Where.Views),
            ("days", group.Days.Select(each => new DayChoice(Written(each), each == change)).ToArray())
        );
        var title = $"Side by side: {group.Name}{(path == group.Path ? "" : $", {Phrases.Day(day)}")}";
        return new Page(path, title, "compare", body, ["compare.js"])
        {
            Description =
                $"How far a modified vehicle may go in {group.Name}, state by state, as on {Phrases.Day(day)}: free, certified, "
                + "measured how, who certifies.",
        };
    }

    private static OtherComparison Other(CompareGroup other, CompareGroup group) =>
        new(other.Name, other.Path, [.. other.Places.Except(group.Places).Select(place => new ComparedPlace(place.Id, place.Name))]);

    private static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>A state to choose.</summary>
internal sealed record ComparedPlace(string Id, string Name);

/// <summary>Another nation's comparison, of which states can be set beside this one's.</summary>
internal sealed record OtherComparison(string Text, string Url, ComparedPlace[] Places);

/// <summary>A day on which something changed.</summary>
internal sealed record DayChoice(string Day, bool Shown);
